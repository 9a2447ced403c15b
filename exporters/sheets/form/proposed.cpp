#include "exporters/sheets/form/proposed.h"

#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double least_overhang = 3; ///< mm: less is flush, also where walls meet a little out of square
constexpr double at_jamb = 1;        ///< mm of height: an opening that near touches the log
constexpr double past_jamb = 50;     ///< mm that a log runs on at least, past a jamb that it is measured at

const PieceEnd &end_of_piece(const Piece &piece, End end) {
    return end == End::datum ? piece.datum : piece.far;
}

/// The wood's lower side before it is notched at corners, over a step of the foundation too.
double under_side(const Features &f, double x) {
    double low = f.lowest(x);
    for (const BoxPart &box : f.boxes)
        if (box.cut->use == BoxUse::step && x >= box.x_from && x <= box.x_to) low = std::max(low, box.z_to);
    return low;
}

/// Of a log that ends in the corner, flush or past the crossing wall.
const Notch *tail_notch(const Features &features, End end, Side side) {
    const std::string &corner = end_of_piece(*features.piece, end).at;
    for (const Notch &notch : features.notches) {
        const SeamCut &cut = *notch.cut;
        if (cut.side == side && cut.end == end && cut.corner == corner && !cut.runs_on) return &notch;
    }
    return nullptr;
}

/// A seam of the tail on both faces; without one the log's own face goes on there.
struct TailSide {
    SawLine shoulder, end;                                             ///< where, along the log
    double shoulder_outside, shoulder_inside, end_outside, end_inside; ///< piece frame
};

TailSide side_of(const Notch &n, End end) {
    if (end == End::datum) return {n.to, n.from, n.outside_to, n.inside_to, n.outside_from, n.inside_from};
    return {n.from, n.to, n.outside_from, n.inside_from, n.outside_to, n.inside_to};
}

TailSide face_side(const Features &f, TailSide side, bool top) {
    const auto z = [&](double x) { return top ? f.highest(x) : under_side(f, x); };
    side.shoulder_outside = z(side.shoulder.outside), side.shoulder_inside = z(side.shoulder.inside);
    side.end_outside = z(side.end.outside), side.end_inside = z(side.end.inside);
    return side;
}

std::optional<ProposedTail> tail_of(const Features &f, End end) {
    const Notch *top = tail_notch(f, end, Side::top), *under = tail_notch(f, end, Side::under);
    if (!top && !under) return {};
    const TailSide one = side_of(top ? *top : *under, end);
    const TailSide high = top ? one : face_side(f, one, true);
    const TailSide low = under ? side_of(*under, end) : face_side(f, one, false);
    // Where a seam leaves the wood before its corner, the wood's own face is measured.
    const auto place = [&](double x, double z_low, double z_high) {
        const double bottom = std::max(z_low, under_side(f, x));
        return TailPlace{x, bottom, std::max(bottom, std::min(z_high, f.highest(x)))};
    };
    return ProposedTail{place(one.shoulder.outside, low.shoulder_outside, high.shoulder_outside),
                        place(one.shoulder.inside, low.shoulder_inside, high.shoulder_inside),
                        place(one.end.outside, low.end_outside, high.end_outside),
                        place(one.end.inside, low.end_inside, high.end_inside)};
}

/// Past the crossing wall's far face, in the middle of the log's width.
std::optional<double> overhang_of(const Layout &layout, const Piece &piece, const Features &f, End end) {
    const WallPlace &wall = layout.walls[piece.wall];
    const double origin = wall.frame.to_local(piece.frame.origin).x;
    for (const WallMeeting &meeting : wall.meetings) {
        if (layout.corners[meeting.corner].name != end_of_piece(piece, end).at) continue;
        const SawLine &line = end == End::datum ? f.datum_end : f.far_end;
        const double at = origin + (line.outside + line.inside) / 2,
                     slant = meeting.skew * wall.thickness / 2;
        const double over = end == End::datum ? meeting.low + slant - at : at - meeting.high - slant;
        if (over > least_overhang) return over;
    }
    return {};
}

bool has_saddle(const Features &f, End end) {
    return std::ranges::any_of(f.scopes, [&](const Scope &scope) {
        return scope.cut->use == ScopeUse::saddle && !scope.cut->runs_on && scope.cut->end == end;
    });
}

} // namespace

ProposedEnd proposed_end(const Layout &layout, const Piece &piece, End end) {
    const Features f = features_of(piece);
    const PieceEnd &at = end_of_piece(piece, end);
    const double x = std::clamp(at.shoulder, 0.0, piece.blank.length);
    ProposedEnd p;
    p.height = f.highest(x) - under_side(f, x);
    p.width = f.innermost(x) - f.outermost(x);
    if (at.kind != EndKind::corner) return p;
    p.overhang = overhang_of(layout, piece, f, end);
    p.tail = tail_of(f, end);
    if (p.tail) p.shape = EndShape::tail;
    if (!p.tail && (f.round != nullptr || has_saddle(f, end))) p.shape = EndShape::round;
    return p;
}

ProposedEnd proposed_at(const Layout &layout, const Piece &piece, Index<CornerPlace> corner) {
    const WallPlace &wall = layout.walls[piece.wall];
    const Features f = features_of(piece);
    ProposedEnd p;
    for (const WallMeeting &meeting : wall.meetings)
        if (meeting.corner == corner) {
            const double x = meeting.x - wall.frame.to_local(piece.frame.origin).x;
            p.height = f.highest(x) - under_side(f, x);
            p.width = f.innermost(x) - f.outermost(x);
        }
    return p;
}

std::vector<JambPlace> jamb_places(const Shell &shell, const Layout &layout, const Piece &piece) {
    std::vector<JambPlace> places;
    if (piece.timber) return places;
    const WallPlace &wall = layout.walls[piece.wall];
    const Vec3 origin = wall.frame.to_local(piece.frame.origin);
    const HewnFaces f = hewn_faces(piece);
    const WallHeights &heights = layout.heights[piece.wall];
    const double near = std::max(0.0, heights.pitch - heights.log_height) + at_jamb; // a seam lies between
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &opening = shell.openings[i];
        const double sill = opening.sill.mm(), head = sill + opening.height.mm();
        if (opening.wall != wall.name || origin.z > head + near ||
            origin.z + piece.blank.height < sill - near)
            continue;
        for (const bool near_datum : {true, false}) {
            const double at = opening.from_left.mm() + (near_datum ? 0 : opening.width.mm()) - origin.x;
            if (at > past_jamb && at < piece.blank.length - past_jamb)
                places.push_back({i, near_datum, at, f.highest(at) - f.lowest(at)});
        }
    }
    return places;
}

std::vector<double> peg_places(const Layout &layout, Index<Piece> piece) {
    std::vector<double> places;
    for (const Peg &peg : layout.pegs)
        if (peg.upper == piece) places.push_back(layout.pieces[piece].frame.to_local(peg.top).x);
    std::ranges::sort(places);
    return places;
}

} // namespace roundlay::sheets
