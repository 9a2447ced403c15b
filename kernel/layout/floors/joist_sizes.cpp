#include "kernel/layout/floors/joist_sizes.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

namespace {

/// What can be cut all the same is warned of.
Weight weigh(bool can_be_cut) {
    return can_be_cut ? Weight::warning : Weight::error;
}

double tip_width_of(const Floor &floor) {
    return floor.tip_width.value_or(floor.joist.width).mm();
}

bool check_bearing(const Shell &shell, const Floor &floor, double thinnest, const SayOfFloor &say_of) {
    const double most = thinnest - least_beside_joist;
    return floor.bearing.mm() <= most ||
           say_of(weigh(floor.bearing.mm() <= thinnest - no_wood), "bearing",
                  said("a bearing of %1 does not leave %2 of a wall %3 thick", in_mm(floor.bearing.mm()),
                       in_mm(least_beside_joist), in_mm(thinnest)),
                  said("%1 at most would", no_more(shell, most)));
}

bool check_spacing(const Shell &shell, const Floor &floor, const SayOfFloor &say_of) {
    const double width = floor.joist.width.mm(), spacing = floor.spacing.mm();
    return spacing >= width + least_beside_joist ||
           say_of(weigh(spacing > std::max(width, tip_width_of(floor)) + tolerance::clear), "spacing",
                  said("joists %1 wide do not lie %2 apart on centre", in_mm(width), in_mm(spacing)),
                  at_least(shell, width + least_beside_joist));
}

bool check_tails(const Floor &floor, const SayOfFloor &say_of) {
    const double width = floor.joist.width.mm(), thinner = std::min(width, tip_width_of(floor));
    const double neck = width - 2 * floor.tail.ratio() * floor.bearing.mm();
    return floor.pocket != PocketKind::tailed || neck >= thinner / 2 ||
           say_of(weigh(neck - width + thinner >= no_wood), "tail",
                  said("the tailed ends leave only %1 of a joist %2 wide at the wall",
                       in_mm(std::max(0.0, neck)), in_mm(width)),
                  said("a smaller tail or bearing leaves half of it"));
}

bool check_first(const Shell &shell, const Floor &floor, const SayOfFloor &say_of) {
    const double half = floor.joist.width.mm() / 2;
    return !floor.first || floor.first->mm() >= half ||
           say_of(
               Weight::error, "first",
               said("the first joist, %1 from the room's side, lies in the wall", in_mm(floor.first->mm())),
               at_least(shell, half));
}

} // namespace

bool check_joist_sizes(const Shell &shell, const Floor &floor, double thinnest, const SayOfFloor &say_of) {
    return check_bearing(shell, floor, thinnest, say_of) && check_spacing(shell, floor, say_of) &&
           check_tails(floor, say_of) && check_first(shell, floor, say_of);
}

} // namespace roundlay
