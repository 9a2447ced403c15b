// A house that had sunk at its corners, put level on a new foundation.
#include "kernel/compare/cuts_to_make.h"
#include "kernel/layout/courses/courses.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/measured/settled.h"
#include "tests/measured/support/noted.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/parts.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <map>

using namespace roundlay;
using roundlay::test::noted;

namespace {

using Sunk = std::map<std::string, double>; ///< mm, by the name of a corner

struct Stands {
    Found<Plan> plan;
    Found<Courses> courses;
    explicit Stands(const Shell &shell) : plan(lay_out_plan(shell)), courses(lay_out_courses(shell, plan)) {}
};

double between(double x, double x0, double v0, double x1, double v1) {
    return v0 + (v1 - v0) * (x - x0) / (x1 - x0);
}

/// Every log of the walls round the outside of a level house, measured once its corners had sunk so far, with
/// a level plane 1 m over its foundation.
Record survey(const Shell &level, const Sunk &sunk) {
    const Stands stands(level);
    Record record;
    for (const auto w : Indices<WallPlace>(level.walls.size())) {
        const WallPlace &wall = stands.plan.walls[w];
        const std::string &left = stands.plan.corners[wall.start_corner].name,
                          &right = stands.plan.corners[wall.end_corner].name;
        for (const Course &course : stands.courses.logs[w]) {
            FoundLog log;
            log.tag = wall.name + " " + std::to_string(course.round);
            log.place = {wall.name, course.round, {}};
            for (const bool at_left : {true, false}) {
                const WallMeeting &first = wall.meetings.front(), &last = wall.meetings.back();
                const double x = at_left ? first.high : last.low; // its shoulder
                FoundEnd end;
                end.corner = at_left ? left : right;
                end.height = noted(course.high(x) - course.low(x));
                end.level =
                    noted(course.high(x) - 1000 - between(x, first.x, sunk.at(left), last.x, sunk.at(right)));
                log.ends.push_back(end);
            }
            record.logs.push_back(log);
        }
    }
    return record;
}

FoundLog &log_of(Record &record, const std::string &tag) {
    return *std::ranges::find(record.logs, tag, &FoundLog::tag);
}

const Sunk house_sank{{"DA", 0}, {"AB", 40}, {"BC", 60}, {"CD", 10}};

MeasuredShell levelled(const Shell &shell, const Record &record) {
    const std::optional<Shell> below = shell;
    return house_as_asked({shell, below, record}, shell);
}

/// How far the logs of a shell lie from those of another at both ends, at most.
double apart(const Shell &a, const Shell &b) {
    const Stands one(a), other(b);
    double most = 0;
    for (const auto w : one.plan.walls.indices())
        for (const Course &course : one.courses.logs[w]) {
            const Course &same = in_round(other.courses.logs[w], course.round);
            for (const double x : {100.0, one.plan.walls[w].length - 100})
                most = std::max(
                    {most, std::abs(course.low(x) - same.low(x)), std::abs(course.high(x) - same.high(x))});
        }
    return most;
}

} // namespace

TEST_CASE("Every log of a house that had sunk at its corners comes to lie where it lay when it was built") {
    const Shell shell = test::plain_shell();
    const Record record = survey(shell, house_sank);
    const MeasuredShell sunk = measured_shell(shell, record), now = levelled(shell, record);
    REQUIRE_FALSE(has_errors(now.findings));
    CHECK(apart(sunk.shell, shell) > 50);
    CHECK(apart(now.shell, shell) < 1e-6);
    const std::string told = test::words(now.findings);
    CHECK_THAT(told, ContainsSubstring("levelled @ corner AB: the corner is lifted by 40 mm") &&
                         ContainsSubstring("levelled @ corner BC: the corner is lifted by 60 mm") &&
                         ContainsSubstring("levelled @ corner CD: the corner is lifted by 10 mm"));
    CHECK_THAT(told, !ContainsSubstring("corner DA: the corner is lifted"));
    CHECK_FALSE(has_errors(lay_out(now.shell).findings));
}

TEST_CASE("What the two first logs of a corner lie apart stays as packing under the higher one") {
    const Shell shell = test::plain_shell();
    Record record = survey(shell, house_sank);
    for (FoundLog &log : record.logs)
        if (log.place.wall == "D")
            for (FoundEnd &end : log.ends)
                end.level = noted(end.level.value->mm() + 8);
    const Stands now(levelled(shell, record).shell);
    const auto d = *wall_named(now.plan, "D"), a = *wall_named(now.plan, "A");
    const Course &first = in_round(now.courses.logs[d], 1);
    CHECK(first.low(200) == Approx(8).margin(1e-6));
    CHECK(first.low(3800) == Approx(8).margin(1e-6));
    CHECK(in_round(now.courses.logs[a], 1).low(200) == Approx(0).margin(1e-6));
}

TEST_CASE("Gaps that were measured stay as they were, also where logs above were not levelled") {
    const Shell shell = test::plain_shell();
    Record record = survey(shell, house_sank);
    for (FoundLog &log : record.logs)
        if (*log.place.round > 1)
            for (FoundEnd &end : log.ends)
                end.level = {};
    FoundStation station;
    log_of(record, "A 2").zero = "DA";
    station.at = noted(2500), station.gap_below = noted(33);
    log_of(record, "A 2").stations.push_back(station);
    const Stands now(levelled(shell, record).shell);
    const auto a = *wall_named(now.plan, "A");
    for (const double x : {300.0, 4700.0})
        CHECK(in_round(now.courses.logs[a], 2).low(x) - in_round(now.courses.logs[a], 1).high(x) ==
              Approx(33).margin(1e-6));
}

TEST_CASE(
    "Openings are carried along with their logs, and those stated later stand over the new foundation") {
    Shell shell = test::plain_shell();
    shell.openings = {test::window("A", 2000, 240, 900, 440), test::window("C", 2000, 240, 900, 440)};
    shell.openings[0].name = "stated", shell.openings[1].name = "levelled";
    Record record = survey(test::plain_shell(), house_sank);
    RecordedOpening measured;
    measured.name = "levelled";
    measured.sill = noted(-800), measured.head = noted(-350);
    record.openings.push_back(measured);
    Shell later = shell;
    later.openings.push_back(test::window("B", 1500, 230, 800, 440));
    const std::optional<Shell> below = shell;
    const auto made = house_as_asked({shell, below, record}, later).shell.openings;
    // The lowest first log: B's end at BC, at its shoulder 100 mm from the corner's middle, where the wall
    // had sunk 60 - 100 * (60 - 40) / 3800. Wall A lay higher by that over it, less what it had sunk in the
    // middle of the window, 2350 mm from the middle of corner DA.
    const double lowest = 60 - 100 * 20.0 / 3800;
    CHECK(made[0].sill.mm() == Approx(240 - (lowest - 40 * 2350.0 / 4800)).margin(1e-9));
    CHECK(made[0].height.mm() == Approx(440));
    // By its levels: 200 over the level foundation of its day, less what wall C had sunk there.
    CHECK(made[1].sill.mm() == Approx(1000 - 800 + between(2450, 100, 60, 4900, 10)).margin(1e-6));
    CHECK(made[1].height.mm() == Approx(450).margin(1e-6));
    CHECK(made[2].sill.mm() == 230);
}

TEST_CASE("A new sill log leaves the logs over it where they were lifted to") {
    const Shell shell = test::plain_shell();
    const Record record = survey(shell, house_sank);
    Shell now = shell;
    for (const char *wall : {"A", "B", "C", "D"}) {
        OwnLog log;
        log.wall = wall, log.round = 1, log.fabric = Fabric::replacement;
        const bool half = wall == std::string("B") || wall == std::string("D");
        log.sizes.butt_height = log.sizes.tip_height = Length::mm(half ? 90 : 200);
        now.own_logs.push_back(log);
    }
    const std::optional<Shell> below = shell;
    const Stands stands(house_as_asked({shell, below, record}, now).shell), was(shell);
    const auto a = *wall_named(stands.plan, "A");
    for (const double x : {200.0, 4800.0}) {
        CHECK(in_round(stands.courses.logs[a], 1).high(x) == Approx(200).margin(1e-6));
        CHECK(in_round(stands.courses.logs[a], 2).low(x) ==
              Approx(in_round(was.courses.logs[a], 2).low(x)).margin(1e-6));
    }
}

TEST_CASE("Packing that is stated of first logs counts where no level was read, and is taken out") {
    Shell shell = test::plain_shell();
    for (const auto &[wall, left, right] :
         {std::tuple{"A", 30.0, 0.0}, {"B", 0.0, 0.0}, {"C", 0.0, 0.0}, {"D", 0.0, 30.0}}) {
        OwnLog log;
        log.wall = wall, log.round = 1;
        log.gap_left = Length::mm(left), log.gap_right = Length::mm(right);
        shell.own_logs.push_back(log);
    }
    Record record;
    record.logs.push_back({});
    record.logs[0].tag = "A 1", record.logs[0].place = {"A", 1, {}};
    const MeasuredShell now = levelled(shell, record);
    REQUIRE_FALSE(has_errors(now.findings));
    const Stands stands(now.shell);
    for (const char *wall : {"A", "B", "C", "D"}) {
        const auto w = *wall_named(stands.plan, wall);
        const Course &first = in_round(stands.courses.logs[w], 1);
        // Packing is stated at the very ends of logs, 100 mm past the corners' middles: wall D, 0 there at
        // its left end and 30 over 4000 mm, lies 0.77 over the line from middle to middle.
        CHECK(first.low(200) == Approx(0).margin(0.78));
        CHECK(first.low(stands.plan.walls[w].length - 200) == Approx(0).margin(0.78));
    }
}

TEST_CASE("Old logs have their joints already where the house was put level") {
    const Shell shell = test::plain_shell();
    const Record record = survey(shell, house_sank);
    Shell now = shell;
    for (const Piece &piece : lay_out(shell).pieces) {
        OwnLog log;
        log.wall = piece.tag.substr(0, 1), log.round = piece.round, log.fabric = Fabric::kept;
        now.own_logs.push_back(log);
    }
    const std::optional<Shell> below = shell;
    const Grounds on{shell, below, record};
    const Layout found = lay_out(house_as_found(on).shell), made = lay_out(house_as_asked(on, now).shell);
    for (const CutsToMake &cuts : cuts_to_make(found, made)) {
        REQUIRE(cuts);
        CHECK(std::ranges::count(*cuts, true) == 0);
    }
}

TEST_CASE("A floor is carried along, and how unevenly its logs were lifted is told") {
    const Shell shell = test::floored();
    const Record record = survey(test::plain_shell(), house_sank);
    const MeasuredShell now = levelled(shell, record);
    CHECK(now.shell.floors.at(0).level.mm() < 560 - 20);
    CHECK(test::has(now.findings, "floor-carried"));
    Shell kept = shell, lower = shell;
    kept.floors[0].fabric = Fabric::kept; // says nothing of where it lies
    lower.floors[0].level = Length::mm(500);
    const std::optional<Shell> below = shell;
    CHECK(house_as_asked({shell, below, record}, kept).shell.floors.at(0).level ==
          now.shell.floors.at(0).level);
    CHECK(house_as_asked({shell, below, record}, lower).shell.floors.at(0).level.mm() == 500);
    const Record evenly = survey(test::plain_shell(), {{"DA", 0}, {"AB", 0}, {"BC", 0}, {"CD", 0}});
    CHECK(levelled(shell, evenly).shell.floors.at(0).level.mm() == Approx(560));
    CHECK_FALSE(test::has(levelled(shell, evenly).findings, "floor-carried"));
}

TEST_CASE("Round logs lie by their diameters, and openings by their levels are carried along") {
    const Shell shell = test::round_shell();
    Record record = survey(shell, house_sank);
    for (FoundLog &log : record.logs)
        for (FoundEnd &end : log.ends)
            end.height = noted(240); // their diameter
    const MeasuredShell now = levelled(shell, record);
    CHECK_FALSE(has_errors(now.findings));
    CHECK(test::has(now.findings, "levelled"));
    CHECK(apart(now.shell, shell) < 1e-6);
}

TEST_CASE("What cannot be put level exactly is refused, with what to do") {
    const Shell shell = test::plain_shell();
    Record record = survey(shell, house_sank);
    log_of(record, "B 1").ends[1].level = log_of(record, "C 1").ends[0].level = {};
    CHECK_THAT(test::words(levelled(shell, record).findings),
               ContainsSubstring("not-levelled @ corner BC: the house cannot be put level: nothing tells how "
                                 "far it has sunk at corner BC"));
    Shell stepped = shell;
    FoundationStep step;
    step.wall = "A", step.from_left = Length::mm(2000), step.width = Length::mm(1000);
    step.rise = Length::mm(230);
    stepped.steps.push_back(step);
    const MeasuredShell on_steps = levelled(stepped, survey(shell, house_sank));
    CHECK(has_errors(on_steps.findings));
    CHECK_THAT(test::words(on_steps.findings), ContainsSubstring("its foundation has steps"));
}

TEST_CASE("Walls that cross and would be lifted differently are refused") {
    std::vector<Wall> plan;
    for (const auto &[name, heading, length] : {std::tuple{"A", 0.0, 8000.0},
                                                {"B", 90.0, 4000.0},
                                                {"C", 180.0, 4000.0},
                                                {"D", 90.0, 3000.0},
                                                {"E", 180.0, 4000.0},
                                                {"F", 270.0, 7000.0}}) {
        Wall wall;
        wall.name = name, wall.heading = heading, wall.length = Length::mm(length);
        plan.push_back(wall);
    }
    Shell shell = test::hewn_shell("ell", plan, Length::mm(200), 4, Length::mm(230), Length::mm(20));
    shell.partitions = {test::partition("P", "A", Length::mm(2000), "E"),
                        test::partition("Q", "D", Length::mm(1000), "F")};
    const Sunk one{{"FA", 0}, {"AB", 100}, {"BC", 0}, {"CD", 0}, {"DE", 0}, {"EF", 0}};
    Sunk all = one;
    for (auto &[corner, by] : all)
        by = 100;
    REQUIRE(stand(lay_out_plan(shell)));
    const std::string told = test::words(levelled(shell, survey(shell, one)).findings);
    CHECK_THAT(told, ContainsSubstring("where walls P and Q cross, the one would be lifted"));
    const MeasuredShell evenly = levelled(shell, survey(shell, all));
    CHECK_FALSE(has_errors(evenly.findings));
    CHECK(apart(evenly.shell, shell) < 1e-6);
}
