// What is advised where a floor does not lie well: tried before it is said.
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/shells.h"

#include <cmath>
#include <map>
#include <numbers>

using namespace roundlay;
using test::floored;

TEST_CASE("Where a floor's walls do not face each other it is said which two would do") {
    const auto said = [](const std::string &from, const std::string &to, auto change) {
        Shell shell = floored();
        shell.floors[0].from = from, shell.floors[0].to = to;
        change(shell);
        return test::words(lay_out(shell).findings);
    };
    const auto nothing = [](Shell &) {};
    CHECK_THAT(said("A", "B", nothing), ContainsSubstring("from wall A to wall C it fits"));
    CHECK_THAT(said("C", "B", nothing), ContainsSubstring("from wall C to wall A it fits"));
    // Over the walls it fits nowhere, and it is not said that it would.
    const auto low = [](Shell &s) { s.floors[0].level = Length::mm(5000); };
    CHECK_THAT(
        said("A", "B", low),
        ContainsSubstring("walls A and C do, though between them the floor does not fit as it is stated"));
    // Four corners, no two sides parallel.
    const auto askew = [](Shell &s) {
        const double corners[4][2] = {{0, 0}, {6000, 0}, {5400, 4000}, {400, 3300}};
        for (std::size_t i = 0; i < 4; ++i) {
            const double x = corners[(i + 1) % 4][0] - corners[i][0],
                         y = corners[(i + 1) % 4][1] - corners[i][1];
            s.walls[i].heading = std::atan2(y, x) * 180 / std::numbers::pi;
            s.walls[i].length = Length::mm(std::hypot(x, y));
        }
    };
    CHECK_THAT(said("A", "B", askew), ContainsSubstring("no two walls of this shell face each other"));
}

TEST_CASE("Where no level of a floor mends all its warnings, none is advised that mends only some") {
    // Six walls: A starts with a full log, D across from it with a half one, so their seams lie half a round
    // apart. Logs of A from 230 to 440 mm, of D from 115 to 325: joists of 80 mm lie well in A with their
    // undersides from 360 or under 210, in D from 245 to 325.
    Shell shell = floored();
    shell.walls.clear();
    for (int i = 0; i < 6; ++i)
        shell.walls.push_back({std::string(1, static_cast<char>('A' + i)), 60.0 * i, Length::mm(4000)});
    shell.floors[0].to = "D";
    shell.floors[0].joist.height = Length::mm(80);
    shell.floors[0].level = Length::mm(240 + 80);
    const auto warned = [&] {
        std::map<std::string, int> codes;
        for (const Finding &f : lay_out(shell).findings) {
            if (f.subject != "floor[0].level") continue;
            ++codes[f.code];
            REQUIRE(f.advice);
            CHECK_THAT(test::sentence(f), ContainsSubstring("no small change of the floor's level mends it"));
        }
        return codes;
    };
    const auto here = warned();
    shell.floors[0].level = Length::mm(250 + 80); // D's pockets are open now, A's no better
    const auto higher = warned();
    CHECK(higher.at("pocket-closed") < here.at("pocket-closed"));
    CHECK(higher.at("thin-wood-under-pocket") == here.at("thin-wood-under-pocket"));
}

TEST_CASE("A floor that cannot be raised is lowered by steps, to where the log below carries it") {
    // The beds at 250 leave 20 mm of the second log (230 to 440), whose top stands 10 mm over the joists at
    // 430. From 440 up a window is in the first joist's way. 15 mm down there are only 5 mm under the beds,
    // 30 mm down is the gap between the logs; 45 mm down, at 205, they lie in the first log, which ends at
    // 210.
    Shell shell = floored();
    shell.floors[0].level = Length::mm(430);
    shell.openings = {test::window("A", 700, 440, 200, 230)};
    int told = 0;
    for (const Finding &f : lay_out(shell).findings) {
        if (f.subject != "floor[0].level") continue;
        ++told;
        CHECK_THAT(test::sentence(f), ContainsSubstring("lower the floor by 45 mm"));
    }
    CHECK(told > 0);
}

TEST_CASE("A floor over the walls is told the highest level that would do") {
    // Four rounds of 230 mm: walls A and C end at 900: joists 180 high lie on their tops at 1080.
    Shell shell = floored();
    shell.floors[0].level = Length::mm(3000);
    const Layout refused = lay_out(shell);
    REQUIRE(refused.findings.size() == 1);
    const Finding &f = refused.findings[0];
    CHECK(f.code == "floor-over-wall");
    CAPTURE(test::sentence(f));
    REQUIRE(f.advice);
    REQUIRE(f.advice->text == "lower the floor by %1, to a level of %2");
    const double level = std::get<LengthAmount>(f.advice->amounts[1].value()).mm;
    CHECK(level == 1080);
    shell.floors[0].level = Length::mm(level);
    CHECK(warnings_in(lay_out(shell).findings) == 0);
}
