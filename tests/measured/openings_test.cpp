// Openings as they were measured: what is made of their numbers, and what is told of those that disagree.
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

/// 5 m by 4 m; in wall A a window from 1500 to 2300, 230 mm over the foundation and 460 mm high.
Shell house() {
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 1500, 230, 800, 460)};
    shell.openings[0].name = "light";
    return shell;
}

RecordedOpening light() {
    RecordedOpening opening;
    opening.name = "light", opening.wall = "A", opening.zero = "DA";
    return opening;
}

/// A log of the first round whose underside lies 1000 mm under the level plane.
FoundLog first_log() {
    FoundLog log;
    log.tag = "first", log.place = {"A", 1, {}};
    log.ends.resize(1);
    log.ends[0].corner = "DA", log.ends[0].height = noted(210), log.ends[0].level = noted(-790);
    return log;
}

Record record_of(const RecordedOpening &opening, std::vector<FoundLog> logs = {}) {
    Record record;
    record.openings = {opening};
    record.logs = std::move(logs);
    return record;
}

Opening made(const RecordedOpening &opening, std::vector<FoundLog> logs = {}) {
    const MeasuredShell measured = measured_shell(house(), record_of(opening, std::move(logs)));
    INFO(test::words(measured.findings));
    CHECK(measured.findings.empty());
    return measured.shell.openings.at(0);
}

std::string told(const RecordedOpening &opening, std::vector<FoundLog> logs = {}) {
    return test::words(measured_shell(house(), record_of(opening, std::move(logs))).findings);
}

} // namespace

TEST_CASE("An opening stands where its jambs were measured, from either corner of its wall") {
    RecordedOpening opening = light();
    opening.near_at_sill = noted(1512), opening.near_at_head = noted(1516);
    opening.far_at_sill = noted(2330);
    const Opening from_left = made(opening);
    CHECK(from_left.from_left.mm() == Approx(1514));
    CHECK(from_left.width.mm() == Approx(2330 - 1514));
    opening.zero = "AB";
    const Opening from_right = made(opening);
    CHECK(from_right.from_left.mm() == Approx(5000 - 2330));
    CHECK(from_right.width.mm() == Approx(2330 - 1514));
    CHECK(from_right.sill == house().openings[0].sill);
}

TEST_CASE("What nobody has measured of an opening stays as it is stated") {
    RecordedOpening opening = light();
    opening.far_at_head = noted(2310);
    CHECK(made(opening).from_left.mm() == Approx(1500));
    CHECK(made(opening).width.mm() == Approx(810));
    opening.width = noted(790);
    CHECK(made(opening).from_left.mm() == Approx(1520));
    opening.far_at_head = {};
    CHECK(made(opening).from_left.mm() == Approx(1500));
    CHECK(made(opening).width.mm() == Approx(790));
    opening.width.certainty = Certainty::contradicted;
    CHECK(made(opening) == house().openings[0]);
}

TEST_CASE("Sill and head are told from the lowest log by their levels") {
    RecordedOpening opening = light();
    opening.sill = noted(-760), opening.head = noted(-290);
    const Opening both = made(opening, {first_log()});
    CHECK(both.sill.mm() == Approx(1000 - 760));
    CHECK(both.height.mm() == Approx(470));
    opening.sill = {}, opening.height = noted(450);
    const Opening hung = made(opening, {first_log()});
    CHECK(hung.sill.mm() == Approx(1000 - 290 - 450));
    CHECK(hung.height.mm() == Approx(450));
    Record record = record_of(light(), {first_log()});
    record.planes = {{"L1", {}, "", ""}, {"L2", noted(500), "", ""}};
    record.logs[0].ends[0].plane = "L1";
    record.openings[0].sill = noted(-1260), record.openings[0].plane = "L2";
    CHECK(measured_shell(house(), record).shell.openings[0].sill.mm() == Approx(1000 + 500 - 1260));
}

TEST_CASE("What an opening's numbers say against one another is told with both and the difference") {
    RecordedOpening opening = light();
    opening.near_at_sill = noted(1500), opening.far_at_sill = noted(2300), opening.width = noted(840);
    CHECK_THAT(told(opening),
               ContainsSubstring("it was measured 840 mm wide, and by its jambs it is 800 mm, a "
                                 "difference of 40 mm: the jambs are taken"));
    opening.width = {}, opening.near_at_head = noted(1530);
    CHECK_THAT(
        told(opening),
        ContainsSubstring("its jamb nearer to corner DA was measured 1500 mm from it at the sill and 1530 "
                          "mm at the head"));
    opening = light();
    opening.sill = noted(-770), opening.head = noted(-310), opening.height = noted(500);
    CHECK_THAT(
        told(opening, {first_log()}),
        ContainsSubstring("it was measured 500 mm high, and by its levels it is 460 mm, a difference of 40 "
                          "mm: the levels are taken"));
    opening.height = noted(466); // a tape's slack
    CHECK(told(opening, {first_log()}).empty());
}

TEST_CASE("A number of an opening that nobody can use is told, and why") {
    RecordedOpening opening = light();
    opening.near_at_sill = noted(1500), opening.zero = "";
    CHECK_THAT(told(opening), ContainsSubstring("not from which corner"));
    opening.zero = "BC";
    CHECK_THAT(told(opening), ContainsSubstring("corner BC, which is no end of wall A"));
    opening = light(), opening.sill = noted(-770);
    CHECK_THAT(told(opening), ContainsSubstring("none was read of a log of the first round"));
    Record record = record_of(opening, {first_log()});
    record.planes = {{"L1", {}, "", ""}, {"L2", noted(500), "", ""}};
    record.logs[0].ends[0].plane = "L1";
    CHECK_THAT(test::words(measured_shell(house(), record).findings),
               ContainsSubstring("nothing says which level plane they were read from"));
    opening = light(), opening.near_at_sill = noted(2300), opening.far_at_sill = noted(1500);
    CHECK_THAT(told(opening), ContainsSubstring("it would reach from 2300 mm to 1500 mm: it stays as it is"));
    opening = light(), opening.name = "hatch", opening.width = noted(500);
    CHECK_THAT(told(opening),
               ContainsSubstring("opening hatch of wall A was measured, and the plan has none"));
    opening.width = {};
    CHECK(told(opening).empty()); // a row to be filled in says nothing yet
}

TEST_CASE("A sill under the lowest log is set on the foundation, and told where a level is not so far off") {
    RecordedOpening opening = light();
    opening.sill = noted(-1000 - tape_tolerance + 1), opening.head = noted(-290);
    CHECK(made(opening, {first_log()}).sill.mm() == 0);
    CHECK(made(opening, {first_log()}).height.mm() == Approx(1000 - 290));
    opening.sill = noted(-1000 - tape_tolerance - 1);
    CHECK_THAT(told(opening, {first_log()}), ContainsSubstring("its sill lies 19 mm under the lowest log"));
}

TEST_CASE("What is told of a measured opening points at its entry of the record") {
    RecordedOpening opening = light();
    opening.near_at_sill = noted(1500), opening.far_at_sill = noted(2300), opening.width = noted(840);
    const Record record = record_of(opening);
    Findings findings = measured_shell(house(), record).findings;
    findings.push_back({Weight::error, "x", {}, said("none"), {}, "opening[0].from_left"});
    point_at_record(findings, record, house());
    CHECK(findings.at(0).subject == "record.opening[0]");
    CHECK(findings.at(1).subject == "record.opening[0]");
}

TEST_CASE("A log that ends at a measured opening and was measured otherwise is told with the difference") {
    RecordedOpening opening = light();
    opening.near_at_sill = noted(1500), opening.far_at_sill = noted(2300);
    const Layout layout = lay_out(house());
    const auto piece = std::ranges::find(layout.pieces, std::string("A-02-1"), &Piece::tag);
    REQUIRE(piece != layout.pieces.end());
    FoundLog log;
    log.tag = "beside", log.place = {"A", 2, 1};
    log.length = noted(piece->blank.length + tape_tolerance - 0.5);
    CHECK(told(opening, {log}).empty());
    log.length = noted(piece->blank.length + 40);
    CHECK_THAT(told(opening, {log}), ContainsSubstring("log beside: up to opening light it was measured") &&
                                         ContainsSubstring("a difference of 40 mm"));
    log.length = {};
    log.ends.resize(1);
    log.ends[0].corner = "light", log.ends[0].width = noted(160), log.ends[0].height = noted(230);
    CHECK_THAT(told(opening, {log}), ContainsSubstring("beside opening light it was measured 160 mm wide") &&
                                         ContainsSubstring("230 mm high"));
}

TEST_CASE("What a state says of an opening goes before what was measured of it, number by number") {
    RecordedOpening opening = light();
    opening.near_at_sill = noted(1514), opening.far_at_sill = noted(2330), opening.zero = "DA";
    opening.sill = noted(-760), opening.head = noted(-290);
    const Record record = record_of(opening, {first_log()});
    const auto in_state = [&](auto change) {
        Shell now = house();
        change(now);
        return measured_shell(now, left_as_found(record, house(), now)).shell.openings;
    };
    const auto moved = in_state([](Shell &now) { now.openings[0].from_left = Length::mm(1000); }).at(0);
    CHECK(moved.from_left.mm() == Approx(1000));
    CHECK(moved.width.mm() == Approx(2330 - 1514)); // as it was measured
    CHECK(moved.sill.mm() == Approx(240));
    const auto wider = in_state([](Shell &now) { now.openings[0].width = Length::mm(900); }).at(0);
    CHECK(wider.from_left.mm() == Approx(1514));
    CHECK(wider.width.mm() == Approx(900));
    const auto higher = in_state([](Shell &now) { now.openings[0].height = Length::mm(600); }).at(0);
    CHECK(higher.sill.mm() == Approx(240));
    CHECK(higher.height.mm() == Approx(600));
    CHECK(in_state([](Shell &now) { now.openings.clear(); }).empty());
}

TEST_CASE("Where a wall is longer in a state, an opening that was measured from its right end stays") {
    RecordedOpening opening = light();
    opening.zero = "AB", opening.near_at_sill = noted(2670), opening.far_at_sill = noted(3486);
    const Record record = record_of(opening);
    Shell now = house();
    now.walls[0].length = now.walls[2].length = Length::mm(6000);
    const Shell built = measured_shell(now, left_as_found(record, house(), now)).shell;
    CHECK(built.openings.at(0).from_left.mm() == Approx(1514));
    CHECK(built.openings.at(0).width.mm() == Approx(816));
}
