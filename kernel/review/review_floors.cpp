#include "kernel/geometry/tolerance.h"
#include "kernel/layout/floors/bearing.h"
#include "kernel/layout/text.h"
#include "kernel/layout/wood/body.h"
#include "kernel/measure/load.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/review_parts.h"
#include "kernel/trade/weight.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <tuple>
#include <utility>

namespace roundlay {

namespace {

std::string tag(const Layout &layout, Index<Piece> piece) {
    return layout.pieces[piece].tag;
}

About place_of(const Layout &layout, const Timber &t) {
    return {about::Floor{layout.floors[t.floor].name}, about::Timber{t.use, tag(layout, t.piece)}};
}

/// What a person must state before spans are screened, and what is taken where it is not.
void check_loads(const Shell &shell, Findings &findings) {
    for (std::size_t f = 0; f < shell.floors.size(); ++f) {
        const Floor &floor = shell.floors[f];
        if (!floor.live_load)
            findings.push_back({Weight::note,
                                "floor-not-screened",
                                {about::Floor{floor.name}},
                                said("no live_load is stated, so its timbers are not screened for span"),
                                {},
                                subject("floor", f, "live_load")});
        else if (!floor.dead_load)
            findings.push_back({Weight::note,
                                "dead-load-not-stated",
                                {about::Floor{floor.name}},
                                said("no dead_load is stated: %1 is taken for boards and what lies on them, "
                                     "and the timbers' own "
                                     "weight on top",
                                     in_kpa(assumed_dead_load)),
                                {},
                                subject("floor", f, "dead_load")});
    }
}

/// How deep wood is cut away under a timber: at its ends, and over beams.
void check_notches(const Layout &layout, const Timber &t, Findings &findings) {
    const auto told = [&](double cut, double limit, const Said &where, const Said &part) {
        if (cut <= limit + tolerance::thinnest) return;
        findings.push_back({Weight::warning, "notch-deep", place_of(layout, t),
                            said("%1 cuts %2 away under it", where, in_mm(cut)),
                            said("%1, %2 of its height, is the deepest that a code lets joists be notched "
                                 "(IRC R502.8.1, second-hand), and "
                                 "local code decides",
                                 in_mm(limit), part),
                            subject("floor", t.floor.at(), "height")});
    };
    for (const TimberHold *hold : {&t.hold_from, &t.hold_to})
        told(hold->full - hold->height, notch_limits(hold->full).end_depth, said("an end of it"),
             said("a quarter"));
    for (const TimberRest &rest : t.rests)
        told(rest.full - rest.height, notch_limits(rest.full).depth,
             said("its seat on %1", tag(layout, layout.timbers[rest.beam].piece)), said("a sixth"));
}

void check_bearings(const Layout &layout, Findings &findings) {
    for (const Timber &t : layout.timbers) {
        const double bearing =
            std::min(bearing_of(layout, t, End::datum).length, bearing_of(layout, t, End::far).length);
        if (bearing >= least_bearing - tolerance::weld) continue;
        findings.push_back({Weight::warning, "bearing-short", place_of(layout, t),
                            said("an end of it bears on %1 of wood", in_mm(bearing)),
                            said("38 mm (1 1/2 in) is the least that codes ask for (Ontario Building Code; "
                                 "IRC R502.6, from memory), and local "
                                 "code decides"),
                            subject("floor", t.floor.at(), "bearing")});
    }
}

/// Two lengths as finely as it takes for them to differ where they are told.
std::pair<LengthAmount, LengthAmount> told_apart(UnitSystem units, double a, double b) {
    constexpr int finest = 6;
    const LengthStyle style{.system = units};
    if (print_length(Length::mm(a), style) != print_length(Length::mm(b), style)) return {in_mm(a), in_mm(b)};
    int places = units == UnitSystem::metric ? 1 : 3;
    while (places < finest &&
           print_decimals(Length::mm(a), units, places) == print_decimals(Length::mm(b), units, places))
        ++places;
    return {finely_in_mm(a, places), finely_in_mm(b, places)};
}

void check_deflections(const Shell &shell, const Layout &layout, const FloorScreen &screen,
                       Findings &findings) {
    for (const TimberScreen &s : screen.timbers) {
        const Timber &t = layout.timbers[s.timber];
        if (s.deflection <= s.span / deflection_limit) continue;
        const auto [bends, may] = told_apart(shell.units, s.deflection, s.span / deflection_limit);
        findings.push_back(
            {Weight::warning, "floor-springy", place_of(layout, t),
             said("it would bend %1 under the live load over a span of %2", bends, in_mm(s.span)),
             said("a %1th part (IRC R301.7, from memory) is %2. A screen only: local code and a licensed "
                  "professional decide",
                  static_cast<int>(deflection_limit), may),
             subject("floor", t.floor.at(), "height")});
    }
}

Said whole_force(UnitSystem units, double newtons, double (*rounded)(double)) {
    if (units == UnitSystem::metric) return said("%1 N", std::llround(rounded(newtons)));
    return said("%1 lb", std::llround(rounded(newtons / newtons_per_pound)));
}

/// Rounded up to whole newtons or pounds.
Said force(UnitSystem units, double newtons) {
    return whole_force(units, newtons, [](double f) { return std::ceil(f); });
}

/// Rounded down.
Said force_at_least(UnitSystem units, double newtons) {
    return whole_force(units, newtons, [](double f) { return std::floor(f); });
}

/// The log that an end lies in, where no log of its wall lies over that one; else nothing can lift it out.
const Piece *last_log_under(const Layout &layout, const Piece &timber, End end) {
    const std::string &tag = timber.below.at(end == End::datum ? 0 : 1);
    const auto log = std::ranges::find(layout.pieces, tag, &Piece::tag);
    if (log == layout.pieces.end()) return nullptr;
    const bool held = std::ranges::any_of(layout.pieces, [&](const Piece &p) {
        return !p.timber && p.wall == log->wall && p.round > log->round;
    });
    return held ? nullptr : &*log;
}

/// Where nothing but its own weight holds the timber down; nothing where something does.
std::optional<Said> loose_on(const Layout &layout, const Timber &t, std::size_t support) {
    const auto on = [&](Index<Timber> timber) { return tag(layout, layout.timbers[timber].piece); };
    const std::size_t last = t.rests.size() + 1;
    if (support > 0 && support < last) return said("its seat on %1", on(t.rests[support - 1].beam));
    const TimberHold &hold = support == 0 ? t.hold_from : t.hold_to;
    if (hold.carrier) return said("its end in %1", on(*hold.carrier));
    const Piece *log = last_log_under(layout, layout.pieces[t.piece], support == 0 ? End::datum : End::far);
    return log ? std::optional(said("its end in %1", log->tag)) : std::nullopt;
}

void check_lifts(const Shell &shell, const Layout &layout, const FloorScreen &screen, Findings &findings) {
    for (const TimberScreen &s : screen.timbers)
        for (std::size_t k = 0; k < s.lifts.size(); ++k) {
            const Timber &t = layout.timbers[s.timber];
            const auto where = s.lifts[k] > 0 ? loose_on(layout, t, k) : std::nullopt;
            if (!where) continue;
            findings.push_back(
                {Weight::warning, "end-lifts", place_of(layout, t),
                 said("%1 pulls up with %2 where the load lies on the spans that lift it, and nothing but "
                      "its weight holds it down",
                      *where, force(shell.units, s.lifts[k])),
                 said("tie it down there. Timbers that run on over their supports: statics, equation of "
                      "three moments, derived. A screen only: local code and a licensed professional decide"),
                 subject("floor", t.floor.at(), "live_load")});
        }
}

/// What pulls up on a log of a wall, in a floor: summed by floor, wall and round.
using WallLifts = std::map<std::tuple<Index<FloorPlace>, Index<WallPlace>, int>, double>;

WallLifts lifts_on_walls(const Layout &layout, const FloorScreen &screen) {
    WallLifts all;
    for (const TimberScreen &s : screen.timbers) {
        const Timber &t = layout.timbers[s.timber];
        const auto &below = layout.pieces[t.piece].below;
        for (const End end : {End::datum, End::far}) {
            const bool datum = end == End::datum;
            const double lift = s.lifts.empty() ? 0 : datum ? s.lifts.front() : s.lifts.back();
            if (lift <= 0 || (datum ? t.hold_from : t.hold_to).carrier) continue;
            const auto log = std::ranges::find(layout.pieces, below.at(datum ? 0 : 1), &Piece::tag);
            if (log != layout.pieces.end()) all[{t.floor, log->wall, log->round}] += lift;
        }
    }
    return all;
}

/// N, at least: what lies over that round in its wall.
double weight_over(const Shell &shell, const Layout &layout, const Bodies &bodies, Index<WallPlace> wall,
                   int round) {
    double kg = 0; // of wood of which no values are known none
    for (const Piece &p : layout.pieces)
        if (!p.timber && p.wall == wall && p.round > round)
            kg += weigh(bodies[p.model].volume, wood_of(shell, p.species)).low_kg;
    return kg * newtons_per_kilogram;
}

/// Logs over a joist's end hold it down by their weight, if they are heavy enough; with none over it, see
/// check_lifts.
void check_walls_lifted(const Shell &shell, const Layout &layout, const Bodies &bodies,
                        const FloorScreen &screen, Findings &findings) {
    for (const auto &[place, lift] : lifts_on_walls(layout, screen)) {
        const auto &[floor, wall, round] = place;
        const double weight = weight_over(shell, layout, bodies, wall, round);
        if (weight <= 0 || lift <= weight) continue;
        findings.push_back(
            {Weight::warning,
             "wall-lifts",
             {about::Floor{layout.floors[floor].name}},
             said("its timbers' ends in wall %1 pull up with %2 in all where the load lies on the spans that "
                  "lift them, and the logs over them weigh %3 at least",
                  layout.walls[wall].name, force(shell.units, lift), force_at_least(shell.units, weight)),
             said("tie it down there. Timbers that run on over their supports: statics, equation of "
                  "three moments, derived. A screen only: local code and a licensed professional decide"),
             subject("floor", floor.at(), "live_load")});
    }
}

} // namespace

void review_floors(const Shell &shell, const Layout &layout, const Bodies &bodies, Findings &findings) {
    check_loads(shell, findings);
    for (const Timber &t : layout.timbers)
        check_notches(layout, t, findings);
    check_bearings(layout, findings);
    const FloorScreen screen = screen_floors(shell, layout);
    check_deflections(shell, layout, screen, findings);
    check_lifts(shell, layout, screen, findings);
    check_walls_lifted(shell, layout, bodies, screen, findings);
}

} // namespace roundlay
