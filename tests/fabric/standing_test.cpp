// Old wood that is decided to stay counts only where it stands in the state that is shown.
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/openings_changed.h"
#include "kernel/fabric/standing.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/record/check_record.h"
#include "tests/fabric/laid.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::found_log;
using roundlay::test::Laid;

namespace {

FoundLog log_in(const std::string &tag, int round, std::optional<int> piece, Decision what) {
    return found_log(tag, {"A", round, piece}, {what});
}

/// 5 m x 4 m, logs of 210 mm: a window parts rounds 2 and 3 of wall A.
Shell with_window() {
    Shell shell = test::plain_shell();
    shell.openings.push_back(test::window("A", 1500, 230, 800, 460));
    shell.openings.back().name = "late window";
    return shell;
}

Record found_record() {
    Record record;
    record.logs = {log_in("left", 2, 1, Decision::keep), log_in("right", 2, 2, Decision::keep),
                   log_in("sill", 1, {}, Decision::keep)};
    (void)read_numbers(record);
    return record;
}

Laid measured(const Shell &shell, const Record &record) {
    return {measured_shell(shell, record).shell};
}

Laid later(const Shell &shell, const Record &record, const Shell &now) {
    return {measured_shell(now, left_as_found(record, shell, now)).shell};
}

std::vector<std::string> told(const Record &record, const Layout &now, const Layout &found) {
    std::vector<std::string> all;
    for (const DecisionProblem &problem : decision_problems(record, now, &found))
        all.push_back(problem.path + ": " + test::english(problem.what));
    return all;
}

double volume(const Laid &laid, const std::string &tag) {
    const auto piece = std::ranges::find(laid.layout.pieces, tag, &Piece::tag);
    return laid.bodies[piece->model].volume;
}

} // namespace

TEST_CASE("Logs on both sides of a window that is closed by a longer log are not counted as old wood that "
          "stays, and both are told") {
    const Record record = found_record();
    const Shell stated = with_window();
    const Laid found = measured(stated, record), closed = later(stated, record, test::plain_shell());
    REQUIRE(found.layout.pieces.size() > 0);
    REQUIRE(closed.layout.pieces.size() > 0);
    FabricFigures figures = fabric_figures(record, found.layout, found.bodies);
    const FabricSum all = figures.found;
    REQUIRE(figures.stays().logs == 3);
    take_out_what_is_gone(figures, record, found.layout, found.bodies, closed.layout);
    CHECK(figures.stays().logs == 1);
    CHECK(figures.stays().volume == Approx(volume(found, "A-01-1")).epsilon(1e-9));
    CHECK(figures.not_standing.logs == 2);
    CHECK(figures.not_standing.volume ==
          Approx(volume(found, "A-02-1") + volume(found, "A-02-2")).epsilon(1e-9));
    CHECK(figures.found.volume == Approx(all.volume).epsilon(1e-12));

    const auto warned = told(record, closed.layout, found.layout);
    REQUIRE(warned.size() == 2);
    CHECK_THAT(warned[0],
               Catch::Matchers::StartsWith("found[0].decision[0]: log left is to stay, and in its "
                                           "place, where it was found 1500 mm long, A-02-1 is shown "
                                           "as new wood, 5000 mm long"));
    CHECK_THAT(warned[1], Catch::Matchers::StartsWith("found[1].decision[0]: log right is to stay"));

    // In the house as it was found, all stands and nothing is told.
    FabricFigures same = fabric_figures(record, found.layout, found.bodies);
    take_out_what_is_gone(same, record, found.layout, found.bodies, found.layout);
    CHECK(same.stays().volume == Approx(all.volume).epsilon(1e-12));
    CHECK(same.not_standing.logs == 0);
}

TEST_CASE("A log beside a window that is closed keeps its wood however the logs of its round are counted") {
    Record record;
    record.logs = {log_in("right", 2, 3, Decision::keep)};
    Shell stated = with_window();
    stated.openings.push_back(test::window("A", 3300, 230, 700, 460));
    stated.openings.back().name = "other window";
    Shell now = stated;
    now.openings.erase(now.openings.begin()); // what was the third log of the round is the second
    const Laid found = measured(stated, record), closed = later(stated, record, now);
    FabricFigures figures = fabric_figures(record, found.layout, found.bodies);
    const double before = figures.stays().volume;
    take_out_what_is_gone(figures, record, found.layout, found.bodies, closed.layout);
    CHECK(figures.stays().volume == Approx(before).epsilon(1e-12));
    CHECK(told(record, closed.layout, found.layout).empty());
}

TEST_CASE(
    "A log that is to be kept where a replacement is stated, or goes to one, does not count and is told") {
    Record record;
    record.logs = {log_in("k", 2, {}, Decision::keep), log_in("u", 3, {}, Decision::use_elsewhere)};
    record.logs[1].decisions[0].to = {"C", 3, {}};
    const Shell stated = test::plain_shell();
    Shell now = stated;
    for (const auto &[wall, round] : {std::pair("A", 2), std::pair("C", 3)}) {
        OwnLog own;
        own.wall = wall, own.round = round, own.fabric = Fabric::replacement;
        now.own_logs.push_back(own);
    }
    const Laid found = measured(stated, record), later_on = later(stated, record, now);
    FabricFigures figures = fabric_figures(record, found.layout, found.bodies);
    take_out_what_is_gone(figures, record, found.layout, found.bodies, later_on.layout);
    CHECK(figures.stays().logs == 0);
    CHECK(figures.stays().volume == Approx(0).margin(1e-3));
    CHECK(figures.not_standing.logs == 2);
    const auto warned = told(record, later_on.layout, found.layout);
    const auto has = [&](const char *begin) {
        return std::ranges::any_of(warned, [&](const std::string &line) { return line.starts_with(begin); });
    };
    CHECK(has("found[0].decision[0]: log k is to stay, and in its place"));
    CHECK(has("found[1].decision[0]: log u is to become C-03-1, and that is shown as new wood"));

    // By an earlier decision a log stayed that goes by the last: the state says nothing of that.
    record.logs[0].decisions.push_back({Decision::replace, "", "", "", {}});
    FabricFigures earlier = fabric_figures(record, found.layout, found.bodies, 1);
    take_out_what_is_gone(earlier, record, found.layout, found.bodies, later_on.layout, 1);
    CHECK(earlier.of_decision(Decision::keep).logs == 1);
}

TEST_CASE("A state that states no log and no mend is told once as the house as it once stood") {
    Record record = found_record();
    const Shell found = with_window();
    Shell once = test::plain_shell();
    once.state = "as first built";
    CHECK_FALSE(stood_once(record, found, once)); // only kept logs: nothing to be held against it
    record.logs[2].decisions.push_back({Decision::mend, "", "", "", {}});
    const auto told = stood_once(record, found, once);
    REQUIRE(told);
    CHECK(told->path == "found[2].decision[1]");
    CHECK(told->weight == Weight::note);
    CHECK_THAT(
        test::english(told->what),
        Catch::Matchers::StartsWith("state \"as first built\" has no mend and states no log otherwise"));
    CHECK_FALSE(stood_once(record, {}, once)); // of which nothing is measured
    once.own_logs.push_back({});
    CHECK_FALSE(stood_once(record, found, once));
}

TEST_CASE("A log that goes where a longer one is needed is told with both lengths though nobody taped it") {
    Record record;
    record.logs = {log_in("s", 2, 1, Decision::use_elsewhere)};
    record.logs[0].decisions[0].to = {"C", 3, {}};
    const Laid found = measured(with_window(), record);
    const auto warned = told(record, found.layout, found.layout);
    const auto is_short = std::ranges::find_if(warned, [](const std::string &line) {
        return line.starts_with(
            "found[0].decision[0]: log s is 1500 mm long in the house as it was found, where "
            "nobody taped it, and C-03-1 needs 5000 mm");
    });
    CHECK(is_short != warned.end());
    record.logs[0].decisions[0].to = {"A", 2, 1}; // its own place is as long as it is
    for (const std::string &line : told(record, found.layout, found.layout))
        CHECK_THAT(line, !ContainsSubstring("where nobody taped it"));
}

TEST_CASE("A log to be turned whose butt nobody recorded is told") {
    Record record;
    record.logs = {log_in("t", 2, {}, Decision::turn)};
    const Laid it = measured(test::plain_shell(), record);
    const auto warned = told(record, it.layout, it.layout);
    REQUIRE(warned.size() == 1);
    CHECK_THAT(warned[0], Catch::Matchers::EndsWith("so that nothing of A-02-1 turns: record its butt"));
    record.logs[0].butt = std::ranges::find(it.layout.pieces, "A-02-1", &Piece::tag)->butt_at_datum
                              ? it.layout.corners[it.layout.walls[Index<WallPlace>(0)].end_corner].name
                              : it.layout.corners[it.layout.walls[Index<WallPlace>(0)].start_corner].name;
    CHECK(told(record, it.layout, it.layout).empty());
}

TEST_CASE("Logs that are to be kept and that a state cuts anew by what it states of others are told once") {
    Record record;
    record.logs = {log_in("far", 1, {}, Decision::keep), log_in("crossing", 3, {}, Decision::keep)};
    record.logs[1].place.wall = "B"; // its tails lie on those of wall A
    const Shell stated = test::plain_shell();
    const Laid found = measured(stated, record);
    CHECK_FALSE(kept_and_cut_anew(record, found.layout, found.layout));
    Shell now = stated;
    OwnLog own;
    own.wall = "A", own.round = 3, own.fabric = Fabric::replacement;
    now.own_logs = {own};
    CHECK_FALSE(kept_and_cut_anew(record, later(stated, record, now).layout, found.layout));
    now.own_logs[0].sizes.butt_height = Length::mm(218), now.own_logs[0].sizes.tip_height = Length::mm(214);
    const Laid cut = later(stated, record, now);
    REQUIRE(cut.layout.pieces.size() > 0);
    const auto told = kept_and_cut_anew(record, cut.layout, found.layout);
    REQUIRE(told);
    INFO(test::english(told->what));
    CHECK(told->path.ends_with("].decision[0]"));
    CHECK_THAT(test::english(told->what), ContainsSubstring("others: crossing;"));
    CHECK_THAT(test::english(told->what),
               ContainsSubstring("cut anew in this state, by what it states of others"));
    record.logs[1].decisions.push_back({Decision::replace, "", "", "", {}});
    const auto left = kept_and_cut_anew(record, later(stated, record, now).layout, found.layout);
    CHECK((!left || test::english(left->what).find("crossing") == std::string::npos));
}

TEST_CASE("An opening that a state closes is told with the old logs that go and the new ones that come") {
    const Record record = found_record();
    const Shell stated = with_window();
    const Laid found = measured(stated, record), closed = later(stated, record, test::plain_shell());
    const auto changes = openings_changed(found.shell, found.layout, closed.shell, closed.layout);
    REQUIRE(changes.size() == 1);
    CHECK(changes[0].closed);
    CHECK(changes[0].name == "late window");
    CHECK(changes[0].wall == "A");
    CHECK(std::ranges::count(changes[0].goes, "A-02-1") == 1);
    CHECK(std::ranges::count(changes[0].goes, "A-02-2") == 1);
    CHECK(std::ranges::count(changes[0].comes, "A-02-1") == 1);
    const auto back = openings_changed(closed.shell, closed.layout, found.shell, found.layout);
    REQUIRE(back.size() == 1);
    CHECK_FALSE(back[0].closed);
    CHECK(openings_changed(found.shell, found.layout, found.shell, found.layout).empty());
}
