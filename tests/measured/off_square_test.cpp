// Walls and diagonals by the tape.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/measured/least_squares.h"
#include "kernel/measured/measured_shell.h"
#include "tests/measured/support/noted.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <cmath>

using namespace roundlay;
using roundlay::test::noted;

namespace {

Record taped(double a, double b, double c, double d, double ac, double bd) {
    Record record;
    const char *names[] = {"A", "B", "C", "D"};
    const double lengths[] = {a, b, c, d};
    for (std::size_t i = 0; i < 4; ++i) {
        RecordedWall wall;
        wall.wall = names[i], wall.length = noted(lengths[i]);
        record.walls.push_back(wall);
    }
    for (const auto &[from, to, length] : {std::tuple("DA", "BC", ac), std::tuple("AB", "CD", bd)}) {
        Diagonal diagonal;
        diagonal.from = from, diagonal.to = to, diagonal.length = noted(length);
        record.diagonals.push_back(diagonal);
    }
    return record;
}

double wall_length(const Plan &plan, const char *name) {
    return plan.walls[*wall_named(plan, name)].length;
}

Vec2 corner_of(const Plan &plan, const char *wall) {
    const Vec3 at = plan.walls[*wall_named(plan, wall)].frame.origin;
    return {at.x, at.y};
}

} // namespace

TEST_CASE("Numbers are nearest to what was observed: a line through points of a textbook") {
    // y = x over 1, 2, 3, 4 with 6, 5, 7, 10 observed: y = 3.5 + 1.4 x, squares left 4.2. The worked example
    // that encyclopaedias give of linear least squares (from memory), and by hand from the two normal
    // equations.
    const double y[] = {6, 5, 7, 10};
    const auto line = least_squares(
        {0, 0},
        [&](const std::vector<double> &b) {
            std::vector<double> off;
            for (int x = 1; x <= 4; ++x)
                off.push_back(b[0] + b[1] * x - y[x - 1]);
            return off;
        },
        0.1);
    CHECK_THAT(line[0], Catch::Matchers::WithinAbs(3.5, 1e-9));
    CHECK_THAT(line[1], Catch::Matchers::WithinAbs(1.4, 1e-9));
}

TEST_CASE("A house off square comes out with the walls and diagonals that were measured") {
    // Of four corners at (0,0), (5000,0), (5090,4000), (60,4000), by Pythagoras.
    const double b = std::hypot(90, 4000), d = std::hypot(60, 4000);
    const auto measured = measured_shell(
        test::plain_shell(), taped(5000, b, 5030, d, std::hypot(5090, 4000), std::hypot(4940, 4000)));
    CHECK(measured.findings.empty());
    CHECK(measured.taken == 6);
    const auto plan = lay_out_plan(measured.shell);
    REQUIRE(stand(plan));
    CHECK_THAT(wall_length(plan, "A"), Catch::Matchers::WithinAbs(5000, 0.1));
    CHECK_THAT(wall_length(plan, "B"), Catch::Matchers::WithinAbs(b, 0.1));
    CHECK_THAT(wall_length(plan, "C"), Catch::Matchers::WithinAbs(5030, 0.1));
    CHECK_THAT(length(corner_of(plan, "C") - corner_of(plan, "A")),
               Catch::Matchers::WithinAbs(std::hypot(5090, 4000), 0.1));
}

TEST_CASE("Walls measured too far off one another for a floor leave it out, and the house stands") {
    const auto run_off = [](double by) {
        const Record record = taped(5000, 4000 + by, std::hypot(5000, by), 4000, std::hypot(5000, 4000 + by),
                                    std::hypot(5000, 4000));
        return measured_shell(test::floored(), record);
    };
    const auto little = run_off(60), far = run_off(167); // 1 in 83, 1 in 30
    CHECK_FALSE(test::has(little.findings, "floor-not-in-the-model"));
    CHECK(little.shell.floors.size() == 1);
    CHECK(test::has(far.findings, "floor-not-in-the-model"));
    CHECK(far.shell.floors.empty());
    CHECK_FALSE(has_errors(lay_out(far.shell).findings));
}

TEST_CASE("Within what a tape is off the corners stay square") {
    const auto measured =
        measured_shell(test::plain_shell(),
                       taped(5003, 3998, 4999, 4001, std::hypot(5000, 4000) + 2, std::hypot(5000, 4000) - 2));
    CHECK(measured.findings.empty());
    const Shell plain = test::plain_shell();
    for (std::size_t i = 0; i < plain.walls.size(); ++i)
        CHECK(measured.shell.walls[i].heading == plain.walls[i].heading);
    CHECK(stand(lay_out_plan(measured.shell)));
    CHECK_THAT(measured.shell.walls[0].length.mm(), Catch::Matchers::WithinAbs(5001, 1)); // the mean of both
}

TEST_CASE("A tape that was read wrongly is told with both numbers") {
    const auto measured =
        measured_shell(test::plain_shell(),
                       taped(5000, 4000, 5000, 4000, std::hypot(5000, 4000) + 300, std::hypot(5000, 4000)));
    REQUIRE_FALSE(measured.findings.empty());
    for (const Finding &finding : measured.findings)
        CHECK(finding.code == "tapes-differ");
}

TEST_CASE("Inside corners are measured inside") {
    Record record;
    Diagonal diagonal;
    diagonal.from = "DA", diagonal.to = "BC", diagonal.side = ReadFrom::inside;
    diagonal.length = noted(std::hypot(4600, 3600)); // walls 200 mm thick on both sides
    record.diagonals.push_back(diagonal);
    const auto measured = measured_shell(test::plain_shell(), record);
    CHECK(measured.findings.empty());
    CHECK(measured.shell.walls[0].heading == test::plain_shell().walls[0].heading);
    CHECK_THAT(measured.shell.walls[0].length.mm(), Catch::Matchers::WithinAbs(5000, 0.01));
}
