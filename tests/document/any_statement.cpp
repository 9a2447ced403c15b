#include "tests/document/any_statement.h"

#include "kernel/measure/spelling.h"
#include "kernel/shell/close_plan.h"
#include "kernel/shell/limits.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace roundlay::test {

namespace {

using rc::gen::inRange;

/// As a person could have typed it.
Length typed(double mm) {
    return std::get<Length>(parse_length(spell_length(Length::mm(mm), UnitSystem::metric)));
}

/// Over 0, up to `most` mm: whole millimetres, 64ths and 12ths of an inch, and doubles as they come.
Length any_size(double most) {
    const double part = *inRange(1, 1'000'001) / 1e6;
    const double raw = part * most;
    switch (*inRange(0, 4)) {
    case 0:
        return Length::mm(std::ceil(raw));
    case 1:
        return typed(std::max(1.0, std::floor(raw / 25.4 * 64)) * 25.4 / 64);
    case 2:
        return typed(std::max(1.0, std::floor(raw / 25.4 * 12)) * 25.4 / 12);
    default:
        return typed(raw);
    }
}
Length any_gap(double most) {
    return *inRange(0, 4) == 0 ? Length() : any_size(most);
}

Slope any_slope(bool may_fall) {
    const double sign = may_fall && *rc::gen::arbitrary<bool>() ? -1 : 1;
    switch (*inRange(0, 4)) {
    case 0:
        return Slope();
    case 1:
        return Slope::rise_per_run(sign / *inRange(1, 40));
    default:
        return Slope::rise_per_run(sign * *inRange(0, 1'000'000'000) / 1e8);
    }
}

std::string any_name() {
    const auto part =
        rc::gen::elementOf(std::vector<std::string>{"a", "Z", "3", " ", "\"", "'", "\\", "#", "=", "[", "]",
                                                    "\u00e9", "\u2033", "\U0001F332", "'''", "\"\"\""});
    std::string name;
    for (const std::string &p : *rc::gen::resize(30, rc::gen::container<std::vector<std::string>>(part)))
        name += p;
    return name;
}

NotchRule any_notch() {
    NotchRule notch;
    notch.kind = *rc::gen::element(NotchKind::full_dovetail, NotchKind::half_dovetail, NotchKind::square_lap,
                                   NotchKind::stated, NotchKind::saddle);
    notch.slope = any_slope(false);
    notch.along = any_slope(true);
    notch.across = any_slope(true);
    notch.overhang = any_gap(2000);
    notch.shoulder = *rc::gen::arbitrary<bool>() ? any_gap(2000) : Length() - any_gap(2000);
    notch.scribe = any_gap(2000);
    notch.least_tail = any_gap(2000);
    return notch;
}

/// One wall or two that close the plan, where the others let them.
void leave_lengths_out(std::vector<Wall> &walls) {
    std::vector<Wall> open = walls;
    for (int i = *inRange(0, 3); i > 0; --i) open[*inRange<std::size_t>(0, open.size())].closes = true;
    if (!close_plan(open)) walls = open;
}

} // namespace

std::vector<Wall> any_walls() {
    std::vector<Wall> walls;
    const int count = *inRange(1, 8);
    for (int i = 0; i < count; ++i) {
        Wall wall;
        wall.name = std::string(1, static_cast<char>('A' + i)) + *rc::gen::element<std::string>("", "x", "2");
        wall.heading = *inRange(0, 2) == 0 ? 45.0 * *inRange(0, 8) : *inRange(0, 360'000'000) / 1e6;
        wall.length = any_size(100'000);
        if (*inRange(0, 3) == 0) wall.thickness = any_size(2000);
        if (*inRange(0, 3) == 0) wall.pitch = any_size(2000);
        if (*inRange(0, 3) == 0) wall.log_height = any_size(2000);
        walls.push_back(wall);
    }
    leave_lengths_out(walls);
    return walls;
}

namespace {

std::string any_wall(const Shell &shell) {
    return (*rc::gen::elementOf(shell.walls)).name;
}

void add_rounds(Shell &shell) {
    const int without = *inRange(0, 3);
    if (without != 0) shell.rounds.count = *inRange(1, most_rounds + 1);
    if (without != 1) shell.rounds.height = any_size(100'000);
    if (without != 2) shell.rounds.pitch = any_size(2000);
    shell.rounds.gap = any_gap(2000);
    if (*rc::gen::arbitrary<bool>()) shell.rounds.full_first = any_wall(shell);
    shell.rounds.top = *rc::gen::element(TopRule::level, TopRule::staggered);
}

void add_corners(Shell &shell) {
    for (std::size_t i = 0; shell.walls.size() > 2 && i < shell.walls.size(); ++i) {
        if (*inRange(0, 4) != 0) continue;
        const std::string &next = shell.walls[(i + 1) % shell.walls.size()].name;
        shell.corners.push_back(
            {shell.walls[i].name, next, *rc::gen::arbitrary<bool>() ? shell.notch : any_notch()});
    }
}

LogSizes any_sizes() {
    LogSizes sizes;
    for (auto *size : {&sizes.butt_height, &sizes.tip_height, &sizes.butt_width, &sizes.tip_width})
        if (*inRange(0, 3) == 0) *size = any_size(2000);
    if (*inRange(0, 3) == 0) sizes.diameter = any_size(2000);
    if (*inRange(0, 3) == 0) sizes.butt = *rc::gen::element(LogEnd::left, LogEnd::right);
    if (*inRange(0, 3) == 0) sizes.finish = *rc::gen::element(Finish::hewn, Finish::sawn, Finish::peeled);
    return sizes;
}

LogNotch any_log_notch() {
    LogNotch notch;
    if (*inRange(0, 2) == 0)
        notch.kind = *rc::gen::element(NotchKind::full_dovetail, NotchKind::half_dovetail, NotchKind::square_lap,
                                       NotchKind::stated);
    if (*inRange(0, 2) == 0) notch.slope = any_slope(false);
    if (*inRange(0, 2) == 0) notch.along = any_slope(true);
    if (*inRange(0, 2) == 0) notch.across = any_slope(true);
    if (*inRange(0, 2) == 0) notch.overhang_left = any_gap(2000);
    if (*inRange(0, 2) == 0) notch.overhang_right = any_gap(2000);
    return notch;
}

void add_partitions(Shell &shell) {
    for (int i = *inRange(0, 3); i > 0 && shell.walls.size() > 1; --i) {
        Partition wall;
        wall.name = "p" + std::to_string(shell.partitions.size());
        wall.from = any_wall(shell);
        do wall.to = any_wall(shell);
        while (wall.to == wall.from);
        wall.from_left = any_gap(100'000);
        if (*inRange(0, 2) == 0) wall.heading = 45.0 * *inRange(0, 8);
        if (*inRange(0, 2) == 0) wall.thickness = any_size(2000);
        if (*inRange(0, 2) == 0) wall.pitch = any_size(2000);
        if (*inRange(0, 2) == 0) wall.log_height = any_size(2000);
        shell.partitions.push_back(wall);
    }
    if (shell.partitions.empty() || *inRange(0, 2) == 0) return;
    shell.corners.push_back({shell.partitions[0].from, shell.partitions[0].name, any_notch()});
}

void add_steps(Shell &shell) {
    for (int i = *inRange(0, 3); i > 0; --i)
        shell.steps.push_back({any_wall(shell), any_gap(100'000), any_size(100'000), any_size(100'000)});
}

/// What shapes a log is stated of its whole round.
void only_of_piece(OwnLog &log) {
    const auto finish = log.sizes.finish;
    log.sizes = {}, log.notch = {};
    log.sizes.finish = finish;
    log.piece = *inRange(1, 502);
}

void add_logs(Shell &shell) {
    if (*rc::gen::arbitrary<bool>()) shell.logs = any_sizes();
    for (int i = *inRange(0, 4); i > 0; --i) {
        const std::string wall = any_wall(shell);
        const int round = *inRange(1, most_rounds + 2);
        shell.own_logs.push_back({wall, round, any_name(), any_sizes(), any_log_notch(), {}, {}, {}, {}});
        if (*inRange(0, 3) == 0) shell.own_logs.back().bow = any_gap(2000);
        if (*inRange(0, 3) == 0)
            shell.own_logs.back().fabric =
                *rc::gen::element(Fabric::newly_cut, Fabric::kept, Fabric::patched, Fabric::replacement);
        if (*inRange(0, 3) == 0) shell.own_logs.back().note = any_name();
        if (*inRange(0, 4) == 0) only_of_piece(shell.own_logs.back());
    }
}

/// A groove of its own has both its sizes; one size goes with the shell's only where that has a groove.
OwnTrim any_own_trim() {
    OwnTrim trim;
    if (*inRange(0, 3) == 0) trim.spline_width = any_size(2000), trim.spline_depth = any_size(2000);
    else if (*inRange(0, 3) == 0)
        trim.spline_depth = Length();
    if (*inRange(0, 3) == 0) trim.sill_slope = any_slope(false);
    if (*inRange(0, 3) == 0) trim.settle_space = any_gap(2000);
    if (*inRange(0, 3) == 0) trim.header_bearing = any_gap(2000);
    return trim;
}

void add_openings(Shell &shell) {
    for (int i = *inRange(0, 4); i > 0; --i)
        shell.openings.push_back({any_name(), *rc::gen::element(OpeningKind::door, OpeningKind::window),
                                  any_wall(shell), any_gap(100'000), any_gap(100'000), any_size(100'000),
                                  any_size(100'000), any_own_trim()});
}

Trim any_trim() {
    Trim trim;
    if (*inRange(0, 2) == 0) trim.spline_width = any_size(2000), trim.spline_depth = any_size(2000);
    if (*inRange(0, 2) == 0) trim.sill_slope = any_slope(false);
    if (*inRange(0, 2) == 0) trim.settle_space = any_gap(2000);
    if (*inRange(0, 2) == 0)
        trim.settling = *rc::gen::element(SettlingRuleName::per_300_mm, SettlingRuleName::six_percent,
                                          SettlingRuleName::four_percent, SettlingRuleName::per_chinked_log);
    if (*inRange(0, 2) == 0) trim.header_bearing = any_gap(2000);
    return trim;
}

std::optional<double> any_load() {
    if (*inRange(0, 2) == 0) return std::nullopt;
    return *inRange(1, 50'000'001) / 1e6;
}

Floor any_floor(const Shell &shell) {
    Floor floor;
    floor.name = "f" + std::to_string(shell.floors.size());
    floor.from = any_wall(shell);
    do floor.to = any_wall(shell);
    while (floor.to == floor.from);
    floor.level = any_size(100'000);
    floor.joist = {any_size(2000), any_size(2000)};
    if (*inRange(0, 2) == 0) floor.tip_width = any_size(2000);
    if (*inRange(0, 2) == 0) floor.tip_height = any_size(2000);
    floor.spacing = any_size(100'000);
    if (*inRange(0, 2) == 0) floor.first = any_size(100'000);
    floor.bearing = any_size(2000);
    floor.pocket = *rc::gen::element(PocketKind::square, PocketKind::tailed);
    floor.tail = any_slope(false);
    for (int i = *inRange(0, 3); i > 0; --i)
        floor.beams.push_back({any_gap(100'000), {any_size(2000), any_size(2000)}});
    for (int i = *inRange(0, 3); i > 0; --i)
        floor.openings.push_back(
            {any_name(), any_gap(100'000), any_gap(100'000), any_size(100'000), any_size(100'000)});
    floor.live_load = any_load();
    floor.dead_load = any_load();
    return floor;
}

StatedBore any_bore(const Shell &shell) {
    StatedBore bore;
    bore.name = any_name();
    bore.use = *rc::gen::element(BoreUse::bolt, BoreUse::rod, BoreUse::wire, BoreUse::hole);
    bore.wall = any_wall(shell);
    bore.from_left = any_gap(100'000);
    if (*inRange(0, 2) == 0) bore.from_outside = any_size(2000);
    bore.diameter = any_size(2000);
    bore.from_round = *inRange(1, most_rounds + 2);
    if (*inRange(0, 2) == 0) bore.to_round = *inRange(bore.from_round, most_rounds + 2);
    bore.drift = *rc::gen::arbitrary<bool>() ? any_gap(2000) : Length() - any_size(2000);
    return bore;
}

} // namespace

Shell any_statements() {
    return any_statements(any_walls());
}

Shell any_statements(const std::vector<Wall> &walls) {
    Shell shell;
    shell.walls = walls;
    shell.name = any_name();
    shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
    shell.thickness = any_size(2000);
    shell.notch = any_notch();
    add_rounds(shell);
    add_corners(shell);
    add_partitions(shell);
    add_steps(shell);
    add_logs(shell);
    add_openings(shell);
    if (*inRange(0, 2) == 0) shell.trim = any_trim();
    for (int i = shell.walls.size() > 1 ? *inRange(0, 3) : 0; i > 0; --i) shell.floors.push_back(any_floor(shell));
    for (int i = *inRange(0, 3); i > 0; --i) shell.bores.push_back(any_bore(shell));
    shell.pegs = {
        *rc::gen::arbitrary<bool>(),  any_size(2000), any_size(100'000), any_gap(2000), any_gap(2000),
        *inRange(1, 1'000'001) / 1e6, *inRange(0, 21), Length(), {}};
    if (*inRange(0, 2) == 0) shell.pegs.draw = any_gap(2000);
    if (*inRange(0, 2) == 0) shell.pegs.square = any_size(2000);
    if (*inRange(0, 4) != 0) shell.wood.species = "x" + any_name();
    if (*rc::gen::arbitrary<bool>()) shell.wood.moisture = *inRange(0, 300'000'001) / 1e6;
    return shell;
}

} // namespace roundlay::test
