// What a record says against itself is told with both numbers, and nothing is told where it does not.
#include "kernel/layout/lay_out.h"
#include "kernel/measured/measured_shell.h"
#include "tests/measured/support/noted.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::noted;

namespace {

/// Of wall A of the plain shell: rounds of 230 mm, logs of 210 mm.
FoundLog log_of(int round) {
    FoundLog log;
    log.tag = "A" + std::to_string(round);
    log.place = {"A", round, {}};
    log.zero = "DA";
    log.ends.resize(2);
    log.ends[0].corner = "DA", log.ends[1].corner = "AB";
    for (FoundEnd &end : log.ends)
        end.height = noted(210);
    return log;
}

FoundStation gap(double at, std::optional<double> below, std::optional<double> above) {
    FoundStation station;
    station.at = noted(at);
    if (below) station.gap_below = noted(*below);
    if (above) station.gap_above = noted(*above);
    return station;
}

std::string told(const Record &record) {
    return test::words(measured_shell(test::plain_shell(), record).findings);
}

} // namespace

TEST_CASE("A seam that two logs measure differently is told with both numbers and their difference") {
    Record record;
    record.logs = {log_of(2), log_of(3)};
    record.logs[0].stations = {gap(2000, std::nullopt, 20)};
    record.logs[1].stations = {gap(2100, 45, std::nullopt)};
    CHECK(told(record) ==
          "seam-measured-twice @ wall A, round 3: the gap under it is 45 mm as measured on log A3 "
          "and 20 mm on log A2, a difference of 25 mm: the middle is taken\n");
    record.logs[1].stations = {gap(2100, 24, std::nullopt)};
    CHECK(told(record).empty());
    const auto both = measured_shell(test::plain_shell(), record);
    const Layout layout = lay_out(both.shell);
    REQUIRE_FALSE(has_errors(layout.findings));
}

TEST_CASE("A log that its levels put into the one below is laid on it, and told") {
    Record record;
    record.logs = {log_of(1), log_of(2)};
    for (FoundEnd &end : record.logs[0].ends)
        end.level = noted(-1000);
    for (FoundEnd &end : record.logs[1].ends)
        end.level = noted(-820); // 180 up, and 210 high
    const auto findings = measured_shell(test::plain_shell(), record).findings;
    REQUIRE(findings.size() == 2);
    CHECK(findings[0].code == "log-in-log");
    CHECK_THAT(test::sentence(findings[0]), ContainsSubstring("reaches 30 mm into"));
}

TEST_CASE("A gap that was measured at an end otherwise than the levels leave it is told") {
    Record record;
    record.logs = {log_of(1), log_of(2)};
    for (FoundEnd &end : record.logs[0].ends)
        end.level = noted(-1000);
    for (FoundEnd &end : record.logs[1].ends)
        end.level = noted(-760); // 240 up, 210 high: a gap of 30
    record.logs[1].stations = {gap(250, 32, std::nullopt)};
    CHECK(told(record).empty());
    record.logs[1].stations = {gap(250, 5, std::nullopt)};
    CHECK(told(record) ==
          "levels-and-gaps-differ @ wall A, round 2: under its end at corner DA the levels leave a gap "
          "of 30 mm, the gaps as measured 5 mm: the levels are taken\n");
}

TEST_CASE("Levels without that of a first log say nothing, and that is told") {
    Record record;
    record.logs = {log_of(2)};
    record.logs[0].ends[0].level = noted(-800);
    CHECK(test::has(measured_shell(test::plain_shell(), record).findings, "levels-without-sill"));
}

TEST_CASE("A tail whose four heights lie in no plane gets the nearest one, and says how far it is off") {
    Record record;
    record.logs = {log_of(1)};
    FoundEnd &end = record.logs[0].ends[1];
    end.shoulder_outside = noted(100), end.shoulder_inside = noted(100);
    end.end_outside = noted(100), end.end_inside = noted(140);
    const auto measured = measured_shell(test::plain_shell(), record);
    REQUIRE(measured.findings.size() == 1);
    CHECK(measured.findings[0].code == "tail-not-plane");
    CHECK_THAT(test::sentence(measured.findings[0]), ContainsSubstring("10 mm off"));
    const OwnLog &own = measured.shell.own_logs.front();
    REQUIRE(own.tails.size() == 1);
    CHECK(own.tails[0].end == LogEnd::right);
    CHECK_THAT(own.tails[0].height->mm(), Catch::Matchers::WithinAbs(110, 1e-9));          // the mean of four
    CHECK_THAT(own.tails[0].along->ratio(), Catch::Matchers::WithinAbs(20.0 / 200, 1e-9)); // 20 over 200 mm
}

TEST_CASE("A tail measured at two places is cut by the rule, and that is told") {
    Record record;
    record.logs = {log_of(1)};
    record.logs[0].ends[0].shoulder_outside = noted(100);
    record.logs[0].ends[0].end_outside = noted(110);
    CHECK(test::has(measured_shell(test::plain_shell(), record).findings, "tail-measured-in-part"));
}

TEST_CASE("Numbers that are contradicted are left out") {
    Record record;
    record.logs = {log_of(1)};
    for (FoundEnd &end : record.logs[0].ends)
        end.height.certainty = Certainty::contradicted;
    const auto measured = measured_shell(test::plain_shell(), record);
    CHECK(measured.taken == 0);
    CHECK_FALSE(measured.shell.own_logs.front().sizes.butt_height);
}

TEST_CASE("What nobody has measured is proposed, and listed") {
    const auto nothing = measured_shell(test::plain_shell(), {});
    CHECK(nothing.shell == test::plain_shell());
    Record record;
    record.logs = {log_of(2)};
    const auto one = measured_shell(test::plain_shell(), record);
    CHECK(nothing.proposed.size() - one.proposed.size() == 2); // two heights are measured now
    CHECK(std::ranges::find(one.proposed, Proposed{"A", 2, LogEnd::left, ProposedNumber::width}) !=
          one.proposed.end());
}

TEST_CASE("A log's length is held against the whole log, also where a mend takes its end off") {
    Shell shell = test::plain_shell();
    const Layout whole = lay_out(shell);
    Record record;
    record.logs = {log_of(2)};
    record.logs[0].length = noted(std::ranges::find(whole.pieces, "A-02-1", &Piece::tag)->blank.length);
    Mend splice;
    splice.wall = "A", splice.round = 2, splice.kind = MendKind::splice;
    splice.to = Length::mm(400), splice.lap = Length::mm(300);
    shell.mends = {splice};
    const auto told_of = [&] { return test::words(measured_shell(shell, record).findings); };
    CHECK(told_of().empty());
    record.logs[0].length = noted(4600); // what is left of it is that long, about
    CHECK_THAT(told_of(), ContainsSubstring("its length over all was measured 4600 mm"));
}

TEST_CASE("A height that is far off what the plan has is told by the log's tag, its wall and its round") {
    Record record;
    record.logs = {log_of(2), log_of(3)};
    CHECK(told(record).empty());
    record.logs[1].ends[1].height = noted(110);
    CHECK_THAT(told(record),
               ContainsSubstring("height-far-off @ wall A, round 3: log A3: its height at AB was "
                                 "measured 110 mm, and the plan has 210 mm there"));
    record.logs[1].ends[1].height = noted(210);
    FoundStation station;
    station.at = noted(2000), station.height = noted(410);
    record.logs[0].stations = {station};
    CHECK_THAT(told(record),
               ContainsSubstring("height-far-off @ wall A, round 2: log A2: between its ends it "
                                 "was measured 410 mm high, and the plan has 210 mm there"));
}

TEST_CASE("A width that is far off what the plan has is told by the log's tag, its wall and its round") {
    Record record;
    record.logs = {log_of(2), log_of(3)};
    record.logs[1].ends[1].width = noted(9.8); // inches typed where millimetres stand
    CHECK_THAT(told(record), ContainsSubstring("width-far-off @ wall A, round 3: log A3: its width at AB was "
                                               "measured 10 mm, and the plan has 200 mm there"));
    record.logs[1].ends[1].width = noted(2000); // the wall is made as wide as that
    CHECK_THAT(told(record), ContainsSubstring("width-far-off @ wall A, round 3: log A3: its width at AB was "
                                               "measured 2000 mm, and the plan has 200 mm there"));
    record.logs[1].ends[1].width = noted(190);
    CHECK_THAT(told(record), !ContainsSubstring("far-off"));
    FoundStation station;
    station.at = noted(2000), station.width = noted(20);
    record.logs[0].stations = {station};
    CHECK_THAT(told(record),
               ContainsSubstring("width-far-off @ wall A, round 2: log A2: between its ends it was "
                                 "measured 20 mm wide, and the plan has 200 mm there"));
}
