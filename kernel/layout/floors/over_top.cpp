#include "kernel/layout/floors/over_top.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

std::optional<OverTop> over_top(const Shell &shell, const Plan &plan, const Heights &heights,
                                std::size_t index) {
    const Floor &floor = shell.floors[index];
    const auto from = wall_named(plan, floor.from), to = wall_named(plan, floor.to);
    if (!from || !to || heights.heights.empty()) return {};
    const auto top_of = [&heights](Index<WallPlace> wall) { return heights.heights[wall].top; };
    const Index<WallPlace> lower = top_of(*to) < top_of(*from) ? *to : *from;
    const double deepest = std::max(floor.joist.height, floor.tip_height.value_or(floor.joist.height)).mm();
    const double over = floor.level.mm() - deepest - top_of(lower);
    if (over <= tolerance::clear) return {};
    const std::string &wall = plan.walls[lower].name;
    return OverTop{
        {Weight::error,
         "floor-over-wall",
         {about::Floor{floor.name}},
         said("at %1 its joists lie %2 over the top of wall %3, which is %4 high", in_mm(floor.level.mm()),
              in_mm(over), wall, in_mm(top_of(lower))),
         said("a level of %1 at most lays them on its last log", no_more(shell, top_of(lower) + deepest)),
         subject("floor", index, "level")},
        -over};
}

} // namespace roundlay
