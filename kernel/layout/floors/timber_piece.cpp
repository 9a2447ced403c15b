#include "kernel/layout/floors/timber_piece.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/moved.h"
#include "kernel/layout/floors/planned_timbers.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// How far an open box cut reaches past the blank, so that no skin of wood is left by rounding.
constexpr double past = 10;

/// One timber in its own frame: x along it from its middle line's datum end, y to its left, z up from its
/// deepest underside. Where a wall is not square to it, its longer side begins before that.
class TimberWood {
  public:
    TimberWood(const PlannedTimber &timber, const FloorPlace &floor) : t_(timber), floor_(floor) {}

    double deepest() const { return std::max(t_.height_from, t_.height_to); }
    double widest() const { return t_.widest(); }
    double length_over_all() const { return t_.past(t_.datum) + t_.whole() + t_.past(t_.far); }

    Frame frame() const {
        const Frame &room = floor_.frame;
        Frame f;
        f.x = t_.across() ? room.x : room.y;
        f.y = t_.across() ? room.y : -room.x;
        f.z = room.z;
        const Vec3 from = room.to_world({t_.from.x, t_.from.y, 0});
        f.origin = from - t_.datum.along() * f.x - (widest() / 2) * f.y;
        f.origin.z = t_.top - deepest();
        return f;
    }

    double neck(double x, const TimberEnd &end, double tail) const {
        return t_.width(x) - (end.tailed ? 2 * tail * end.bearing : 0);
    }

    /// Seen from above, where a line along a wall through x of the middle line meets the timber's left side
    /// (1) or its right one (-1).
    Vec2 side(double x, double lean, double sign) const {
        const double widens = (t_.width_to - t_.width_from) / 2 / t_.whole();
        const double out = sign * t_.width(x) / 2 / (1 - sign * widens * lean);
        return {x + lean * out, widest() / 2 + out};
    }
    /// The same at its wall's face, where a tailed end is narrower.
    Vec2 cheek(double face, const TimberEnd &e, double tail, double sign) const {
        if (!e.tailed) return side(face, e.lean, sign);
        const double out = sign * neck(face, e, tail) / 2;
        return {face + e.lean * out, widest() / 2 + out};
    }

    /// The underside, normal upward.
    Plane under() const {
        return plane_over(deepest() - t_.height_from, -(t_.height_to - t_.height_from) / t_.whole(), 0);
    }

    void add_faces(Piece &p) const {
        const double middle = widest() / 2, half = t_.width_from / 2,
                     r = (t_.width_to - t_.width_from) / 2 / t_.whole();
        if (t_.height_to != t_.height_from) p.cuts.emplace_back(FaceCut{LogFace::under, under().flipped()});
        if (r == 0) return;
        const double k = 1 / std::sqrt(1 + r * r);
        p.cuts.emplace_back(FaceCut{LogFace::outside, {{-k * r, -k, 0}, k * (half - middle)}});
        p.cuts.emplace_back(FaceCut{LogFace::inside, {{-k * r, k, 0}, k * (half + middle)}});
    }

    void add_end(Piece &p, End end, double tail, const std::string &carrier) const {
        const TimberEnd &e = end == End::datum ? t_.datum : t_.far;
        const double tip = end == End::datum ? 0 : t_.whole();
        const double face = end == End::datum ? e.along() : t_.whole() - e.along();
        if (e.lean != 0) add_slant(p, end, e.lean);
        if (e.tailed) {
            add_cheek(p, end, tip, face, tail, LogFace::outside);
            add_cheek(p, end, tip, face, tail, LogFace::inside);
        }
        if (e.height > 0)
            add_seat(p, std::min(tip, face), std::max(tip, face), deepest() - e.height, carrier);
    }

    void add_seat(Piece &p, double from, double to, double z, const std::string &carrier) const {
        BoxCut seat;
        seat.use = BoxUse::seat;
        seat.opening = carrier;
        if (from < tolerance::weld) from = -past - t_.past(t_.datum);
        if (to > t_.whole() - tolerance::weld) to = t_.whole() + past + t_.past(t_.far);
        seat.box = {{from, -past, -past}, {to, widest() + past, z}};
        p.cuts.emplace_back(seat);
    }

  private:
    /// Sawn along its wall.
    void add_slant(Piece &p, End end, double lean) const {
        const double tip = end == End::datum ? 0 : t_.whole(), middle = widest() / 2;
        const double out = (end == End::datum ? -1 : 1) / std::hypot(1, lean);
        p.cuts.emplace_back(FaceCut{end == End::datum ? LogFace::datum_end : LogFace::far_end,
                                    {{out, -out * lean, 0}, out * (tip - lean * middle)}});
    }

    void add_cheek(Piece &p, End end, double tip, double face, double tail, LogFace side) const {
        const TimberEnd &e = end == End::datum ? t_.datum : t_.far;
        const double sign = side == LogFace::outside ? -1 : 1;
        const Vec2 a = this->side(tip, e.lean, sign), b = cheek(face, e, tail, sign);
        const Vec2 d = (1 / length(b - a)) * (b - a);
        Vec3 normal{-d.y, d.x, 0};
        if (normal.y * sign < 0) normal = -normal;
        // From before the longer side's tip to where neither side is in the wall.
        const double reach = t_.past(e), first = std::min(tip, face) - reach,
                     last = std::max(tip, face) + reach;
        p.cuts.emplace_back(CheekCut{end, side, first, last, {normal, normal.x * a.x + normal.y * a.y}});
    }

    const PlannedTimber &t_;
    const FloorPlace &floor_;
};

/// From the frame on its middle line to that of its blank, which holds its longer side.
void move_to_blank(Piece &p, double before) {
    if (before == 0) return;
    for (Cut &cut : p.cuts)
        cut = moved(cut, {-before, 0, 0}, p.blank, p.blank);
    p.frame.origin = p.frame.origin - before * p.frame.x;
    p.datum.shoulder += before, p.far.shoulder += before;
}

} // namespace

Piece piece_of(const PlannedTimber &timber, const FloorPlan &plan, const std::vector<std::string> &carriers) {
    const TimberWood wood(timber, plan.place);
    Piece p;
    p.wall = plan.place.from;
    p.round = 0;
    p.frame = wood.frame();
    p.blank = {wood.length_over_all(), wood.widest(), wood.deepest()};
    p.butt_at_datum = timber.height_from > timber.height_to || timber.width_from >= timber.width_to;
    p.datum = {EndKind::pocket, carriers[0], timber.datum.along()};
    p.far = {EndKind::pocket, carriers[1], timber.whole() - timber.far.along()};
    p.below = carriers;
    wood.add_faces(p);
    wood.add_end(p, End::datum, plan.tail, carriers[0]);
    for (std::size_t i = 0; i < timber.rests.size(); ++i) {
        const PlannedTimber &beam = plan.timbers[beam_at(plan, timber, timber.rests[i])];
        const double half = beam.width_from / 2, middle = timber.datum.along() + timber.rests[i];
        const double under = timber.top - beam.top; // wood that stays over the beam
        if (std::max(timber.height(middle - half), timber.height(middle + half)) >
            under + tolerance::thinnest)
            wood.add_seat(p, middle - half, middle + half, wood.deepest() - under, carriers[2 + i]);
    }
    wood.add_end(p, End::far, plan.tail, carriers[1]);
    move_to_blank(p, timber.past(timber.datum));
    return p;
}

namespace {

/// Along the wall that an end lies in, from where a line square to it through the frame's origin stands on
/// it.
double along_wall(Vec2 p, double lean) {
    return (lean * p.x + p.y) / std::hypot(1, lean);
}

/// An end that comes in askew, as one that lies square to its wall and is so much wider that it holds it.
/// `tip`, `face`: of its corners seen from above, left and right.
void lie_square(LyingEnd &lying, const Frame &f, double lean, const Vec2 (&tip)[2], const Vec2 (&face)[2]) {
    const auto at = [&](Vec2 p) { return along_wall(p, lean); };
    const double middle = (at(tip[0]) + at(tip[1]) + at(face[0]) + at(face[1])) / 4,
                 way = std::hypot(1, lean);
    lying.half_at_tip = std::max(at(tip[0]) - middle, middle - at(tip[1]));
    lying.half_at_face = std::max(at(face[0]) - middle, middle - at(face[1]));
    const Vec2 wall{lean / way, 1 / way}, square{1 / way, -lean / way};
    const Vec2 end = middle * wall + dot(tip[0], square) * square;
    const double top = f.to_local(lying.tip).z, out = face[0].x > tip[0].x ? 1 : -1;
    lying.tip = f.to_world({end.x, end.y, top});
    lying.out = out * (square.x * f.x + square.y * f.y);
}

} // namespace

LyingEnd lying_end(const PlannedTimber &timber, const FloorPlace &floor, End end, double tail) {
    const TimberWood wood(timber, floor);
    const Frame f = wood.frame();
    const TimberEnd &e = end == End::datum ? timber.datum : timber.far;
    const double tip = end == End::datum ? 0 : timber.whole();
    const double face = end == End::datum ? e.along() : timber.whole() - e.along();
    LyingEnd lying;
    lying.tip = f.to_world({tip, wood.widest() / 2, wood.deepest()});
    lying.out = end == End::datum ? f.x : -f.x;
    lying.depth = e.bearing;
    lying.half_at_tip = timber.width(tip) / 2;
    lying.half_at_face = wood.neck(face, e, tail) / 2;
    const Plane bed = e.height > 0 ? plane_over(wood.deepest() - e.height, 0, 0) : wood.under();
    lying.bed = to_world(bed, f);
    const double out = end == End::datum ? -timber.past(e) : timber.past(e);
    const double a = f.origin.z + bed.height_at(tip + out, 0), b = f.origin.z + bed.height_at(face - out, 0);
    lying.low = std::min(a, b);
    lying.high = std::max(a, b);
    lying.top = timber.top;
    if (e.lean != 0) {
        const Vec2 tips[]{wood.side(tip, e.lean, 1), wood.side(tip, e.lean, -1)},
            faces[]{wood.cheek(face, e, tail, 1), wood.cheek(face, e, tail, -1)};
        lie_square(lying, f, e.lean, tips, faces);
    }
    return lying;
}

PocketCut pocket_for(const LyingEnd &end, const Piece &in, const std::string &holds) {
    const Vec3 tip = in.frame.to_local(end.tip), out = in.frame.direction_to_local(end.out);
    PocketCut cut;
    cut.x = tip.x;
    cut.y_back = tip.y;
    cut.y_face = tip.y + (out.y > 0 ? end.depth : -end.depth);
    cut.half_at_back = end.half_at_tip;
    cut.half_at_face = end.half_at_face;
    cut.bed = to_local(end.bed, in.frame);
    cut.z_top = tip.z;
    cut.holds = holds;
    return cut;
}

} // namespace roundlay
