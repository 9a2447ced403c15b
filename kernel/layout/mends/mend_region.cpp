#include "kernel/layout/mends/mend_region.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace roundlay {

namespace {

constexpr double far_away = std::numeric_limits<double>::max();

/// Where a face lies, and the one across from it, as the value of one coordinate.
double face_at(const HewnFaces &faces, LogFace face, double x) {
    switch (face) {
    case LogFace::top:
        return faces.highest(x);
    case LogFace::under:
        return faces.lowest(x);
    case LogFace::inside:
        return faces.innermost(x);
    case LogFace::outside:
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return faces.outermost(x);
}

/// Toward the face: up for the top, and so on.
double way_of(LogFace face) {
    return face == LogFace::top || face == LogFace::inside ? 1 : -1;
}

/// The plane through two lines across the log, at these values of the coordinate that the face looks along.
Plane plane_through(LogFace face, const MendStretch &along, double at_from, double at_to) {
    const bool even = std::abs(at_to - at_from) < tolerance::weld;
    const double rise = even ? 0 : (at_to - at_from) / (along.to - along.from),
                 start = at_from - rise * along.from;
    const double way = way_of(face), k = way / std::sqrt(1 + rise * rise);
    const Vec3 normal = is_side(face) ? Vec3{-k * rise, k, 0} : Vec3{-k * rise, 0, k};
    return {normal, k * start};
}

/// Is a circle's span whole within these bounds, whole without, or on one of them?
enum class Lies { within, without, across };
Lies lies(double middle, double radius, double low, double high) {
    const double keep = radius + tolerance::clear;
    if (middle - keep >= low && middle + keep <= high) return Lies::within;
    return middle + keep <= low || middle - keep >= high ? Lies::without : Lies::across;
}

/// Bounds that lie at or past the blank's own are no edges.
double no_edge(double low, double least) {
    return low > least + tolerance::thinnest ? low : -far_away;
}
double no_edge_over(double high, double most) {
    return high < most - tolerance::thinnest ? high : far_away;
}

/// Heights of the region over one place, in a stretch of it that the bore stands wholly in.
BoreInRegion in_slab(const MendRegion &region, const Bore &bore, const Blank &blank) {
    const double most = is_side(region.face) ? blank.height : blank.width;
    const double low = no_edge(region.low, 0), high = no_edge_over(region.high, most);
    const double r = bore.diameter / 2;
    if (!is_side(region.face)) {
        const Lies across = lies(bore.y, r, low, high);
        if (across == Lies::without) return {};
        const double bed = region.bed.height_at(bore.x, bore.y);
        const bool top = region.face == LogFace::top;
        return {across == Lies::across, top ? bed : -far_away, top ? far_away : bed};
    }
    const double apart = region.bed.distance({bore.x, bore.y, 0}), keep = r + tolerance::clear;
    if (apart <= -keep) return {};
    return {apart < keep, low, high};
}

} // namespace

LogFace log_face(LogSide side) {
    switch (side) {
    case LogSide::top:
        return LogFace::top;
    case LogSide::under:
        return LogFace::under;
    case LogSide::inside:
        return LogFace::inside;
    case LogSide::outside:
        break;
    }
    return LogFace::outside;
}

LogFace opposite(LogFace face) {
    switch (face) {
    case LogFace::top:
        return LogFace::under;
    case LogFace::under:
        return LogFace::top;
    case LogFace::inside:
        return LogFace::outside;
    case LogFace::outside:
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return LogFace::inside;
}

bool is_side(LogFace face) {
    return face == LogFace::outside || face == LogFace::inside;
}

double least_thickness(const Piece &log, LogFace face, const MendStretch &along) {
    const HewnFaces faces = hewn_faces(log);
    const auto at = [&](double x) {
        return std::abs(face_at(faces, face, x) - face_at(faces, opposite(face), x));
    };
    return std::min(at(along.from), at(along.to));
}

double lowest_edge(const Piece &log, LogFace face, double x) {
    const HewnFaces faces = hewn_faces(log);
    return is_side(face) ? faces.lowest(x) : faces.outermost(x);
}

MendRegion region_in(const Piece &log, LogFace face, const MendStretch &along, std::optional<double> depth,
                     double low, double high) {
    const HewnFaces faces = hewn_faces(log);
    const auto bed = [&](double x) {
        const double near = face_at(faces, face, x);
        return depth ? near - way_of(face) * *depth : (near + face_at(faces, opposite(face), x)) / 2;
    };
    return {face, along.from, along.to, low, high, plane_through(face, along, bed(along.from), bed(along.to)),
            {}};
}

std::vector<Cell> cells_of(const MendRegion &region, const Blank &blank) {
    const Cell whole = box_cell({{0, 0, 0}, {blank.length, blank.width, blank.height}});
    const auto within = [](const Cell &cell, Vec3 axis, double low, double high) {
        return clipped(clipped(cell, {-axis, -low}), {axis, high});
    };
    const Vec3 across = is_side(region.face) ? Vec3{0, 0, 1} : Vec3{0, 1, 0};
    Cell slab = within(whole, {1, 0, 0}, region.from, region.to);
    slab = clipped(within(slab, across, region.low, region.high), region.bed.flipped());
    std::vector<Cell> cells{slab};
    if (region.new_end == End::datum) cells.push_back(clipped(whole, {{1, 0, 0}, region.from}));
    if (region.new_end == End::far) cells.push_back(clipped(whole, {{-1, 0, 0}, -region.to}));
    std::erase_if(cells, [](const Cell &cell) { return cell.empty(); });
    return cells;
}

BoreInRegion bore_in(const MendRegion &region, const Bore &bore, const Blank &blank) {
    const double r = bore.diameter / 2;
    const Lies along = lies(bore.x, r, no_edge(region.from, 0), no_edge_over(region.to, blank.length));
    if (along == Lies::without) {
        if (!region.new_end) return {};
        const bool beyond = *region.new_end == End::datum ? bore.x < region.from : bore.x > region.to;
        return beyond ? BoreInRegion{false, bore.z_from, bore.z_to} : BoreInRegion{};
    }
    BoreInRegion taken = in_slab(region, bore, blank);
    // An edge square across the log is there beside the new end of a splice as well, over the other half.
    if (along == Lies::across && region.new_end && taken.from >= taken.to)
        taken = {true, -far_away, far_away};
    taken.split = taken.split || along == Lies::across;
    const double from = std::max(taken.from, bore.z_from), to = std::min(taken.to, bore.z_to);
    if (to - from < tolerance::weld) return {};
    const auto sliver = [](double length) { return length > tolerance::weld && length < tolerance::clear; };
    taken.split = taken.split || sliver(to - from) || sliver(from - bore.z_from) || sliver(bore.z_to - to);
    return {taken.split, from, to};
}

} // namespace roundlay
