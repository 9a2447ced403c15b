#include "kernel/geometry/tolerance.h"
#include "kernel/layout/bearing.h"
#include "kernel/layout/text.h"
#include "kernel/measure/load.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/review_parts.h"

#include <algorithm>
#include <charconv>
#include <utility>

namespace roundlay {

namespace {

std::string tag(const Layout &layout, int piece) {
    return layout.pieces[static_cast<std::size_t>(piece)].tag;
}

std::string place_of(const Layout &layout, const Timber &t) {
    return "floor " + layout.floors[static_cast<std::size_t>(t.floor)].name + ", " + name_of(t.use) + " " +
           tag(layout, t.piece);
}

/// What a person must state before spans are screened, and what is taken where it is not.
void check_loads(const Shell &shell, Findings &findings) {
    for (std::size_t f = 0; f < shell.floors.size(); ++f) {
        const Floor &floor = shell.floors[f];
        if (!floor.live_load)
            findings.push_back({Weight::note, "floor-not-screened", "floor " + floor.name,
                                "no live_load is stated, so its timbers are not screened for span",
                                subject("floor", f, "live_load")});
        else if (!floor.dead_load)
            findings.push_back({Weight::note, "dead-load-not-stated", "floor " + floor.name,
                                "no dead_load is stated: " + print_load(assumed_dead_load, shell.units) +
                                    " is taken for boards and what lies on them, and the timbers' own weight on top",
                                subject("floor", f, "dead_load")});
    }
}

/// How deep wood is cut away under a timber: at its ends, and over beams.
void check_notches(const Shell &shell, const Layout &layout, const Timber &t, Findings &findings) {
    const auto told = [&](double cut, double limit, const std::string &where, const char *part) {
        if (cut <= limit + tolerance::thinnest) return;
        findings.push_back(
            {Weight::warning, "notch-deep", place_of(layout, t),
             where + " cuts " + say(shell, cut) + " away under it; " + say(shell, limit) + ", " + part +
                 " of its height, is the deepest that a code lets joists be notched (IRC R502.8.1, "
                 "second-hand), and local code decides",
             subject("floor", static_cast<std::size_t>(t.floor), "height")});
    };
    for (const TimberHold *hold : {&t.hold_from, &t.hold_to})
        told(hold->full - hold->height, notch_limits(hold->full).end_depth, "an end of it", "a quarter");
    for (const TimberRest &rest : t.rests)
        told(rest.full - rest.height, notch_limits(rest.full).depth,
             "its seat on " + tag(layout, layout.timbers[static_cast<std::size_t>(rest.beam)].piece),
             "a sixth");
}

void check_bearings(const Shell &shell, const Layout &layout, Findings &findings) {
    for (const Timber &t : layout.timbers) {
        const double bearing =
            std::min(bearing_of(layout, t, End::datum).length, bearing_of(layout, t, End::far).length);
        if (bearing >= least_bearing - tolerance::weld) continue;
        findings.push_back(
            {Weight::warning, "bearing-short", place_of(layout, t),
             "an end of it bears on " + say(shell, bearing) +
                 " of wood; 38 mm (1 1/2 in) is the least that codes "
                 "ask for (Ontario Building Code; IRC R502.6, from memory), and local code decides",
             subject("floor", static_cast<std::size_t>(t.floor), "bearing")});
    }
}

std::string decimals(double mm, UnitSystem units, int places) {
    const bool metric = units == UnitSystem::metric;
    char digits[64];
    const auto end = std::to_chars(digits, digits + sizeof digits, metric ? mm : mm / mm_per_inch, std::chars_format::fixed, places);
    return std::string(digits, end.ptr) + (metric ? " mm" : " in");
}

/// Two lengths as the shell says them, as finely as it takes for them to differ.
std::pair<std::string, std::string> told_apart(UnitSystem units, double a, double b) {
    constexpr int finest = 6;
    LengthStyle style;
    style.system = units;
    std::pair<std::string, std::string> said{print_length(Length::mm(a), style), print_length(Length::mm(b), style)};
    for (int places = units == UnitSystem::metric ? 1 : 3; said.first == said.second && places <= finest; ++places)
        said = {decimals(a, units, places), decimals(b, units, places)};
    return said;
}

void check_deflections(const Shell &shell, const Layout &layout, Findings &findings) {
    for (const TimberScreen &s : screen_floors(shell, layout).timbers) {
        const Timber &t = layout.timbers[static_cast<std::size_t>(s.timber)];
        if (s.deflection <= s.span / deflection_limit) continue;
        const auto [bends, may] = told_apart(shell.units, s.deflection, s.span / deflection_limit);
        findings.push_back(
            {Weight::warning, "floor-springy", place_of(layout, t),
             "it would bend " + bends + " under the live load over a span of " +
                 say(shell, s.span) + "; a " + std::to_string(static_cast<int>(deflection_limit)) +
                 "th part (IRC R301.7, from memory) is " + may +
                 ". A screen only: local code and a licensed professional decide",
             subject("floor", static_cast<std::size_t>(t.floor), "height")});
    }
}

} // namespace

void review_floors(const Shell &shell, const Layout &layout, Findings &findings) {
    check_loads(shell, findings);
    for (const Timber &t : layout.timbers)
        check_notches(shell, layout, t, findings);
    check_bearings(shell, layout, findings);
    check_deflections(shell, layout, findings);
}

} // namespace roundlay
