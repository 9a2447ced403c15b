#include "modeler/window/desk/shell_edits.h"

#include "kernel/layout/layout.h"

#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

Opening imperial_opening(OpeningKind kind) {
    Opening o;
    o.kind = kind;
    const bool door = kind == OpeningKind::door;
    o.sill = door ? Length() : Length::feet(3);
    o.width = Length::feet(3);
    o.height = door ? Length::inches(82) : Length::feet(4);
    return o;
}

Opening metric_opening(OpeningKind kind) {
    Opening o;
    o.kind = kind;
    const bool door = kind == OpeningKind::door;
    o.sill = door ? Length() : Length::mm(900);
    o.width = Length::mm(900);
    o.height = Length::mm(door ? 2100 : 1200);
    return o;
}

std::string free_name(const Shell &shell, OpeningKind kind) {
    const std::string base = kind == OpeningKind::door ? "door " : "window ";
    for (std::size_t number = 1;; ++number) {
        std::string name = base + std::to_string(number);
        const auto same = [&](const Opening &o) { return o.name == name; };
        if (std::none_of(shell.openings.begin(), shell.openings.end(), same)) return name;
    }
}

std::size_t errors_of(const Shell &shell) {
    const Layout layout = lay_out(shell);
    return static_cast<std::size_t>(
        std::count_if(layout.findings.begin(), layout.findings.end(),
                      [](const Finding &f) { return f.weight == Weight::error; }));
}

/// With no error more than before.
bool fits(const Shell &shell, std::size_t errors_before) {
    return errors_of(shell) <= errors_before;
}

const Wall *wall_named(const Shell &shell, const std::string &name) {
    const auto found =
        std::find_if(shell.walls.begin(), shell.walls.end(), [&](const Wall &w) { return w.name == name; });
    return found == shell.walls.end() ? nullptr : &*found;
}

} // namespace

Opening usual_opening(OpeningKind kind, const std::string &wall, UnitSystem units) {
    Opening o = units == UnitSystem::metric ? metric_opening(kind) : imperial_opening(kind);
    o.wall = wall;
    return o;
}

std::optional<Shell> with_opening(const Shell &shell, Opening opening, double middle) {
    const Wall *wall = wall_named(shell, opening.wall);
    if (wall == nullptr) return {};
    if (opening.name.empty()) opening.name = free_name(shell, opening.kind);
    const double step = shell.units == UnitSystem::metric ? 100 : 4 * mm_per_inch;
    const double begin = std::round((middle - opening.width.mm() / 2) / step) * step;
    const std::size_t errors = errors_of(shell);
    Shell next = shell;
    next.openings.push_back(opening);
    const int steps = static_cast<int>(wall->length.mm() / step) + 1;
    for (int i = 0; i <= 2 * steps; ++i) { // nearest first, right and left by turns
        const double from = begin + (i % 2 == 0 ? i / 2 : -(i + 1) / 2) * step;
        if (from <= 0 || from + opening.width.mm() >= wall->length.mm()) continue;
        next.openings.back().from_left = Length::mm(from);
        if (fits(next, errors)) return next;
    }
    return {};
}

Shell with_corner_notch(const Shell &shell, const std::string &first, const std::string &second,
                        const NotchRule &notch) {
    Shell next = shell;
    for (CornerNotch &corner : next.corners)
        if (corner.first == first && corner.second == second) {
            corner.notch = notch;
            return next;
        }
    next.corners.push_back({first, second, notch});
    return next;
}

OwnLog own_log(const Shell &shell, const std::string &wall, int round) {
    for (const OwnLog &log : shell.own_logs)
        if (log.wall == wall && log.round == round) return log;
    OwnLog nothing;
    nothing.wall = wall;
    nothing.round = round;
    return nothing;
}

Shell with_own_log(const Shell &shell, const OwnLog &log) {
    Shell next = shell;
    const auto at =
        std::find_if(next.own_logs.begin(), next.own_logs.end(),
                     [&](const OwnLog &old) { return old.wall == log.wall && old.round == log.round; });
    const bool says_nothing = log == own_log({}, log.wall, log.round);
    if (at == next.own_logs.end()) {
        if (!says_nothing) next.own_logs.push_back(log);
    } else if (says_nothing) {
        next.own_logs.erase(at);
    } else {
        *at = log;
    }
    return next;
}

} // namespace roundlay::window
