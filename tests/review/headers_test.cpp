// The wood over an opening: its bearing, what is left of it, which log it is.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/review/opening_facts.h"
#include "tests/review/reviewed.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

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
