// Floors, trim of openings and stated bores: worked cases, then random shells.

#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"
#include "tests/layout/floored_bodies.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::piece;
using test::clean;
using test::floored;
using test::has;
using test::laid;
using test::places;
using test::volume_of;
using test::words;

namespace {

std::vector<PocketCut> pockets(const Piece &p) {
    std::vector<PocketCut> all;
    for (const Cut &cut : p.cuts)
        if (const auto *pocket = std::get_if<PocketCut>(&cut)) all.push_back(*pocket);
    return all;
}

} // namespace

TEST_CASE("Joists stand at their spacing, from wall to wall") {
    const Layout layout = laid(floored());
    CHECK(places(layout) == std::vector<double>{600, 1200, 1800, 2400, 3000, 3600, 4200});
    const Piece &joist = piece(layout, "G-J01");
    CHECK(joist.blank.length == Approx(3600 + 2 * 80));
    CHECK(joist.frame.origin.x == Approx(200 + 600 + 50)); // its right side, seen from wall A
    CHECK(joist.frame.origin.y == Approx(200 - 80));
    CHECK(joist.frame.origin.z == Approx(380));
    CHECK(joist.below == std::vector<std::string>{"A-02-1", "C-02-1"});
    CHECK(clean(layout));
}

TEST_CASE("The first space may be wider, and another floor may run across") {
    Shell shell = floored();
    shell.floors[0].first = Length::mm(1000);
    CHECK(places(laid(shell)) == std::vector<double>{1000, 1600, 2200, 2800, 3400, 4000});
    shell.floors[0].from = "B";
    shell.floors[0].to = "D";
    shell.floors[0].level = Length::mm(560 + 115); // walls B and D lie half a round higher
    const Layout across = laid(shell);
    CHECK(places(across) == std::vector<double>{1000, 1600, 2200, 2800, 3400});
    CHECK(piece(across, "G-J01").frame.x.x == Approx(-1)); // from wall B westward
    CHECK(clean(across));
}

TEST_CASE("A pocket takes from each log what lies in it") {
    const Layout layout = laid(floored());
    const auto lower = pockets(piece(layout, "A-02-1")), upper = pockets(piece(layout, "A-03-1"));
    REQUIRE(lower.size() == 7);
    REQUIRE(upper.size() == 7);
    CHECK(lower[0].bed.height_at(0, 0) == Approx(380 - 230));
    CHECK(lower[0].x == Approx(800));
    CHECK(lower[0].y_face == Approx(200));
    CHECK(lower[0].y_back == Approx(120));
    CHECK(upper[0].z_top == Approx(100));
    CHECK(lower[0].holds == "G-J01");
    // closed form: seven joists, two ends each, 60 mm of height in the lower log and 100 in the upper
    Shell bare = floored();
    bare.floors.clear();
    bare.pegs.wanted = false;
    Shell with = floored();
    with.pegs.wanted = false;
    const double joists = 7 * 100.0 * 180 * 3760, taken = 14 * 100.0 * 80 * (60 + 100);
    CHECK(volume_of(laid(with)) - volume_of(laid(bare)) == Approx(joists - taken).epsilon(1e-12));
}

TEST_CASE("A tailed end is a trapezoid, and its pocket the same one") {
    Shell shell = floored();
    shell.pegs.wanted = false;
    const double square = volume_of(laid(shell));
    shell.floors[0].pocket = PocketKind::tailed;
    shell.floors[0].tail = Slope::rise_per_run(1.0 / 8);
    const Layout layout = laid(shell);
    CHECK(clean(layout));
    const auto pocket = pockets(piece(layout, "A-02-1")).front();
    CHECK(pocket.half_at_back == Approx(50));
    CHECK(pocket.half_at_face == Approx(40));
    // an end loses two wedges 10 mm wide at the neck; where it lies in a gap, 20 of its 180 mm, no log gains
    // them
    CHECK(volume_of(layout) - square == Approx(-14 * 80 * 10 * 20.0).epsilon(1e-6));
}

TEST_CASE("Joists of tapered logs turn about, or turn their butts toward the longer span") {
    Shell shell = floored();
    shell.floors[0].tip_height = Length::mm(160);
    shell.floors[0].tip_width = Length::mm(90);
    const auto butts = [](const Layout &layout) {
        std::string turned;
        for (const Timber &t : layout.timbers)
            if (t.use == TimberUse::joist) turned += layout.pieces[t.piece].butt_at_datum ? "d" : "f";
        return turned;
    };
    const Layout alternating = laid(shell);
    CHECK(butts(alternating) == "dfdfdfd");
    CHECK(clean(alternating));
    shell.floors[0].beams = {{Length::mm(2200), {Length::mm(150), Length::mm(150)}}};
    const Layout longer = laid(shell);
    CHECK(butts(longer) == "ddddddd");
    CHECK(clean(longer));
    shell.floors[0].beams[0].from_wall = Length::mm(1400);
    CHECK(butts(laid(shell)) == "fffffff");
}

TEST_CASE("A beam divides the spans and lies in the walls at its own ends") {
    Shell shell = floored();
    shell.floors[0].beams = {{Length::mm(1600), {Length::mm(200), Length::mm(200)}}};
    const Layout layout = laid(shell);
    CHECK(clean(layout));
    const Piece &beam = piece(layout, "G-B01");
    CHECK(beam.blank.length == Approx(4600 + 160));
    CHECK(beam.frame.origin.z + beam.blank.height == Approx(380)); // under the joists
    CHECK(pockets(piece(layout, "D-02-1")).size() == 1);
    for (const Timber &t : layout.timbers)
        if (t.use == TimberUse::joist) CHECK(t.spans == std::vector<double>{1500, 1900});
}

TEST_CASE("A beam skips a strip of the room in which no joist lies") {
    Shell shell = floored();
    Partition p;
    p.name = "P", p.from = "A", p.to = "C",
    p.from_left = Length::mm(4500); // 200 mm are left between it and wall B
    shell.partitions = {p};
    shell.floors[0].beams = {{Length::mm(1600), {Length::mm(200), Length::mm(200)}}};
    const Layout layout = laid(shell);
    CHECK(clean(layout));
    const auto beams = std::count_if(layout.timbers.begin(), layout.timbers.end(),
                                     [](const Timber &t) { return t.use == TimberUse::beam; });
    CHECK(beams == 1);
    CHECK(piece(layout, "G-B01").blank.length ==
          Approx(4200 + 2 * 80)); // no other beam shares the partition with it
}

TEST_CASE("Trimmers round an opening are carried by whole joists and carry the trimmed ones") {
    Shell shell = floored();
    shell.floors[0].openings = {
        {"stair", Length::mm(1500), Length::mm(1000), Length::mm(1400), Length::mm(1200)}};
    const Layout layout = laid(shell);
    CHECK(clean(layout));
    // joists at 1450 and 2950 stand beside it; those at 1800 and 2400 are cut, the one at 3000 gives way
    CHECK(places(layout) == std::vector<double>{600, 1200, 1450, 2950, 3600, 4200});
    std::vector<double> trimmed;
    for (const Timber &t : layout.timbers)
        if (t.use == TimberUse::trimmed) trimmed.push_back(t.to.y - t.from.y);
    CHECK(trimmed ==
          std::vector<double>{900, 1300, 900, 1300}); // from A to the trimmer, and from the other to C
    CHECK(pockets(piece(layout, "G-J03")).size() == 2);
    CHECK(pockets(piece(layout, "G-T01")).size() == 2);
}

TEST_CASE("An opening at the wall needs a trimmer at one end only") {
    Shell shell = floored();
    shell.floors[0].openings = {{"stair", Length::mm(0), Length::mm(0), Length::mm(1400), Length::mm(1200)}};
    const Layout layout = laid(shell);
    CHECK(clean(layout));
    CHECK(std::count_if(layout.timbers.begin(), layout.timbers.end(),
                        [](const Timber &t) { return t.use == TimberUse::trimmer; }) == 1);
    CHECK(pockets(piece(layout, "D-03-1")).size() == 1); // the trimmer's one end lies in the wall
}

TEST_CASE("What does not fit a floor is said, with what would") {
    const auto said = [](auto change) {
        Shell shell = floored();
        change(shell, shell.floors[0]);
        const Layout layout = lay_out(shell);
        CHECK(layout.pieces.empty());
        return words(layout.findings);
    };
    using S = Shell;
    using F = Floor;
    CHECK_THAT(said([](S &, F &f) { f.to = "B"; }), ContainsSubstring("do not face each other"));
    CHECK_THAT(said([](S &, F &f) { f.bearing = Length::mm(195); }),
               ContainsSubstring("175 mm at most would"));
    CHECK_THAT(said([](S &, F &f) { f.spacing = Length::mm(100); }), ContainsSubstring("125 mm at least"));
    CHECK_THAT(said([](S &, F &f) { f.first = Length::mm(10); }), ContainsSubstring("lies in the wall"));
    CHECK_THAT(said([](S &, F &f) { f.level = Length::mm(630); }),
               ContainsSubstring("lower the floor by 10 mm"));
    CHECK_THAT(said([](S &, F &f) { f.level = Length::mm(100); }),
               ContainsSubstring("raise the floor by 130 mm"));
    CHECK_THAT(
        said([](S &, F &f) { f.level = Length::mm(5000); }),
        ContainsSubstring("at 5000 mm its joists lie 3920 mm over the top of wall A, which is 900 mm high"));
    CHECK_THAT(said([](S &, F &f) { f.pocket = PocketKind::tailed, f.tail = Slope::rise_per_run(1); }),
               ContainsSubstring("a smaller tail or bearing"));
    CHECK_THAT(said([](S &, F &f) {
                   f.beams = {{Length::mm(30), {Length::mm(100), Length::mm(100)}}};
               }),
               ContainsSubstring("lies in a wall; between 75 mm"));
    CHECK_THAT(
        said([](S &, F &f) {
            f.openings = {{"hatch", Length::mm(4000), Length(), Length::mm(900), Length::mm(900)}};
        }),
        ContainsSubstring("hatch reaches 300 mm past the right side of the room, which is 4600 mm wide along "
                          "wall A"));
    CHECK_THAT(
        said([](S &, F &f) {
            f.openings = {{"hatch", Length::mm(1000), Length::mm(3000), Length::mm(900), Length::mm(900)}};
        }),
        ContainsSubstring("hatch reaches 300 mm past wall C, which lies 3600 mm from wall A"));
    CHECK_THAT(said([](S &s, F &) { s.openings = {test::window("A", 900, 100, 800, 500)}; }),
               ContainsSubstring("joist G-J02") &&
                   ContainsSubstring("its end in wall A lies in window 1; move that"));
}

TEST_CASE("Half of the thinner end of a joist is what a tailed end must leave at the wall") {
    const auto told = [](double neck) { // the tail takes as much as leaves that
        Shell shell = floored();
        Floor &f = shell.floors[0];
        f.joist.width = Length::mm(120), f.tip_width = Length::mm(80), f.spacing = Length::mm(600);
        f.pocket = PocketKind::tailed;
        f.tail = Slope::rise_per_run((120 - neck) / (2 * f.bearing.mm()));
        std::optional<Weight> weight;
        for (const Finding &finding : lay_out(shell).findings)
            if (finding.subject == "floor[0].tail") weight = finding.weight;
        return weight;
    };
    CHECK_FALSE(told(45));            // half of 80 mm
    CHECK(told(39) == Weight::error); // the thin end would have no wood at the wall
    CHECK(told(30) == Weight::error);
}

TEST_CASE("A pocket that is closed, and one with little wood under it, are warned of") {
    Shell shell = floored();
    shell.floors[0].joist.height = Length::mm(120);
    shell.floors[0].level = Length::mm(400);
    const Layout closed = laid(shell);
    CHECK(has(closed.findings, "pocket-closed"));
    CHECK(overlaps(closed, bodies_of(closed)).empty());
    shell.floors[0].level = Length::mm(380);
    CHECK(has(lay_out(shell).findings, "thin-wood-under-pocket"));
}

TEST_CASE("No skin of wood is left over a pocket that a tapering log all but opens") {
    // Once in some 100,000 random shells: 0.03 mm at one side of a joist, which then could not be lowered in.
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(6229), Length::mm(6000));
    for (Wall &wall : shell.walls)
        wall.thickness = Length::mm(100);
    shell.rounds.count = 1, shell.rounds.pitch = Length::mm(184.25), shell.rounds.gap = Length::mm(13);
    shell.logs.butt_height = Length::mm(175.25), shell.logs.tip_height = Length::mm(167.25);
    shell.notch.slope = Slope::rise_per_run(0);
    shell.pegs.wanted = false;
    Floor floor;
    floor.name = "F", floor.from = "C", floor.to = "A";
    floor.joist = {Length::mm(60), Length::mm(101)};
    floor.spacing = Length::mm(350), floor.bearing = Length::mm(40);
    int skins = 0;
    for (double level = 167; level < 176;
         level += 0.02) { // past the tops of the logs, at any place of theirs
        floor.level = Length::mm(level);
        shell.floors = {floor};
        const Layout layout = lay_out(shell);
        if (layout.pieces.empty()) continue;
        const bool told = has(layout.findings, "pocket-closed");
        const bool stuck = !blocked_on_the_way_down(layout, bodies_of(layout)).empty();
        INFO(level);
        CHECK(stuck == told);
        skins += told ? 0 : 1;
    }
    CHECK(skins > 20);
}
