#include "exporters/sheets/elevation/sides.h"

#include "kernel/layout/plan/wall_side.h"

#include <map>
#include <stdexcept>

namespace roundlay::sheets {
namespace {

/// A partition is seen from a quarter of the compass.
std::string quarter(const Layout &layout, Index<WallPlace> wall, bool outside, const Words &words) {
    static const std::map<std::string, Said> quarters = {
        {"east", said("the east")},   {"north-east", said("the north-east")},
        {"north", said("the north")}, {"north-west", said("the north-west")},
        {"west", said("the west")},   {"south-west", said("the south-west")},
        {"south", said("the south")}, {"south-east", said("the south-east")}};
    const auto found = quarters.find(side_of_wall(layout, wall, outside));
    if (found == quarters.end()) throw std::logic_error("a partition is seen from no such side");
    return words.words(found->second);
}

} // namespace

std::string wall_seen(const Layout &layout, Index<WallPlace> wall, bool outside, const std::string &scale,
                      const Words &words) {
    const std::string &name = layout.walls.at(wall).name;
    if (is_partition(layout, wall))
        return words.say("Wall %1, from %2, %3", name, quarter(layout, wall, outside, words), scale);
    return outside ? words.say("Wall %1, from outside, %2", name, scale)
                   : words.say("Wall %1, from inside, %2", name, scale);
}

std::string seen_from(const Layout &layout, Index<WallPlace> wall, bool outside, const Words &words) {
    if (is_partition(layout, wall)) return words.say("seen from %1", quarter(layout, wall, outside, words));
    return outside ? words.say("seen from outside") : words.say("seen from inside");
}

std::string seen_from_both(const Layout &layout, Index<WallPlace> wall, const Words &words) {
    if (!is_partition(layout, wall)) return words.say("elevations from outside and inside");
    return words.say("elevations from %1 and %2", quarter(layout, wall, true, words),
                     quarter(layout, wall, false, words));
}

} // namespace roundlay::sheets
