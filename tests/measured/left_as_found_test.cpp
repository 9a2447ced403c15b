// What a later state says goes before what was found, number by number; what comes of the record says so.
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

/// A sloping log of wall A of the plain shell, measured at both ends.
FoundLog sloping_log(int round) {
    FoundLog log;
    log.tag = "A " + std::to_string(round);
    log.place = {"A", round, {}};
    log.butt = "DA";
    log.ends.resize(2);
    log.ends[0].corner = "DA", log.ends[1].corner = "AB";
    log.ends[0].height = noted(230), log.ends[1].height = noted(190);
    log.ends[0].width = noted(180), log.ends[1].width = noted(160);
    log.ends[0].overhang = noted(20), log.ends[1].overhang = noted(30);
    for (FoundEnd &end : log.ends)
        end.shoulder_outside = end.shoulder_inside = noted(100),
        end.end_outside = end.end_inside = noted(110);
    return log;
}

Record record_of(std::vector<FoundLog> logs) {
    Record record;
    record.logs = std::move(logs);
    return record;
}

OwnLog stated(const std::string &wall, int round) {
    OwnLog log;
    log.wall = wall, log.round = round;
    return log;
}

/// The plain shell with that said of a log over it.
FoundLog left_under(const OwnLog &said) {
    const Shell below = test::plain_shell();
    Shell now = below;
    now.own_logs.push_back(said);
    return left_as_found(record_of({sloping_log(2)}), below, now).logs.at(0);
}

Opening window(double from_left) {
    Opening opening;
    opening.wall = "A", opening.name = "window", opening.kind = OpeningKind::window;
    opening.from_left = Length::mm(from_left), opening.width = Length::mm(900);
    opening.sill = Length::mm(240), opening.height = Length::mm(440);
    return opening;
}

} // namespace

TEST_CASE("A note on a log, or where new wood comes, leaves all that was measured of it") {
    OwnLog said = stated("A", 2);
    said.note = "look again", said.fabric = Fabric::replacement;
    CHECK(left_under(said) == sloping_log(2));
}

TEST_CASE("What a state says of a log takes the place of that number, and of no other") {
    OwnLog said = stated("A", 2);
    said.notch.overhang_right = Length::mm(400);
    FoundLog expected = sloping_log(2);
    expected.ends[1].overhang.certainty = Certainty::contradicted; // how far it ran is still known
    CHECK(left_under(said) == expected);

    said = stated("A", 2);
    said.sizes.butt_height = Length::mm(250);
    expected = sloping_log(2);
    expected.ends[0].height = expected.ends[1].height = {};
    CHECK(left_under(said) == expected);

    said = stated("A", 2);
    said.notch.kind = NotchKind::square_lap;
    expected = sloping_log(2);
    for (FoundEnd &end : expected.ends)
        end.shoulder_outside = end.shoulder_inside = end.end_outside = end.end_inside = {};
    CHECK(left_under(said) == expected);
}

TEST_CASE("A log whose butt is stated at its other end is turned: its ends' sizes change places") {
    OwnLog said = stated("A", 2);
    said.sizes.butt = LogEnd::left; // as found, since corner DA is at the left
    CHECK(left_under(said).ends[0].height.value->mm() == 230);
    said.sizes.butt = LogEnd::right;
    const FoundLog turned = left_under(said);
    CHECK(turned.ends[0].height.value->mm() == 190);
    CHECK(turned.ends[1].height.value->mm() == 230);
    CHECK(turned.ends[0].width.value->mm() == 160);
    CHECK_FALSE(turned.ends[0].shoulder_outside.is_taken());
}

TEST_CASE("Other logs of the house keep what was measured of them") {
    const Shell below = test::plain_shell();
    Shell now = below;
    OwnLog said = stated("A", 2);
    said.sizes.butt_height = Length::mm(250);
    now.own_logs.push_back(said);
    const Record left = left_as_found(record_of({sloping_log(2), sloping_log(3)}), below, now);
    CHECK(left.logs.at(1) == sloping_log(3));
}

TEST_CASE("A window that is closed leaves a house that can be laid out, and no old tag on a log that grew") {
    Shell below = test::plain_shell();
    below.openings = {window(1500)};
    REQUIRE_FALSE(has_errors(lay_out(below).findings));
    std::vector<FoundLog> logs(2);
    for (int piece : {1, 2}) {
        FoundLog &log = logs[static_cast<std::size_t>(piece) - 1];
        log.tag = "A 3." + std::to_string(piece), log.place = {"A", 3, piece};
    }
    Shell now = below;
    now.openings.clear();
    const Record left = left_as_found(record_of(logs), below, now);
    const auto closed = measured_shell(now, left);
    const Layout layout = lay_out(closed.shell);
    CHECK_FALSE(has_errors(layout.findings));
    for (const Piece &piece : layout.pieces)
        CHECK(piece.mark.empty());
}

TEST_CASE("Where another window comes, a log that ends where it did is counted anew and keeps its tag") {
    Shell below = test::plain_shell();
    below.openings = {window(3500)};
    FoundLog log;
    log.tag = "right of it", log.place = {"A", 3, 2};
    Shell now = below;
    now.openings = {window(1500), window(3500)};
    now.openings[0].name = "new window";
    REQUIRE_FALSE(has_errors(lay_out(now).findings));
    CHECK(left_as_found(record_of({log}), below, now).logs.at(0).place.piece == 3);
    now.openings = {window(3600)}; // the log is cut back, and is still that log
    CHECK(left_as_found(record_of({log}), below, now).logs.at(0).tag == "right of it");
    now.openings = {window(3400)}; // it would have to grow
    CHECK(left_as_found(record_of({log}), below, now).logs.at(0).tag.empty());
}

TEST_CASE("Logs whose width nobody measured stay as wide as stated where a wide one makes the wall thicker") {
    FoundLog wide = sloping_log(2);
    wide.ends[0].width = wide.ends[1].width = noted(215);
    const Shell plain = test::plain_shell(), made = measured_shell(plain, record_of({wide})).shell;
    REQUIRE_FALSE(has_errors(lay_out(made).findings));
    int others = 0;
    for (const OwnLog &log : made.own_logs)
        if (log.wall == "A" && log.round != 2) {
            CHECK(log.sizes.butt_width == plain.thickness);
            CHECK(log.sizes.tip_width == plain.thickness);
            ++others;
        }
    CHECK(others == 3);
}

TEST_CASE("A log of another length than its place is told, with both; a tape's slack is not") {
    FoundLog log = sloping_log(2);
    const Layout plain = lay_out(measured_shell(test::plain_shell(), record_of({log})).shell);
    const auto piece = std::ranges::find(plain.pieces, std::string("A-02-1"), &Piece::tag);
    REQUIRE(piece != plain.pieces.end());
    log.length = noted(piece->blank.length + tape_tolerance - 0.5);
    CHECK_FALSE(
        test::has(measured_shell(test::plain_shell(), record_of({log})).findings, "log-of-another-length"));
    log.length = noted(piece->blank.length + tape_tolerance + 0.5);
    const auto told = measured_shell(test::plain_shell(), record_of({log})).findings;
    REQUIRE(test::has(told, "log-of-another-length"));
}

TEST_CASE("Numbers that nothing in the model is made of are told by their kind") {
    Record record = record_of({sloping_log(2)});
    record.corners.push_back({"AB", {"A", "B"}, noted(-30), "", noted(40), noted(0), noted(2400), "", ""});
    record.logs[0].wind = noted(10);
    const std::string told = test::words(measured_shell(test::plain_shell(), record).findings);
    CHECK_THAT(told, ContainsSubstring("2 leans of corners are recorded and not in the model") &&
                         ContainsSubstring("1 level of a corner is") &&
                         ContainsSubstring("1 wind of a log is"));
}

TEST_CASE("What a found log brings into the shell is told at its own entry, never at another log's") {
    const Shell stated_shell = test::plain_shell();
    Record record = record_of({sloping_log(3), sloping_log(2)});
    Findings findings{{Weight::warning, "x", round_place("A", 2), said("none"), {}, "log[1].bow"},
                      {Weight::note, "x", round_place("B", 2), said("none"), {}, "log[0]"},
                      {Weight::note, "x", round_place("A", 3), said("none"), {}, ""},
                      {Weight::note, "x", {about::All::plan}, said("none"), {}, "plan"}};
    point_at_record(findings, record, stated_shell);
    CHECK(findings[0].subject == "found[1]");
    CHECK(findings[1].subject.empty());
    CHECK(findings[2].subject == "found[0]");
    CHECK(findings[3].subject == "plan");
}

TEST_CASE("How far a log runs past its corner changes nothing of the walls") {
    FoundLog tapered = sloping_log(2);
    tapered.ends[0].width = noted(190), tapered.ends[1].width = noted(215);
    const Shell below = test::plain_shell();
    const auto thickness = [&](const Shell &now) {
        const Shell made = measured_shell(now, left_as_found(record_of({tapered}), below, now)).shell;
        return made.walls[0].thickness.value_or(made.thickness).mm();
    };
    Shell longer = below;
    longer.own_logs = {stated("A", 2)};
    longer.own_logs[0].notch.overhang_right = Length::mm(1900);
    CHECK(thickness(below) > 215);
    CHECK(thickness(longer) == thickness(below));
    tapered.ends[1].overhang = {}; // by the rule of the shell
    CHECK(thickness(longer) == thickness(below));
}
