// What is said of joists that come too near other things in the walls.
#include "tests/support/floored.h"

#include <cmath>

using namespace roundlay;
using test::floored;
using test::places;
using test::words;

namespace {

/// A partition over the room of `floored`, which is 4600 wide: wall A's inside begins at 200, so that the
/// middle of the partition, which is 200 thick, stands 2400 into the room.
Shell parted() {
    Shell shell = floored();
    shell.partitions = {test::partition("P", "A", Length::mm(2600), "C")};
    return shell;
}

std::size_t count(const Layout &layout, const std::string &code) {
    return static_cast<std::size_t>(
        std::ranges::count_if(layout.findings, [&](const Finding &f) { return f.code == code; }));
}

} // namespace

TEST_CASE("A pocket near the notches of a crossing wall is warned of, with the wood that stays") {
    Shell shell = parted();
    const auto near = [&](double wood) {
        Shell next = shell;
        // joists 100 wide, the second `wood` from the partition's left face, which is 2300 into the room
        next.floors[0].spacing = Length::mm(1000);
        next.floors[0].first = Length::mm(2300 - wood - 50 - 1000);
        return test::laid(next);
    };
    CHECK(count(near(60), "thin-wood-beside-pocket") == 0);
    const Layout thin = near(30);
    CHECK(count(thin, "thin-wood-beside-pocket") >= 2); // in both walls
    CHECK_THAT(words(thin.findings),
               ContainsSubstring("leaves only 30 mm of wood up to the notches of wall P"));
    CHECK_THAT(words(near(0).findings),
               ContainsSubstring("leaves no wood that stays up to the notches of wall P"));
}

TEST_CASE("A pocket near the end of its log is warned of") {
    Shell shell = floored();
    // a door whose left jamb stands 20 right of the joist at 1200 (wall A's own 1400, 50 half a joist)
    Opening door;
    door.kind = OpeningKind::door;
    door.wall = "A";
    door.from_left = Length::mm(1400 + 50 + 20);
    door.width = Length::mm(300);
    door.sill = Length::mm(0);
    door.height = Length::mm(700);
    shell.openings = {door};
    shell.floors[0].first = Length::mm(1200);
    shell.floors[0].spacing = Length::mm(1200);
    shell.pegs.wanted = false;
    CHECK_THAT(words(test::laid(shell).findings),
               ContainsSubstring("leaves only 20 mm of wood up to its end"));
}

TEST_CASE("A joist that a wall leaves no room for is told, with how far apart the others are") {
    Shell shell = parted();
    shell.floors[0].spacing = shell.floors[0].first.emplace(Length::mm(625)); // the fourth in the partition
    const Layout layout = test::laid(shell);
    CHECK(places(layout) == std::vector<double>{625, 1250, 1875, 3125, 3750, 4375});
    CHECK_THAT(
        words(layout.findings),
        ContainsSubstring("no joist lies 2500 mm from the left of the room, where it would be in a wall: "
                          "from one joist to the next it is 1250 mm there, where 625 mm is stated"));
    shell.floors[0].first = Length::mm(300); // 300, 925, 1550, 2175, 2800: none in the partition
    CHECK(count(test::laid(shell), "floor-does-not-fit") == 0);
}
