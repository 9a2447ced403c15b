#include "kernel/layout/floors/joist_sizes.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

bool check_joist_sizes(const Shell &shell, const Floor &floor, double thinnest, const SayOfFloor &say_of) {
    const double joist_width = floor.joist.width.mm();
    const double tip_width = floor.tip_width.value_or(floor.joist.width).mm();
    const double most = thinnest - least_beside_joist;
    const auto weigh = [](bool cut) { return cut ? Weight::warning : Weight::error; };
    if (floor.bearing.mm() > most &&
        !say_of(weigh(floor.bearing.mm() <= thinnest - no_wood), "bearing",
                said("a bearing of %1 does not leave %2 of a wall %3 thick", in_mm(floor.bearing.mm()),
                     in_mm(least_beside_joist), in_mm(thinnest)),
                said("%1 at most would", no_more(shell, most))))
        return false;
    if (floor.spacing.mm() < joist_width + least_beside_joist &&
        !say_of(weigh(floor.spacing.mm() > std::max(joist_width, tip_width) + tolerance::clear), "spacing",
                said("joists %1 wide do not lie %2 apart on centre", in_mm(joist_width),
                     in_mm(floor.spacing.mm())),
                at_least(shell, joist_width + least_beside_joist)))
        return false;
    const double neck = joist_width - 2 * floor.tail.ratio() * floor.bearing.mm();
    if (floor.pocket == PocketKind::tailed && neck < std::min(joist_width, tip_width) / 2 &&
        !say_of(weigh(neck - joist_width + std::min(joist_width, tip_width) >= no_wood), "tail",
                said("the tailed ends leave only %1 of a joist %2 wide at the wall",
                     in_mm(std::max(0.0, neck)), in_mm(joist_width)),
                said("a smaller tail or bearing leaves half of it")))
        return false;
    if (floor.first && floor.first->mm() < joist_width / 2)
        return say_of(
            Weight::error, "first",
            said("the first joist, %1 from the room's side, lies in the wall", in_mm(floor.first->mm())),
            at_least(shell, joist_width / 2));
    return true;
}

} // namespace roundlay
