#include "kernel/layout/floors/room.h"
#include "kernel/measured/rebuild.h"

#include <algorithm>

namespace roundlay {

namespace {

bool has_room(const Plan &plan, const Floor &floor) {
    const auto from = wall_named(plan, floor.from), to = wall_named(plan, floor.to);
    return !from || !to || room_between(plan, *from, *to); // of no such walls the layout tells
}

} // namespace

/// The rest of the house is worth having without it.
void set_floors(Rebuild &at) {
    for (const Floor &floor : at.made.shell.floors)
        if (!has_room(at.plan, floor))
            at.made.findings.push_back(
                {Weight::warning,
                 "floor-not-in-the-model",
                 {about::Floor{floor.name}},
                 said("as they were measured, walls %1 and %2 run off one another by more than 1 in 50, and "
                      "timbers between such walls are not worked out: floor %3 is not in the model",
                      floor.from, floor.to, floor.name),
                 said("measure the walls and diagonals again; where they stand so, lay its timbers out by "
                      "hand"),
                 ""});
    std::erase_if(at.made.shell.floors, [&](const Floor &floor) { return !has_room(at.plan, floor); });
}

} // namespace roundlay
