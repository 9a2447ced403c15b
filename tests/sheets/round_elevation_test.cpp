// Walls of round logs on paper.
#include "exporters/sheets/book/book.h"
#include "exporters/sheets/pole/story_pole.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

Shell with_partition(Shell shell) {
    shell.partitions = {partition("P", "A", Length::mm(2500), "C")};
    return shell;
}

} // namespace

// round_shell: A and C of five whole logs, B and D of six, the first of them half and the last a half log
// that ends against A. Before wall A stand the ends of B and D; behind it, from inside, they are cut through.
TEST_CASE("the ends of round logs that cross are filled as end grain, from inside as cut through") {
    const LaidShell s = laid(round_shell());
    REQUIRE_FALSE(s.layout.pieces.empty());
    const auto outside = seen_wall(s.layout, s.bodies, Index<WallPlace>(0), WallSide::outside);
    REQUIRE(outside.greys.size() == 10);
    for (const GreyFace &grey : outside.greys)
        CHECK_FALSE(grey.sawn_through);
    const auto inside = seen_wall(s.layout, s.bodies, Index<WallPlace>(0), WallSide::inside);
    REQUIRE(inside.greys.size() == 10);
    for (const GreyFace &grey : inside.greys)
        CHECK(grey.sawn_through);
    // logs of 240 in rounds of 210: a whole log's end is the circle less the lens that its own groove takes
    // of it
    const double r = 120, d = 210,
                 lens = 2 * r * r * std::acos(d / (2 * r)) - d / 2 * std::sqrt(4 * r * r - d * d);
    const double whole = std::numbers::pi * r * r - lens;
    CHECK(std::count_if(outside.greys.begin(), outside.greys.end(), [&](const GreyFace &g) {
              return std::abs(std::abs(area_of(g.rings.front())) / whole - 1) < 0.02;
          }) == 8);
}

TEST_CASE(
    "a partition of round logs shows its ends outside, and its own view cuts through the walls that run on") {
    const LaidShell s = laid(with_partition(round_shell()));
    REQUIRE_FALSE(s.layout.pieces.empty());
    const auto logs = [&](const std::string &wall) { // but for half logs that end against the other wall
        return std::count_if(s.layout.pieces.begin(), s.layout.pieces.end(), [&](const Piece &p) {
            return p.tag.starts_with(wall + "-") && p.datum.kind == EndKind::corner;
        });
    };
    const auto a = seen_wall(s.layout, s.bodies, Index<WallPlace>(0), WallSide::outside);
    CHECK(static_cast<long>(a.greys.size()) == logs("B") + logs("D") + logs("P"));
    const auto p = seen_wall(s.layout, s.bodies, Index<WallPlace>(4), WallSide::outside);
    CHECK(static_cast<long>(p.greys.size()) == logs("A") + logs("C"));
    for (const GreyFace &grey : p.greys)
        CHECK(grey.sawn_through);
}

TEST_CASE("story poles of round logs name the logs of both walls, at tees too") {
    const LaidShell s = laid(with_partition(round_shell()));
    for (const CornerPlace &corner : s.layout.corners) {
        const auto marks = pole_marks(s.layout, corner);
        for (const Index<WallPlace> wall : {corner.ends, corner.starts}) {
            const std::string start = s.layout.walls[wall].name + "-02";
            INFO(corner.name + " " + start);
            CHECK(std::any_of(marks.begin(), marks.end(),
                              [&](const PoleMark &m) { return m.words.starts_with(start); }));
        }
    }
}
