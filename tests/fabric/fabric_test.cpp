// How much old wood stays: each figure against a sum that is written out here.
#include "kernel/fabric/fabric.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/record/check_record.h"
#include "tests/fabric/laid.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cstdio>

using namespace roundlay;
using roundlay::test::found_log;
using roundlay::test::Laid;

namespace {

FoundLog log_at(const std::string &tag, const std::string &wall, int round,
                std::vector<Decision> decided = {}) {
    return found_log(tag, {wall, round, {}}, decided);
}

FoundLog used_at(FoundLog log, const std::string &wall, int round, const char *length, const char *height,
                 const char *width) {
    log.decisions = {{Decision::use_elsewhere, "", "", "", {wall, round, {}}}};
    log.length.written = length;
    log.stations.push_back({});
    log.stations.back().height.written = height;
    log.stations.back().width.written = width;
    return log;
}

/// 5 m x 4 m, 200 mm thick, rounds of 230 mm with gaps of 20 mm: logs are 210 mm high.
Laid plain() {
    return {test::plain_shell()};
}

const Piece &piece_of(const Layout &layout, const std::string &tag) {
    return *std::ranges::find(layout.pieces, tag, &Piece::tag);
}

std::vector<std::string> told(Record record, const Layout &layout) {
    (void)read_numbers(record);
    std::vector<std::string> all;
    for (const DecisionProblem &problem : decision_problems(record, layout))
        all.push_back(problem.path + ": " + test::english(problem.what));
    return all;
}

} // namespace

TEST_CASE("The outside face of a squared log is its height times what is seen of its length") {
    const Laid it = plain();
    for (const Piece &piece : it.layout.pieces) {
        if (piece.log != LogKind::full) continue;
        // By hand: between the shoulders the whole height; at each end the tail, whose side a crossing log
        // does not hide, is at least nothing and at most the whole height over the crossing wall.
        const double height = piece.blank.height, between = piece.far.shoulder - piece.datum.shoulder;
        const double least = height * between, most = height * piece.blank.length;
        const double face = outside_face(it.bodies[piece.model]);
        std::printf("%s: %.0f mm x %.0f mm = %.4f m2 <= %.4f m2 <= %.0f mm x %.0f mm = %.4f m2\n",
                    piece.tag.c_str(), height, between, least / 1e6, face / 1e6, height, piece.blank.length,
                    most / 1e6);
        CHECK(face > least * (1 - 1e-9));
        CHECK(face < most * (1 + 1e-9));
    }
}

TEST_CASE("A squared block and a round one have the outside faces that a hand works out") {
    Piece square;
    square.blank = {3000, 180, 210};
    CHECK(outside_face(body_of(square)) == Approx(3000.0 * 210).epsilon(1e-12));
    square.cuts.push_back(BoxCut{.box = {{1000, 0, 0}, {1800, 180, 210}}});
    CHECK(outside_face(body_of(square)) == Approx(2200.0 * 210).epsilon(1e-12));
    const Layout round = lay_out(test::round_shell());
    const Bodies bodies = bodies_of(round);
    for (const Piece &piece : round.pieces) {
        // Seen square on, an even cylinder is its length times its diameter; saddles and grooves hide some.
        const double all = piece.blank.length * 240, face = outside_face(bodies[piece.model]);
        std::printf("%s: %.4f m2 of %.0f mm x 240 mm = %.4f m2\n", piece.tag.c_str(), face / 1e6,
                    piece.blank.length, all / 1e6);
        CHECK(face < all * (1 + 1e-9));
        CHECK(face > all * (piece.log == LogKind::full ? 0.7 : 0.3));
    }
}

TEST_CASE("What stays is the sum over the logs that are kept, mended, turned or used elsewhere") {
    const Laid it = plain();
    Record record;
    record.logs = {log_at("k", "A", 1, {Decision::keep}),
                   log_at("m", "B", 2, {Decision::mend}),
                   log_at("r", "C", 2, {Decision::keep, Decision::replace}), // a change of mind
                   log_at("t", "D", 2, {Decision::turn}),
                   log_at("u", "A", 2, {Decision::use_elsewhere}),
                   log_at("l", "A", 3, {Decision::leave_out}),
                   log_at("n", "B", 3),
                   log_at("x", "B", 90, {Decision::keep})}; // no such log in the shell
    const FabricFigures all = fabric_figures(record, it.layout, it.bodies);
    double volume = 0, face = 0, found = 0;
    for (const char *tag : {"A-01-1", "B-02-1", "D-02-1", "A-02-1"}) {
        const Body &body = it.bodies[piece_of(it.layout, tag).model];
        std::printf("%s: %.6f m3, %.6f m2\n", tag, body.volume / 1e9, outside_face(body) / 1e6);
        volume += body.volume, face += outside_face(body);
    }
    for (const char *tag : {"A-01-1", "B-02-1", "D-02-1", "A-02-1", "C-02-1", "A-03-1", "B-03-1"})
        found += it.bodies[piece_of(it.layout, tag).model].volume;
    std::printf("stays: %.6f m3 of %.6f m3, %.6f m2\n", volume / 1e9, found / 1e9, face / 1e6);
    CHECK(all.stays().logs == 5); // with the one that the shell does not have
    CHECK(all.stays().volume == Approx(volume).epsilon(1e-12));
    CHECK(all.stays().outside == Approx(face).epsilon(1e-12));
    CHECK(all.found.logs == 8);
    CHECK(all.found.volume == Approx(found).epsilon(1e-12));
    CHECK(all.of_decision(Decision::replace).logs == 1);
    CHECK(all.of_decision(Decision::leave_out).logs == 1);
    CHECK(all.undecided.logs == 1);
    CHECK(all.without_place == 1);
    REQUIRE(all.most == 2);

    // Before the change of mind the log of C stayed too.
    const FabricFigures before = fabric_figures(record, it.layout, it.bodies, 1);
    CHECK(before.stays().logs == 6);
    CHECK(before.stays().volume ==
          Approx(volume + it.bodies[piece_of(it.layout, "C-02-1").model].volume).epsilon(1e-12));
}

TEST_CASE("Of a mended log the old wood alone stays: by count, volume and outside face each its own share") {
    // check-values.csv: FAB-BASIS, derived: 8 x 12 in x 16 ft with a piece of 2 x 12 x 48 in
    constexpr double inch = 25.4;
    Piece log;
    log.tag = "A-01-1";
    log.blank = {192 * inch, 8 * inch, 12 * inch};
    log.cuts = {MendCut{MendUse::let_in,
                        LogFace::outside,
                        24 * inch,
                        72 * inch,
                        -10,
                        13 * inch,
                        {{0, -1, 0}, -2 * inch},
                        "A-01-1-M1"}};
    Piece comes;
    comes.tag = "A-01-1-M1", comes.mends = Index<Piece>(0), comes.mended = {0};
    comes.blank = {48 * inch, 2 * inch, 12 * inch};
    comes.frame.origin = {24 * inch, 0, 0};
    Layout layout;
    layout.walls.push_back({});
    layout.walls.front().name = "A";
    layout.pieces = {log, comes};
    layout.pieces[Index<Piece>(1)].model = Index<Model>(1);
    Bodies bodies;
    for (const Piece &piece : layout.pieces)
        bodies.push_back(body_of(piece));
    Record record;
    record.logs = {log_at("m", "A", 1, {Decision::mend})};
    const FabricFigures all = fabric_figures(record, layout, bodies);
    std::printf("stays %d of %d logs, %.4f of volume, %.4f of face\n", all.stays().logs, all.found.logs,
                all.stays().volume / all.found.volume, all.stays().outside / all.found.outside);
    CHECK(all.stays().logs == all.found.logs);
    CHECK(all.stays().volume / all.found.volume == Approx(1 - 0.0625).epsilon(1e-12));
    CHECK(all.stays().outside / all.found.outside == Approx(1 - 0.25).epsilon(1e-12));
    CHECK(all.found.volume == Approx(8.0 * 12 * 192 * inch * inch * inch).epsilon(1e-12));
    CHECK(all.found.outside == Approx(12.0 * 192 * inch * inch).epsilon(1e-12));
}

TEST_CASE("The pieces of a log that openings part are one log and all its wood") {
    Shell shell = test::plain_shell();
    shell.openings.push_back(test::window("A", 1500, 230, 800, 460));
    const Laid it{shell};
    REQUIRE(it.layout.models.size() > 0);
    Record record;
    record.logs = {log_at("a", "A", 2, {Decision::keep})};
    const FabricFigures all = fabric_figures(record, it.layout, it.bodies);
    CHECK(all.stays().logs == 1);
    CHECK(all.stays().volume == Approx(it.bodies[piece_of(it.layout, "A-02-1").model].volume +
                                       it.bodies[piece_of(it.layout, "A-02-2").model].volume)
                                    .epsilon(1e-12));
    record.logs[0].place.piece = 2;
    CHECK(fabric_figures(record, it.layout, it.bodies).stays().volume ==
          Approx(it.bodies[piece_of(it.layout, "A-02-2").model].volume).epsilon(1e-12));
}

TEST_CASE(
    "Decisions that cannot be are told at their line: no such place, two logs in one, too short or thin") {
    const Laid it = plain();
    const double needed = stock_of(piece_of(it.layout, "C-03-1")).size.length;
    CHECK(needed > 4900);
    Record record;
    record.logs = {log_at("k", "A", 1, {Decision::keep})};
    CHECK(told(record, it.layout).empty());

    record.logs = {log_at("k", "A", 1, {Decision::replace, Decision::keep}),
                   log_at("x", "Q", 1, {Decision::mend}), log_at("y", "Q", 2, {Decision::leave_out})};
    CHECK(told(record, it.layout) ==
          std::vector<std::string>{
              "found[1].decision[0]: log x is to lie in wall Q, round 1, and the shell has "
              "no such log: decide otherwise, or mend the place"});

    record.logs = {log_at("k", "C", 3, {Decision::keep}),
                   used_at(log_at("u", "A", 2), "C", 3, "6 m", "230 mm", "210 mm")};
    CHECK(told(record, it.layout) ==
          std::vector<std::string>{
              "found[1].decision[0]: logs k and u are both to lie at C-03-1: one of them goes elsewhere"});
    record.logs[0].decisions.push_back({Decision::replace, "", "", "", {}});
    CHECK(told(record, it.layout).empty());

    record.logs = {used_at(log_at("s", "A", 2), "C", 3, "4 m", "150 mm", "120 mm")};
    const auto small = told(record, it.layout);
    REQUIRE(small.size() == 3);
    CHECK(small[0].starts_with("found[0].decision[0]: log s is 4"));
    CHECK(small[0].ends_with(": it is too short for that place"));
    CHECK(small[1].ends_with(": it is too low for that place"));
    CHECK(small[2].ends_with(": it is too narrow for that place"));

    record.logs[0].length = {}, record.logs[0].stations.clear();
    CHECK(told(record, it.layout) ==
          std::vector<std::string>{
              "found[0].decision[0]: log s is to become C-03-1, and its length, height and width "
              "are not all recorded: measure them before anything is cut"});
}

TEST_CASE("A log goes to one piece of a round that openings part, and two of one timber may share a place") {
    Shell shell = test::plain_shell();
    shell.openings.push_back(test::window("A", 1500, 230, 800, 460));
    const Layout layout = lay_out(shell);
    Record record;
    record.logs = {used_at(log_at("u", "C", 2), "A", 2, "6 m", "230 mm", "210 mm")};
    CHECK(told(record, layout) ==
          std::vector<std::string>{"found[0].decision[0]: openings part round 2 of wall A into 2 logs: say "
                                   "which piece log u becomes"});
    record.logs[0].decisions[0].to.piece = 2;
    CHECK(told(record, layout).empty());
    record.logs = {log_at("a", "C", 1, {Decision::keep}), log_at("b", "C", 1, {Decision::keep})};
    CHECK(told(record, layout).size() == 1);
    record.logs[0].scarfed_to = {"b"};
    CHECK(told(record, layout).empty());
}

TEST_CASE("A decision that the shell does not show is told, until the state shows it") {
    Shell shell = test::plain_shell();
    for (const int round : {2, 3}) {
        OwnLog old;
        old.wall = "A", old.round = round, old.fabric = Fabric::kept;
        shell.own_logs.push_back(old);
    }
    Record record;
    record.logs = {log_at("a", "A", 2, {Decision::replace}), log_at("b", "A", 3, {Decision::leave_out})};
    const auto both = told(record, lay_out(shell));
    REQUIRE(both.size() == 2);
    CHECK_THAT(both[0],
               ContainsSubstring("found[0].decision[0]: log a is to be replaced, and A-02-1 is shown"));
    CHECK_THAT(both[1], ContainsSubstring("log b is to be left out, and A-03-1 is shown"));
    shell.own_logs[0].fabric = Fabric::replacement;
    record.logs.push_back(
        used_at(log_at("c", "B", 2), "A", 3, "9 m", "400 mm", "300 mm")); // another comes there
    CHECK(told(record, lay_out(shell)).empty());
}

TEST_CASE("A log that is used elsewhere and is still drawn where it was found is told") {
    Shell shell = test::plain_shell();
    OwnLog old;
    old.wall = "B", old.round = 2, old.fabric = Fabric::kept;
    shell.own_logs.push_back(old);
    Record record;
    record.logs = {used_at(log_at("c", "B", 2), "A", 3, "9 m", "400 mm", "300 mm")};
    const auto still = told(record, lay_out(shell));
    REQUIRE(still.size() == 1);
    CHECK_THAT(still[0], ContainsSubstring("found[0].decision[0]: log c goes elsewhere, and B-02-1, where"));
    shell.own_logs[0].fabric = Fabric::replacement;
    CHECK(told(record, lay_out(shell)).empty());
    shell.own_logs[0].fabric = Fabric::kept; // the two change places
    record.logs.push_back(used_at(log_at("d", "A", 3), "B", 2, "9 m", "400 mm", "300 mm"));
    CHECK(told(record, lay_out(shell)).empty());
}

TEST_CASE("A log that is kept and is shorter than its place is told; one within a tape's slack is not") {
    const Laid it = plain();
    const double needed = stock_of(piece_of(it.layout, "A-02-1")).size.length;
    Record record;
    record.logs = {log_at("a", "A", 2, {Decision::keep})};
    record.logs[0].length.written = std::to_string(needed - tape_tolerance + 0.5) + " mm";
    CHECK(told(record, it.layout).empty());
    record.logs[0].length.written = std::to_string(needed - tape_tolerance - 0.5) + " mm";
    const auto short_one = told(record, it.layout);
    REQUIRE(short_one.size() == 1);
    CHECK_THAT(short_one[0], ContainsSubstring("it is too short for that place"));
}

TEST_CASE("A log that is to be turned and whose butt is shown where it was found is told") {
    Shell shell = test::plain_shell();
    OwnLog own;
    own.wall = "A", own.round = 2, own.sizes.butt = LogEnd::left;
    shell.own_logs = {own};
    Record record;
    record.logs = {log_at("a", "A", 2, {Decision::turn})};
    record.logs[0].butt = "DA"; // at the left end of wall A
    REQUIRE(told(record, lay_out(shell)).size() == 1);
    shell.own_logs[0].sizes.butt = LogEnd::right;
    CHECK(told(record, lay_out(shell)).empty());
}
