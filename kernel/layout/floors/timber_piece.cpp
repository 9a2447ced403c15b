#include "kernel/layout/floors/timber_piece.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/floors/planned_timbers.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// How far an open box cut reaches past the blank, so that no skin of wood is left by rounding.
constexpr double past = 10;

/// One timber in its own frame: x along it from its datum end, y to its left, z up from its deepest
/// underside.
class TimberWood {
  public:
    TimberWood(const PlannedTimber &timber, const FloorPlace &floor) : t_(timber), floor_(floor) {}

    double deepest() const { return std::max(t_.height_from, t_.height_to); }
    double widest() const { return std::max(t_.width_from, t_.width_to); }

    Frame frame() const {
        const Frame &room = floor_.frame;
        Frame f;
        f.x = t_.across() ? room.x : room.y;
        f.y = t_.across() ? room.y : -room.x;
        f.z = room.z;
        const Vec3 from = room.to_world({t_.from.x, t_.from.y, 0});
        f.origin = from - t_.datum.bearing * f.x - (widest() / 2) * f.y;
        f.origin.z = t_.top - deepest();
        return f;
    }

    double neck(double x, const TimberEnd &end, double tail) const {
        return t_.width(x) - (end.tailed ? 2 * tail * end.bearing : 0);
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
        const double face = end == End::datum ? e.bearing : t_.whole() - e.bearing;
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
        if (from < tolerance::weld) from = -past;
        if (to > t_.whole() - tolerance::weld) to = t_.whole() + past;
        seat.box = {{from, -past, -past}, {to, widest() + past, z}};
        p.cuts.emplace_back(seat);
    }

  private:
    void add_cheek(Piece &p, End end, double tip, double face, double tail, LogFace side) const {
        const TimberEnd &e = end == End::datum ? t_.datum : t_.far;
        const double sign = side == LogFace::outside ? -1 : 1, middle = widest() / 2;
        const Vec2 a{tip, middle + sign * t_.width(tip) / 2},
            b{face, middle + sign * neck(face, e, tail) / 2};
        const Vec2 d = (1 / length(b - a)) * (b - a);
        Vec3 normal{-d.y, d.x, 0};
        if (normal.y * sign < 0) normal = -normal;
        CheekCut cut{
            end, side, std::min(tip, face), std::max(tip, face), {normal, normal.x * a.x + normal.y * a.y}};
        p.cuts.emplace_back(cut);
    }

    const PlannedTimber &t_;
    const FloorPlace &floor_;
};

/// The beam under the place `rest` along the timber, measured from its `from`.
} // namespace

Piece piece_of(const PlannedTimber &timber, const FloorPlan &plan, const std::vector<std::string> &carriers) {
    const TimberWood wood(timber, plan.place);
    Piece p;
    p.wall = plan.place.from;
    p.round = 0;
    p.frame = wood.frame();
    p.blank = {timber.whole(), wood.widest(), wood.deepest()};
    p.butt_at_datum = timber.height_from > timber.height_to || timber.width_from >= timber.width_to;
    p.datum = {EndKind::pocket, carriers[0], timber.datum.bearing};
    p.far = {EndKind::pocket, carriers[1], timber.whole() - timber.far.bearing};
    p.below = carriers;
    wood.add_faces(p);
    wood.add_end(p, End::datum, plan.tail, carriers[0]);
    for (std::size_t i = 0; i < timber.rests.size(); ++i) {
        const PlannedTimber &beam = plan.timbers[beam_at(plan, timber, timber.rests[i])];
        const double half = beam.width_from / 2, middle = timber.datum.bearing + timber.rests[i];
        const double under = timber.top - beam.top; // wood that stays over the beam
        if (std::max(timber.height(middle - half), timber.height(middle + half)) >
            under + tolerance::thinnest)
            wood.add_seat(p, middle - half, middle + half, wood.deepest() - under, carriers[2 + i]);
    }
    wood.add_end(p, End::far, plan.tail, carriers[1]);
    return p;
}

LyingEnd lying_end(const PlannedTimber &timber, const FloorPlace &floor, End end, double tail) {
    const TimberWood wood(timber, floor);
    const Frame f = wood.frame();
    const TimberEnd &e = end == End::datum ? timber.datum : timber.far;
    const double tip = end == End::datum ? 0 : timber.whole();
    const double face = end == End::datum ? e.bearing : timber.whole() - e.bearing;
    LyingEnd lying;
    lying.tip = f.to_world({tip, wood.widest() / 2, wood.deepest()});
    lying.out = end == End::datum ? f.x : -f.x;
    lying.depth = e.bearing;
    lying.half_at_tip = timber.width(tip) / 2;
    lying.half_at_face = wood.neck(face, e, tail) / 2;
    const Plane bed = e.height > 0 ? plane_over(wood.deepest() - e.height, 0, 0) : wood.under();
    lying.bed = to_world(bed, f);
    const double a = f.origin.z + bed.height_at(tip, 0), b = f.origin.z + bed.height_at(face, 0);
    lying.low = std::min(a, b);
    lying.high = std::max(a, b);
    lying.top = timber.top;
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
