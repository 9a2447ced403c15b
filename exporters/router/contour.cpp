#include "exporters/router/contour.h"

#include <polyclipping/clipper.hpp>

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

namespace cl = ClipperLib;

constexpr double units = 1e4;          // of the library in a millimetre: it counts in whole numbers
constexpr double arc_tolerance = 5e-4; // mm that its chords lie within an arc, which is put back as an arc
constexpr double on_arc = 2e-3;        // mm: what lies so near to the circle round a corner lies on it
constexpr double short_arc = 0.05;     // mm: below it a chord is as good and no control takes it for a circle
constexpr double no_move = 2e-3;       // mm
constexpr double does_not_matter = 0.05; // mm of wood that may stay in a room
constexpr double one_corner = 1;         // mm: corners so near to one another are one

cl::Path to_library(const std::vector<Vec2> &ring) {
    cl::Path path;
    for (const Vec2 p : ring)
        path.emplace_back(std::llround(p.x * units), std::llround(p.y * units));
    return path;
}

std::vector<Vec2> from_library(const cl::Path &path) {
    std::vector<Vec2> ring;
    for (const cl::IntPoint &p : path)
        ring.push_back({static_cast<double>(p.X) / units, static_cast<double>(p.Y) / units});
    return ring;
}

cl::Paths moved_out(const cl::Paths &paths, double by) {
    constexpr double miter = 2;
    cl::ClipperOffset offset(miter, arc_tolerance * units);
    offset.AddPaths(paths, cl::jtRound, cl::etClosedPolygon);
    cl::Paths moved;
    offset.Execute(moved, by * units);
    return moved;
}

cl::Paths difference(const cl::Paths &from, const cl::Paths &less) {
    cl::Clipper clipper;
    clipper.AddPaths(from, cl::ptSubject, true);
    clipper.AddPaths(less, cl::ptClip, true);
    cl::Paths left;
    clipper.Execute(cl::ctDifference, left, cl::pftNonZero, cl::pftNonZero);
    return left;
}

double distance_to_line(Vec2 a, Vec2 b, Vec2 p) {
    const Vec2 along = b - a;
    const double square = dot(along, along);
    const double t = square > 0 ? std::clamp(dot(p - a, along) / square, 0.0, 1.0) : 0.0;
    return length(p - (a + t * along));
}

/// Of a ring that runs counter-clockwise.
bool turns_in(const std::vector<Vec2> &ring, std::size_t at) {
    const std::size_t n = ring.size();
    return cross(ring[at] - ring[(at + n - 1) % n], ring[(at + 1) % n] - ring[at]) < 0;
}

/// The corner that stays full there. Nothing where what stays is more than a corner, so that the tool does
/// not get in.
std::optional<InnerCorner> corner_of(const std::vector<Vec2> &left, const std::vector<Vec2> &outline,
                                     const std::vector<Vec2> &way, double radius) {
    std::vector<std::size_t> here;
    for (std::size_t i = 0; i < outline.size(); ++i)
        if (distance_to(left, outline[i]) < on_arc) here.push_back(i);
    std::optional<InnerCorner> corner;
    for (const std::size_t i : here) {
        if (!turns_in(outline, i)) return {};
        if (length(outline[i] - outline[here.front()]) > one_corner) return {};
        const double stays = distance_to(way, outline[i]) - radius;
        if (!corner || stays > corner->left) corner = InnerCorner{outline[i], stays};
    }
    return corner;
}

/// Nothing where the tool does not get everywhere.
std::optional<std::vector<InnerCorner>> corners_left(const std::vector<Vec2> &outline, const cl::Path &way,
                                                     double radius) {
    const std::vector<Vec2> middle = from_library(way);
    std::vector<InnerCorner> corners;
    for (const cl::Path &part : difference(moved_out({way}, -radius), {to_library(outline)})) {
        const std::vector<Vec2> left = from_library(part);
        const bool matters = std::ranges::any_of(
            left, [&](Vec2 p) { return distance_to(middle, p) - radius > does_not_matter; });
        if (!matters) continue;
        const auto corner = corner_of(left, outline, middle, radius);
        if (!corner) return {};
        corners.push_back(*corner);
    }
    std::ranges::sort(corners, [](const InnerCorner &a, const InnerCorner &b) {
        return a.at.x != b.at.x ? a.at.x < b.at.x : a.at.y < b.at.y;
    });
    return corners;
}

/// The corner of the outline round which the way runs from a to b.
std::optional<std::size_t> round_which(const std::vector<Vec2> &outline, double radius, Vec2 a, Vec2 b) {
    for (std::size_t i = 0; i < outline.size(); ++i)
        if (std::abs(length(a - outline[i]) - radius) < on_arc &&
            std::abs(length(b - outline[i]) - radius) < on_arc)
            return i;
    return {};
}

/// The library's chords as the arcs that they stand for.
WayRound with_arcs(std::vector<Vec2> way, const std::vector<Vec2> &outline, double radius) {
    const std::size_t n = way.size();
    std::vector<std::optional<std::size_t>> round(n); // of the line from i to the next
    for (std::size_t i = 0; i < n; ++i)
        round[i] = round_which(outline, radius, way[i], way[(i + 1) % n]);
    std::size_t first = 0; // where no arc is under way
    while (first < n && round[first] && round[first] == round[(first + n - 1) % n])
        ++first;
    WayRound made;
    made.start = way[first % n];
    Vec2 at = made.start;
    for (std::size_t k = 0; k < n;) {
        const auto corner = round[(first + k) % n];
        std::size_t end = k + 1;
        while (corner && end < n && round[(first + end) % n] == corner)
            ++end;
        const Vec2 to = way[(first + end) % n];
        k = end;
        const double chord = length(to - at);
        if (chord < no_move && k < n) continue;
        RouterMove move{to};
        if (corner && chord > short_arc) move.centre = outline[*corner];
        made.moves.push_back(move);
        at = to;
    }
    return made;
}

} // namespace

double distance_to(const std::vector<Vec2> &ring, Vec2 point) {
    double least = INFINITY;
    for (std::size_t i = 0; i < ring.size(); ++i)
        least = std::min(least, distance_to_line(ring[i], ring[(i + 1) % ring.size()], point));
    return least;
}

bool is_simple(const std::vector<Vec2> &outline) {
    const cl::Path path = to_library(outline);
    if (outline.size() < 3 || cl::Area(path) <= 0) return false;
    cl::Paths simple;
    cl::SimplifyPolygon(path, simple, cl::pftEvenOdd);
    constexpr double rounding = 1e-6;
    return simple.size() == 1 &&
           std::abs(cl::Area(simple.front()) - cl::Area(path)) <= rounding * cl::Area(path);
}

std::optional<WayRound> way_round(const std::vector<Vec2> &outline, double tool) {
    const double radius = tool / 2;
    const cl::Paths out = moved_out({to_library(outline)}, radius);
    if (out.size() != 1) return {}; // a room behind a neck
    const auto corners = corners_left(outline, out.front(), radius);
    if (!corners) return {};
    std::vector<Vec2> way = from_library(out.front());
    std::ranges::reverse(way);
    WayRound made = with_arcs(way, outline, radius);
    made.corners = *corners;
    return made;
}

std::optional<double> thickest_tool(const std::vector<Vec2> &outline, double tool) {
    constexpr double tenths = 10;
    int fits = 0, too_thick = static_cast<int>(std::ceil(tool * tenths));
    while (too_thick - fits > 1) {
        const int between = (fits + too_thick) / 2;
        (way_round(outline, between / tenths) ? fits : too_thick) = between;
    }
    if (fits < tenths) return {};
    return fits / tenths;
}

} // namespace roundlay
