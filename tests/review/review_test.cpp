#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/review/opening_facts.h"
#include "kernel/review/review.h"
#include "kernel/review/water.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;

namespace {

Findings reviewed(const Shell &shell) {
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    return review(shell, layout, bodies_of(layout));
}

int count(const Findings &findings, const std::string &code) {
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(), [&](const Finding &f) { return f.code == code; }));
}

} // namespace

TEST_CASE("A full dovetail of walls alike has nothing said against it") {
    CHECK(reviewed(test::plain_shell()).empty());
}

TEST_CASE("A square lap does not lock, and without pegs that is a warning") {
    // "Square: locks nothing without pins": the corner-timbering literature, seen on secondary pages.
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::square_lap;
    Findings findings = reviewed(shell);
    CHECK(count(findings, "corner-not-locked") == 4);
    CHECK(findings[0].weight == Weight::note);
    shell.pegs.wanted = false;
    findings = reviewed(shell);
    CHECK(findings[0].weight == Weight::warning);
}

TEST_CASE("A full dovetail between walls of unequal thickness leads water in on one of them") {
    // p T_A <= -q T_B with p = -q = s holds only for the thinner log's own tops.
    Shell shell = test::plain_shell();
    shell.walls[1].thickness = shell.walls[3].thickness = Length::mm(160);
    const Findings findings = reviewed(shell);
    CHECK(count(findings, "seam-leads-water-in") == 4);
    shell.notch.kind = NotchKind::half_dovetail; // sheds whatever the thicknesses
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 0);
}

TEST_CASE("What is advised against water was tried at that corner and clears it") {
    Shell shell = test::plain_shell();
    shell.walls = l_plan(Length::metres(8), Length::metres(6), Length::metres(4), Length::metres(3));
    shell.notch.kind = NotchKind::half_dovetail;
    const Findings findings = reviewed(shell);
    const auto wet = std::find_if(findings.begin(), findings.end(),
                                  [](const Finding &f) { return f.code == "seam-leads-water-in"; });
    REQUIRE(wet != findings.end());
    CHECK(test::place(*wet) == "corner CD"); // the inside corner, where the ends lie indoors
    CHECK_THAT(
        test::message(*wet),
        ContainsSubstring("; a full dovetail at this corner sheds it: [[corner]] between = [\"C\", \"D\"], "
                          "kind = \"full dovetail\""));
    NotchRule full = shell.notch;
    full.kind = NotchKind::full_dovetail;
    shell.corners = {{"C", "D", full}};
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 0);

    // Between walls of unequal thickness the full one leads in on one of them (see above).
    shell.walls[2].thickness = Length::mm(160);
    const Findings unequal = reviewed(shell);
    REQUIRE(count(unequal, "seam-leads-water-in") >= 1);
    for (const Finding &f : unequal)
        if (f.code == "seam-leads-water-in" && test::place(f) == "corner CD")
            CHECK_THAT(test::message(f), ContainsSubstring("no dovetail of this slope sheds it there"));

    // Where the notch that would shed it leaves tails that are too thin, it is not advised.
    shell = test::plain_shell();
    shell.notch.kind = NotchKind::stated;
    shell.notch.along = Slope::rise_per_run(0.01);
    shell.notch.across = Slope::rise_per_run(0.01);
    CHECK_THAT(test::message(reviewed(shell)[0]),
               ContainsSubstring("a half dovetail at this corner sheds it"));
    shell.notch.slope = Slope::rise_per_run(0.9);
    CHECK_THAT(test::message(reviewed(shell)[0]), ContainsSubstring("no dovetail of this slope"));
}

TEST_CASE("Of any shell a notch advised against water brings no other warning") {
    static int advised = 0, withheld = 0;
    CHECK(rc::check([] {
        Shell shell = test::any_family_shell();
        const Layout layout = lay_out(shell);
        if (has_errors(layout.findings) || layout.corners.size() > 12) return;
        Findings water;
        check_water(shell, layout, water);
        const auto warned = [](const Shell &s) {
            const Findings all = reviewed(s);
            return std::count_if(all.begin(), all.end(),
                                 [](const Finding &f) { return f.weight != Weight::note; });
        };
        for (const Finding &f : water) {
            withheld += test::message(f).find("without another warning") != std::string::npos ? 1 : 0;
            const bool half =
                test::message(f).find("; a half dovetail at this corner sheds it") != std::string::npos;
            if (!half &&
                test::message(f).find("; a full dovetail at this corner sheds it") == std::string::npos)
                continue;
            const auto corner =
                std::find_if(layout.corners.begin(), layout.corners.end(),
                             [&](const CornerPlace &c) { return is_corner(f.about, c.name); });
            RC_ASSERT(corner != layout.corners.end());
            CornerNotch own{layout.walls[corner->ends].name, layout.walls[corner->starts].name,
                            notch_at(shell, layout, layout.corners.index_of(corner))};
            own.notch.kind = half ? NotchKind::half_dovetail : NotchKind::full_dovetail;
            Shell with = shell;
            std::erase_if(with.corners, [&](const CornerNotch &n) {
                return (n.first == own.first && n.second == own.second) ||
                       (n.first == own.second && n.second == own.first);
            });
            with.corners.push_back(own);
            RC_ASSERT(warned(with) < warned(shell));
            ++advised;
            return; // one of each shell: reviews take their time
        }
    }));
    INFO(advised << " advised, " << withheld << " withheld");
    CHECK(advised > 3);
}

TEST_CASE("Slopes that fall to the inside lead water in at every corner") {
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::stated;
    shell.notch.along = Slope::rise_per_run(0.1);
    shell.notch.across = Slope::rise_per_run(0.05);
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 8);
}

TEST_CASE("Pieces pushed into one another are an error of the review") {
    const Shell shell = test::plain_shell();
    Layout layout = lay_out(shell);
    layout.pieces[Index<Piece>(3)].frame.origin.z -= 2;
    const Findings findings = review(shell, layout, bodies_of(layout));
    CHECK(count(findings, "pieces-overlap") >= 1);
    CHECK(findings[0].weight == Weight::error);
}

TEST_CASE("A header's bearing and the space over a frame are asked of each opening by its own trim") {
    // That a header runs past its opening: common practice, no source. The space:
    // tests/trade/settling_test.cpp.
    Shell shell = test::plain_shell();
    shell.pegs.wanted = false;
    const Opening o = test::window("A", 900, 300, 800, 300);
    shell.openings = {o, o};
    shell.openings[1].from_left = Length::mm(3300);
    shell.openings[1].trim.header_bearing = Length::mm(1200); // 900 mm to the log's end, to the right
    shell.openings[1].trim.settle_space = Length::mm(17);
    const Findings findings = reviewed(shell);
    REQUIRE(count(findings, "header-bears-short") == 1);
    const auto short_one = std::find_if(findings.begin(), findings.end(),
                                        [](const Finding &f) { return f.code == "header-bears-short"; });
    CHECK(short_one->subject == "opening[1].from_left");
    CHECK_THAT(
        test::sentence(*short_one),
        ContainsSubstring("1200 mm is asked for: move the opening 300 mm to the left, or change a height"));
    Shell moved = shell;
    moved.openings[1].from_left = Length::mm(3000);
    CHECK(count(reviewed(moved), "header-bears-short") == 0);
    const auto facts = opening_facts(shell, lay_out(shell));
    CHECK(facts[1].settle_space == 17);
    CHECK(test::english(facts[1].settle_basis) ==
          "as stated for this opening; by 13 mm in 300 mm it would be 13 mm");
    CHECK_FALSE(test::english(facts[0].settle_basis).starts_with("as stated"));
}

TEST_CASE("A bowed log is told of with what it does to its gap, and stays straight in the model") {
    Shell shell = test::plain_shell(); // gap 20 mm; that a log is laid crown up: common practice, no source
    OwnLog own;
    own.wall = "A";
    own.round = 2;
    own.bow = Length::mm(12);
    shell.own_logs = {own};
    Findings findings = reviewed(shell);
    REQUIRE(count(findings, "log-bowed") == 1);
    CHECK(findings[0].weight == Weight::note);
    CHECK_THAT(test::message(findings[0]), ContainsSubstring("as it is drawn"));
    shell.own_logs[0].bow = Length::mm(26);
    findings = reviewed(shell);
    REQUIRE(count(findings, "log-bowed") == 1);
    CHECK(findings[0].weight == Weight::warning);
    CHECK_THAT(test::message(findings[0]), ContainsSubstring("touches the log over it by 6 mm"));
    double bow = 0;
    const Layout layout = lay_out(shell), straight = lay_out(test::plain_shell());
    for (const auto i : layout.pieces.indices()) {
        bow = std::max(bow, layout.pieces[i].bow);
        CHECK(body_of(layout.pieces[i]).volume == body_of(straight.pieces[i]).volume);
    }
    CHECK(bow == 26);
}

namespace {

/// Log A-03 with slopes of its own.
Shell with_own_notch(double along, double across) {
    Shell shell = test::plain_shell();
    OwnLog own;
    own.wall = "A";
    own.round = 3;
    own.notch.kind = NotchKind::stated;
    own.notch.along = Slope::rise_per_run(along);
    own.notch.across = Slope::rise_per_run(across);
    shell.own_logs = {own};
    return shell;
}

} // namespace

TEST_CASE("One log's own slopes are held to lock and water as the shell's are") {
    // As "Slopes that fall to the inside lead water in": at both corners of the one log.
    const Findings wet = reviewed(with_own_notch(0.1, 0.05));
    CHECK(count(wet, "seam-leads-water-in") == 2);
    for (const Finding &f : wet)
        if (f.code == "seam-leads-water-in") {
            CHECK_THAT(test::place(f), ContainsSubstring("wall A, round 3"));
            CHECK(f.subject == "log[0].kind");
            CHECK_THAT(test::message(f), ContainsSubstring("the corner's own notch sheds it"));
        }
    // Its tail must rise outward by more than the top under it does: own along - across of the one below
    // (notch.h).
    CHECK(count(reviewed(with_own_notch(-0.2, -0.125)), "corner-not-locked") == 2);
    CHECK(count(reviewed(with_own_notch(0.125, -0.125)), "corner-not-locked") == 0);
    Shell loose = with_own_notch(-0.2, -0.125);
    loose.pegs.wanted = false;
    const Findings findings = reviewed(loose);
    CHECK(std::count_if(findings.begin(), findings.end(), [](const Finding &f) {
              return f.code == "corner-not-locked" && f.weight == Weight::warning;
          }) == 2);
}

TEST_CASE("Little wood over a wide opening is told of, with a caution and no approval") {
    Shell shell = test::plain_shell();
    shell.walls[0].length = shell.walls[2].length = Length::mm(8000);
    shell.rounds.count = 8;
    shell.openings = {test::window("A", 2000, 460, 4000, 820)}; // 80 mm of the header are left
    const Findings findings = reviewed(shell);
    REQUIRE(count(findings, "thin-header") == 1);
    const auto thin = std::find_if(findings.begin(), findings.end(),
                                   [](const Finding &f) { return f.code == "thin-header"; });
    CHECK(thin->weight == Weight::warning);
    CHECK(thin->subject == "opening[0].height");
    CHECK_THAT(test::message(*thin), ContainsSubstring("80 mm are left to carry over 4000 mm"));
    CHECK_THAT(test::message(*thin), ContainsSubstring("licensed professional"));
    shell.openings[0].width = Length::mm(1500); // 80 mm over 1500 mm
    CHECK(count(reviewed(shell), "thin-header") == 0);
}

TEST_CASE("What is left over an opening is measured there, not where the log is thickest or thinnest") {
    // Butts of 230 mm and tips of 190 by turns, gaps of 20: the third log ends 690 mm up at the left and 650
    // at the right end of 5 m. At the right jamb, 3400 mm along, that is 662.8: 10 mm over the opening, which
    // the log's own tip is under.
    Shell shell = test::plain_shell();
    shell.pegs.wanted = false;
    shell.logs.butt_height = Length::mm(230);
    shell.logs.tip_height = Length::mm(190);
    shell.openings = {test::window("A", 2400, 0, 1000, 652.8)};
    const Findings findings = reviewed(shell);
    REQUIRE(count(findings, "thin-header") == 1);
    const auto thin = std::find_if(findings.begin(), findings.end(),
                                   [](const Finding &f) { return f.code == "thin-header"; });
    CHECK_THAT(test::message(*thin), ContainsSubstring("10 mm are left to carry over 1000 mm"));
}

TEST_CASE("Housings of joists are taken off what is left over an opening") {
    // The log over it ends 1130 mm up: 205 mm are left over 2 m, and joists 150 mm high are let into them.
    Shell shell = test::plain_shell();
    shell.rounds.count = 8;
    shell.pegs.wanted = false;
    shell.openings = {test::window("A", 1500, 460, 2000, 465)};
    REQUIRE(count(reviewed(shell), "thin-header") == 0);
    Floor floor;
    floor.name = "G";
    floor.from = "A", floor.to = "C";
    floor.level = Length::mm(1110);
    floor.joist = {Length::mm(100), Length::mm(150)};
    shell.floors = {floor};
    const Findings findings = reviewed(shell);
    REQUIRE(count(findings, "thin-header") == 1);
    const auto thin = std::find_if(findings.begin(), findings.end(),
                                   [](const Finding &f) { return f.code == "thin-header"; });
    CHECK_THAT(test::message(*thin), ContainsSubstring("55 mm are left to carry over 2000 mm"));
}

TEST_CASE(
    "Where a sloping sill meets the opening under it, it is said that nothing is left and by how much") {
    // The head of the door lies 60 mm under the sill over it, which falls 66.7 mm through the wall.
    Shell shell = test::plain_shell();
    shell.rounds.count = 6;
    shell.pegs.wanted = false;
    shell.openings = {test::window("A", 2000, 0, 600, 500), test::window("A", 2000, 560, 600, 300)};
    shell.openings[1].trim.sill_slope = Slope::rise_per_run(1.0 / 3);
    Findings findings = reviewed(shell);
    const auto of_first = [](const Finding &f) {
        return f.code == "thin-header" && f.subject == "opening[0].height";
    };
    auto thin = std::find_if(findings.begin(), findings.end(), of_first);
    REQUIRE(thin != findings.end());
    CHECK_THAT(test::message(*thin), ContainsSubstring("nothing is left to carry over 600 mm") &&
                                         ContainsSubstring("cuts it through by 7 mm"));
    shell.openings[1].trim.sill_slope = Slope::rise_per_run(1.0 / 5); // 40 mm: 20 are left at the outside
    findings = reviewed(shell);
    thin = std::find_if(findings.begin(), findings.end(), of_first);
    REQUIRE(thin != findings.end());
    CHECK_THAT(test::message(*thin), ContainsSubstring("20 mm are left to carry over 600 mm"));
}

TEST_CASE("What no shop could cut is an error with the statement that it comes from") {
    const Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    Bodies bodies = bodies_of(layout);
    const Index<WallPlace> wall = layout.pieces[layout.models[Index<Model>(1)].pieces.front()].wall;
    bodies[Index<Model>(1)].hewn.faces.pop_back();
    const Findings findings = review(shell, layout, bodies);
    REQUIRE(count(findings, "no-sound-wood") == 1);
    CHECK(findings[0].weight == Weight::error);
    CHECK(findings[0].subject == "wall[" + std::to_string(wall.number()) + "].name");

    Layout pushed = layout;
    pushed.pieces[Index<Piece>(3)].frame.origin.z -= 2;
    for (const Finding &f : review(shell, pushed, bodies_of(pushed)))
        if (f.code == "pieces-overlap") CHECK(f.subject.starts_with("wall["));
}

TEST_CASE("an opening that ends over the thin end of a tapered log has the log above it for its header") {
    Shell shell = test::plain_shell();
    shell.logs.butt_height = Length::mm(270), shell.logs.tip_height = Length::mm(150);
    shell.rounds.gap = Length::mm(0), shell.rounds.pitch = Length::mm(210);
    shell.notch.kind = NotchKind::square_lap;
    shell.notch.least_tail = Length::mm(10);
    shell.pegs.wanted = false;
    const auto log_of = [](const Layout &layout, const char *tag) -> const Piece & {
        const auto piece = std::ranges::find(layout.pieces, tag, &Piece::tag);
        REQUIRE(piece != layout.pieces.end());
        return *piece;
    };
    const Layout plain = lay_out(shell);
    const Piece &log = log_of(plain, "A-01-1");
    const HewnFaces faces = hewn_faces(log);
    const double foot = log.frame.origin.z;
    // at that end its wood ends well under the top of its blank: the opening ends half way between
    const bool thin_left = faces.highest(500) < faces.highest(4500);
    const double x = thin_left ? 500 : 4100, wood = std::max(faces.highest(x), faces.highest(x + 400));
    REQUIRE(log.blank.height - wood > 40);
    const double top = foot + (wood + log.blank.height) / 2;
    shell.openings = {test::window("A", x, foot + 60, 400, top - foot - 60)};
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    REQUIRE_FALSE(layout.pieces.empty());
    const auto facts = opening_facts(shell, layout);
    REQUIRE(facts.size() == 1);
    REQUIRE(facts[0].header);
    CHECK(layout.pieces[*facts[0].header].tag == "A-02-1");
}
