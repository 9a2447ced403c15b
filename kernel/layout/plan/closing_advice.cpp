#include "kernel/layout/plan/closing_advice.h"

#include "kernel/shell/close_plan.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace roundlay {

namespace {

/// A plan that some of whose walls close it, and how much their lengths change by that, in mm.
struct Closed {
    Shell shell;
    std::vector<std::size_t> by;
    double change = 0;
};

/// Nothing where a length would not be over 0, or hardly be a wall.
std::optional<Closed> closed(const Shell &shell, std::vector<std::size_t> by) {
    Closed plan{shell, std::move(by)};
    for (Wall &wall : plan.shell.walls)
        wall.closes = false;
    for (const std::size_t i : plan.by)
        plan.shell.walls[i].closes = true;
    if (close_plan(plan.shell.walls)) return {};
    for (const std::size_t i : plan.by) {
        const Wall &wall = plan.shell.walls[i];
        if (wall.length < 2 * wall.thickness.value_or(shell.thickness)) return {};
        plan.change += std::abs((wall.length - shell.walls[i].length).mm());
    }
    return plan;
}

/// One wall first, then two; those whose lengths change least first, of these those that were stated last.
std::vector<Closed> ways_to_close(const Shell &shell) {
    std::vector<Closed> all;
    for (std::size_t i = shell.walls.size(); i-- > 0;) {
        if (auto plan = closed(shell, {i})) all.push_back(std::move(*plan));
        for (std::size_t j = shell.walls.size() - 1; j > i; --j)
            if (auto plan = closed(shell, {i, j})) all.push_back(std::move(*plan));
    }
    std::ranges::stable_sort(all, {}, [](const Closed &p) { return std::pair(p.by.size(), p.change); });
    return all;
}

} // namespace

std::optional<Said> closing_advice(const Shell &shell, const std::function<bool(const Shell &)> &holds) {
    for (const Closed &plan : ways_to_close(shell)) {
        if (!holds(plan.shell)) continue;
        const auto &walls = plan.shell.walls;
        const Wall &a = walls[plan.by.front()], &b = walls[plan.by.back()];
        if (plan.by.size() == 1)
            return said("leave out the length of wall %1 and it closes the plan, with %2", a.name,
                        in_mm(a.length.mm()));
        return said("leave out the lengths of walls %1 and %2 and they close the plan, with %3 and %4",
                    a.name, b.name, in_mm(a.length.mm()), in_mm(b.length.mm()));
    }
    return {};
}

} // namespace roundlay
