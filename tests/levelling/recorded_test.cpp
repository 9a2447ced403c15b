#include "kernel/layout/courses/standing.h"
#include "kernel/layout/lay_out.h"
#include "kernel/levelling/recorded.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;

namespace {

/// 5 m by 4 m of 9 rounds, a door in the middle of wall A: walls B and D start with half logs.
Shell house() {
    Shell shell = test::plain_shell();
    shell.rounds.count = 9;
    shell.openings = {test::window("A", 2000, 0, 900, 1700)};
    return shell;
}

Recorded of(const Shell &shell, const std::string &csv) {
    const auto read = read_record(csv);
    REQUIRE(read.problems.empty());
    return recorded(shell, read.rows);
}

Layout with(Shell shell, const Recorded &logs) {
    shell.own_logs = logs.logs;
    return lay_out(shell);
}

const Piece &piece(const Layout &layout, const std::string &tag) {
    for (const Piece &p : layout.pieces)
        if (p.tag == tag) return p;
    FAIL("no piece " << tag);
    return layout.pieces.front();
}

std::string problems(const Recorded &recorded) {
    std::string text;
    for (const CsvProblem &p : recorded.problems)
        text += std::to_string(p.line) + ": " + p.message + "\n";
    return text;
}

} // namespace

TEST_CASE("A half log measured 200 mm is 200 mm high, at the bottom and at the top") {
    const Shell shell = house();
    const Recorded logs =
        of(shell, "wall,round,left_height,right_height\nB,1,200 mm,200 mm\nD,1,120 mm,118 mm\n");
    const Layout layout = with(shell, logs);
    CHECK_FALSE(has_errors(layout.findings));
    CHECK(piece(layout, "B-01-1").blank.height == Approx(200));
    CHECK(piece(layout, "B-01-1").log == LogKind::half_start);
    CHECK(piece(layout, "D-01-1").blank.height ==
          Approx(120).margin(0.2)); // too thin for tails, it ends between the walls
}

TEST_CASE("Logs left and right of a door keep their own marks, and the round its outer ends") {
    const Shell shell = house();
    const Recorded logs =
        of(shell, "wall,round,piece,left_height,right_height,mark,fabric,notes\n"
                  "a,3,1,215 mm,212 mm,IIIL,kept,an old joist hole\nA,3,2,205 mm,208 mm,IIIR,new,\n");
    CHECK(problems(logs).empty());
    const Layout layout = with(shell, logs);
    CHECK(piece(layout, "A-03-1").mark == "IIIL");
    CHECK(piece(layout, "A-03-2").mark == "IIIR");
    CHECK(piece(layout, "A-03-1").fabric == Fabric::kept);
    CHECK(piece(layout, "A-03-1").note == "an old joist hole");
    CHECK(piece(layout, "A-03-2").note.empty());
    CHECK(logs.lines == std::vector<int>{2, 2, 3});
    CHECK(logs.logs[0].sizes.butt == LogEnd::left);
    CHECK(logs.logs[0].sizes.butt_height == Length::mm(215));
    CHECK(logs.logs[0].sizes.tip_height == Length::mm(208));
    const auto off =
        off_the_line(shell, layout,
                     read_record("wall,round,piece,left_height,right_height\nA,3,1,215 mm,212 mm\n"
                                 "A,3,2,205 mm,208 mm\n")
                         .rows);
    REQUIRE(off.size() == 1); // on the line from 215 to 208 the left jamb is at 212.2, the right one at 210.9
    CHECK(off[0].line == 3);
    CHECK(off[0].message ==
          "A-03-2 was measured 205 mm high at its left end, and is drawn 211 mm: logs that an opening parts "
          "are drawn as one straight log");
}

TEST_CASE("What a shell does not have is told with the line of the record") {
    const Shell shell = house();
    const std::string head = "wall,round,piece,left_width,right_width\n";
    CHECK(problems(of(shell, head + "A,1,,,\nZ,1,,,\nZ,2,,,\n")) ==
          "3: there is no wall \"Z\"; the walls are A, B, C, D; so in 1 more line: 4\n");
    CHECK(problems(of(shell, head + "A,10,,,\nB,10,,,\nB,11,,,\n")) ==
          "2: wall A has 9 logs, one on another; there is no round 10\n4: wall B has 10 logs, one on "
          "another; there is no "
          "round 11\n");
    CHECK(problems(of(shell, head + "A,1,3,,\n")) ==
          "2: wall A, round 1 has 2 pieces; there is no piece 3\n");
    CHECK(problems(of(shell, head + "A,1,,210 mm,190 mm\n")) ==
          "2: the log is 210 mm wide, more than wall A's 200 mm; state that wall's thickness as that of its "
          "widest log\n");
    CHECK(problems(of(test::round_shell(), "wall,round,left_height,right_height\nA,1,250 mm,240 mm\n")) ==
          "2: logs scoped over one another are even cylinders; give their diameter in place of heights and "
          "widths\n");
}
