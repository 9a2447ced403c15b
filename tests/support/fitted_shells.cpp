#include "tests/support/any_parts.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace roundlay::test {

namespace {

Length mm(double v) {
    return Length::mm(v);
}

/// Walls that run against each other: most such pairs face each other across a room.
std::vector<std::pair<std::string, std::string>> pairs_of(const Shell &shell) {
    std::vector<std::pair<std::string, std::string>> pairs;
    for (const Wall &a : shell.walls)
        for (const Wall &b : shell.walls)
            if (std::abs(std::remainder(a.heading - b.heading - 180, 360)) < 1e-9)
                pairs.emplace_back(a.name, b.name);
    return pairs;
}

Floor any_floor(const Shell &shell, std::size_t number) {
    Floor floor;
    floor.name = "F" + std::to_string(number);
    std::tie(floor.from, floor.to) = *rc::gen::elementOf(pairs_of(shell));
    const double pitch = shell.rounds.pitch->mm();
    const int rounds = *shell.rounds.count;
    floor.joist = {mm(between(60, 140)), mm(between(90, 260))};
    // the underside well within a log of the first wall: every second wall starts with a half log
    const auto wall = std::find_if(shell.walls.begin(), shell.walls.end(),
                                   [&](const Wall &w) { return w.name == floor.from; });
    const bool full = ((wall - shell.walls.begin()) % 2 == 0) == (shell.rounds.full_first == "A");
    const double log = pitch - shell.rounds.gap.mm();
    const double bed =
        pitch * (between(0, std::max(0, rounds - 2)) + (full ? 0 : 0.5)) + log * between(30, 80) / 100.0;
    floor.level = mm(bed) + floor.joist.height;
    if (sometimes(3)) {
        floor.tip_width = floor.joist.width - mm(between(0, 20));
        floor.tip_height = floor.joist.height - mm(between(0, 30));
    }
    floor.spacing = mm(between(350, 1200));
    if (sometimes(2)) floor.first = mm(between(200, 900));
    floor.bearing = mm(between(40, 110));
    if (sometimes(2)) floor.pocket = PocketKind::tailed;
    floor.tail = Slope::rise_per_run(between(5, 20) / 100.0);
    if (sometimes(3))
        floor.beams.push_back({mm(between(1500, 4000)), {mm(between(120, 220)), mm(between(150, 260))}});
    if (sometimes(2))
        floor.openings.push_back({"stair", mm(between(500, 3000)), mm(sometimes(4) ? 0 : between(400, 2000)),
                                  mm(between(600, 1200)), mm(between(600, 2000))});
    return floor;
}

StatedBore any_bore(const Shell &shell) {
    StatedBore bore;
    bore.use = *rc::gen::element(BoreUse::bolt, BoreUse::rod, BoreUse::wire, BoreUse::hole);
    const Wall &wall = *rc::gen::elementOf(shell.walls);
    bore.wall = wall.name;
    bore.from_left = wall.length * (between(15, 85) / 100.0);
    if (sometimes(2)) bore.from_outside = mm(between(30, 80));
    bore.diameter = mm(between(12, 30));
    if (sometimes(2)) bore.to_round = 1;
    if (sometimes(3)) bore.drift = mm(between(-6, 6));
    return bore;
}

} // namespace

Shell any_fitted_shell() {
    Shell shell = *rc::gen::element(0, 1, 2) == 0 ? any_tapered_shell()
                  : *rc::gen::element(0, 1) == 0  ? any_shell()
                                                  : any_family_shell();
    if (sometimes(2)) shell.openings.clear();
    if (pairs_of(shell).empty()) return shell;
    for (std::size_t i = 0, n = static_cast<std::size_t>(between(1, 2)); i < n; ++i)
        shell.floors.push_back(any_floor(shell, i + 1));
    if (sometimes(2)) {
        shell.trim.spline_width = mm(between(30, 50));
        shell.trim.spline_depth = mm(between(15, 40));
    }
    if (sometimes(2)) shell.trim.sill_slope = Slope::rise_per_run(between(2, 12) / 100.0);
    if (sometimes(3))
        shell.pegs.draw = mm(between(1, 5));
    else if (sometimes(4))
        shell.pegs.bored = PegBoring::in_place;
    if (sometimes(3)) shell.bores.push_back(any_bore(shell));
    return shell;
}

} // namespace roundlay::test
