#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

Layout with_plan(std::vector<Wall> walls) {
    Shell shell = test::plain_shell();
    shell.walls = std::move(walls);
    return lay_out(shell);
}

} // namespace

TEST_CASE("Outside and inside corners of an L are told apart") {
    const Layout layout = with_plan(l_plan(mm(9000), mm(7000), mm(4000), mm(3000)));
    REQUIRE_FALSE(has_errors(layout.findings));
    REQUIRE(layout.corners.size() == 6);
    CHECK(std::count_if(layout.corners.begin(), layout.corners.end(),
                        [](const CornerPlace &c) { return c.reentrant; }) == 1);
    CHECK(layout.corners[Index<CornerPlace>(2)].name == "CD");
    CHECK(layout.corners[Index<CornerPlace>(2)].reentrant);
}

TEST_CASE("What is left of a side is written as a person would state it") {
    const auto feet = [](double v) { return Length::feet(v); };
    const auto tee = t_plan(feet(36), feet(24), feet(12), feet(12), feet(8));
    CHECK(tee[2].length == feet(12)); // 36 ft less twice 12 ft is not 12 ft in doubles
    const auto ell = l_plan(mm(9600.3), mm(7000), mm(4000.1), mm(3000));
    CHECK(ell[2].length == mm(5600.2));
    const auto thirds = l_plan(mm(10000.0 / 3), mm(7000), mm(1000), mm(3000));
    CHECK(thirds[0].length.mm() == 10000.0 / 3); // what is no round figure stays
}

TEST_CASE("At an inside corner the logs pass through the other wall and show indoors") {
    const Layout layout = with_plan(l_plan(mm(9000), mm(7000), mm(4000), mm(3000)));
    for (const Piece &p : layout.pieces)
        if (p.wall == Index<WallPlace>(2) &&
            p.log == LogKind::full) // wall C, 5000 long, runs 200 past corner CD
            CHECK(p.blank.length == Approx(5000 + 200));
}

TEST_CASE("Walked clockwise, the same shell comes out mirrored in name only") {
    Shell shell = test::plain_shell();
    const Layout ccw = lay_out(shell);
    std::vector<Wall> back;
    for (const double heading : {90.0, 0.0, 270.0, 180.0}) { // clockwise: north, east, south, west
        Wall wall;
        wall.name = std::string(1, static_cast<char>('P' + back.size()));
        wall.heading = heading;
        wall.length = heading == 90 || heading == 270 ? mm(4000) : mm(5000);
        back.push_back(wall);
    }
    shell.walls = back;
    const Layout cw = lay_out(shell);
    REQUIRE_FALSE(has_errors(cw.findings));
    CHECK(cw.pieces.size() == ccw.pieces.size());
    for (const WallPlace &wall : cw.walls) { // every wall's y axis points to the middle of the house
        const Vec3 centre{2500, 2000, 0};
        CHECK(wall.frame.to_local(centre).y > 0);
    }
}

TEST_CASE("Every shape can be laid out") {
    for (const auto &plan :
         {rectangle_plan(mm(8000), mm(6000)), l_plan(mm(9000), mm(8000), mm(4000), mm(4000)),
          inset_plan(mm(9000), mm(6000), mm(3000), mm(3000), mm(1500)),
          u_plan(mm(9000), mm(8000), mm(3000), mm(3000), mm(3000)),
          t_plan(mm(9000), mm(5000), mm(3000), mm(3000), mm(2500)), cross_plan(mm(4000), mm(3500), mm(2000))})
        CHECK_FALSE(has_errors(with_plan(plan).findings));
}

TEST_CASE("An edit in one wall leaves the tags of the others alone") {
    Shell shell = test::plain_shell();
    const Layout before = lay_out(shell);
    Opening window;
    window.wall = "A";
    window.from_left = mm(2000);
    window.sill = mm(300);
    window.width = mm(800);
    window.height = mm(400);
    shell.openings.push_back(window);
    const Layout after = lay_out(shell);
    REQUIRE_FALSE(has_errors(after.findings));
    const auto tags = [](const Layout &layout, Index<WallPlace> wall) {
        std::vector<std::string> all;
        for (const Piece &p : layout.pieces)
            if (p.wall == wall) all.push_back(p.tag);
        return all;
    };
    for (const auto wall : before.walls.after(Index<WallPlace>(0)))
        CHECK(tags(before, wall) == tags(after, wall));
    CHECK(tags(after, Index<WallPlace>(0)).size() > tags(before, Index<WallPlace>(0)).size());
}

TEST_CASE("A partition between walls at 45 degrees to the compass ends square, last digits or not") {
    Shell shell = test::plain_shell();
    shell.walls = test::octagon_plan(Length::mm(1902));
    shell.thickness = Length::mm(146);
    shell.notch.kind = NotchKind::square_lap;
    shell.partitions = {test::partition("P", "B", Length::mm(551.58), "F")};
    const Layout layout = lay_out(shell);
    int pieces = 0;
    for (const Piece &p : layout.pieces) {
        if (layout.walls[p.wall].name != "P") continue;
        ++pieces;
        for (const Cut &cut : p.cuts)
            CHECK_FALSE(std::holds_alternative<FaceCut>(cut));
    }
    CHECK(pieces == 4);
}

TEST_CASE("A partition too near to a corner is to be moved in its own statement") {
    Shell shell = test::plain_shell();
    Partition partition;
    partition.name = "P";
    partition.from = "A", partition.to = "C";
    partition.from_left = mm(340); // its near face is 240 from the corner, 40 from the tails of D
    shell.partitions = {partition};
    const Findings findings = lay_out(shell).findings;
    const auto near = std::find_if(findings.begin(), findings.end(),
                                   [](const Finding &f) { return f.code == "tee-too-near"; });
    REQUIRE(near != findings.end());
    CHECK(near->subject == "partition[0].from_left");
}

TEST_CASE("One log's own overhang, left or right, must not run into another wall") {
    // The leg of the L is 1500 deep: behind wall C, 200 thick, there are 1100 up to wall A. D starts at the
    // inside corner and C ends there.
    Shell shell = test::plain_shell();
    shell.walls = l_plan(mm(9000), mm(7000), mm(4000), mm(1500));
    const auto hits = [&](const std::string &wall, double left, double right) {
        OwnLog own;
        own.wall = wall;
        own.round = 2;
        own.notch.overhang_left = mm(left), own.notch.overhang_right = mm(right);
        shell.own_logs = {own};
        const Findings findings = lay_out(shell).findings;
        return std::any_of(findings.begin(), findings.end(),
                           [](const Finding &f) { return f.code == "overhang-hits-wall"; });
    };
    CHECK_FALSE(hits("D", 1090, 0));
    CHECK(hits("D", 1110, 0));
    shell.walls = l_plan(mm(9000), mm(7000), mm(1500), mm(4000)); // the wing is 1500 wide
    CHECK_FALSE(hits("C", 0, 1090));
    CHECK(hits("C", 0, 1110));
}
