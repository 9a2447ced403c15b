// Corners that lead water in, and notches that were tried and clear it.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/review/water.h"
#include "kernel/shell/shapes.h"
#include "tests/review/reviewed.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("A full dovetail between walls of unequal thickness leads water in on one of them") {
    // p T_A <= -q T_B with p = -q = s holds only for the thinner log's own tops.
    Shell shell = test::plain_shell();
    shell.walls[1].thickness = shell.walls[3].thickness = Length::mm(160);
    const Findings findings = reviewed(shell);
    CHECK(count(findings, "seam-leads-water-in") == 4);
    shell.notch.kind = NotchKind::half_dovetail; // sheds whatever the thicknesses
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 0);
}

TEST_CASE("What is advised against water was tried at that corner and clears it") {
    Shell shell = test::plain_shell();
    shell.walls = l_plan(Length::metres(8), Length::metres(6), Length::metres(4), Length::metres(3));
    shell.notch.kind = NotchKind::half_dovetail;
    const Findings findings = reviewed(shell);
    const auto wet = std::find_if(findings.begin(), findings.end(),
                                  [](const Finding &f) { return f.code == "seam-leads-water-in"; });
    REQUIRE(wet != findings.end());
    CHECK(test::place(*wet) == "corner CD"); // the inside corner, where the ends lie indoors
    CHECK_THAT(
        test::message(*wet),
        ContainsSubstring("; a full dovetail at this corner sheds it: [[corner]] between = [\"C\", \"D\"], "
                          "kind = \"full dovetail\""));
    NotchRule full = shell.notch;
    full.kind = NotchKind::full_dovetail;
    shell.corners = {{"C", "D", full}};
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 0);

    // Between walls of unequal thickness the full one leads in on one of them (see above).
    shell.walls[2].thickness = Length::mm(160);
    const Findings unequal = reviewed(shell);
    REQUIRE(count(unequal, "seam-leads-water-in") >= 1);
    for (const Finding &f : unequal)
        if (f.code == "seam-leads-water-in" && test::place(f) == "corner CD")
            CHECK_THAT(test::message(f), ContainsSubstring("no dovetail of this slope sheds it there"));

    // Where the notch that would shed it leaves tails that are too thin, it is not advised.
    shell = test::plain_shell();
    shell.notch.kind = NotchKind::stated;
    shell.notch.along = Slope::rise_per_run(0.01);
    shell.notch.across = Slope::rise_per_run(0.01);
    CHECK_THAT(test::message(reviewed(shell)[0]),
               ContainsSubstring("a half dovetail at this corner sheds it"));
    shell.notch.slope = Slope::rise_per_run(0.9);
    CHECK_THAT(test::message(reviewed(shell)[0]), ContainsSubstring("no dovetail of this slope"));
}

TEST_CASE("Of any shell a notch advised against water brings no other warning") {
    static int advised = 0, withheld = 0;
    CHECK(rc::check([] {
        Shell shell = test::any_family_shell();
        const Layout layout = lay_out(shell);
        if (has_errors(layout.findings) || layout.corners.size() > 12) return;
        Findings water;
        check_water(shell, layout, water);
        const auto warned = [](const Shell &s) {
            const Findings all = reviewed(s);
            return std::count_if(all.begin(), all.end(),
                                 [](const Finding &f) { return f.weight != Weight::note; });
        };
        for (const Finding &f : water) {
            withheld += test::message(f).find("without another warning") != std::string::npos ? 1 : 0;
            const bool half =
                test::message(f).find("; a half dovetail at this corner sheds it") != std::string::npos;
            if (!half &&
                test::message(f).find("; a full dovetail at this corner sheds it") == std::string::npos)
                continue;
            const auto corner =
                std::find_if(layout.corners.begin(), layout.corners.end(),
                             [&](const CornerPlace &c) { return is_corner(f.about, c.name); });
            RC_ASSERT(corner != layout.corners.end());
            CornerNotch own{layout.walls[corner->ends].name, layout.walls[corner->starts].name,
                            notch_at(shell, layout, layout.corners.index_of(corner))};
            own.notch.kind = half ? NotchKind::half_dovetail : NotchKind::full_dovetail;
            Shell with = shell;
            std::erase_if(with.corners, [&](const CornerNotch &n) {
                return (n.first == own.first && n.second == own.second) ||
                       (n.first == own.second && n.second == own.first);
            });
            with.corners.push_back(own);
            RC_ASSERT(warned(with) < warned(shell));
            ++advised;
            return; // one of each shell: reviews take their time
        }
    }));
    INFO(advised << " advised, " << withheld << " withheld");
    CHECK(advised > 3);
}

TEST_CASE("Slopes that fall to the inside lead water in at every corner") {
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::stated;
    shell.notch.along = Slope::rise_per_run(0.1);
    shell.notch.across = Slope::rise_per_run(0.05);
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 8);
}

namespace {

/// Log A-03 with slopes of its own.
Shell with_own_notch(double along, double across) {
    Shell shell = test::plain_shell();
    OwnLog own;
    own.wall = "A";
    own.round = 3;
    own.notch.kind = NotchKind::stated;
    own.notch.along = Slope::rise_per_run(along);
    own.notch.across = Slope::rise_per_run(across);
    shell.own_logs = {own};
    return shell;
}

} // namespace

TEST_CASE("One log's own slopes are held to lock and water as the shell's are") {
    // As "Slopes that fall to the inside lead water in": at both corners of the one log.
    const Findings wet = reviewed(with_own_notch(0.1, 0.05));
    CHECK(count(wet, "seam-leads-water-in") == 2);
    for (const Finding &f : wet)
        if (f.code == "seam-leads-water-in") {
            CHECK_THAT(test::place(f), ContainsSubstring("wall A, round 3"));
            CHECK(f.subject == "log[0].kind");
            CHECK_THAT(test::message(f), ContainsSubstring("the corner's own notch sheds it"));
        }
    // Its tail must rise outward by more than the top under it does: own along - across of the one below
    // (notch.h).
    CHECK(count(reviewed(with_own_notch(-0.2, -0.125)), "corner-not-locked") == 2);
    CHECK(count(reviewed(with_own_notch(0.125, -0.125)), "corner-not-locked") == 0);
    Shell loose = with_own_notch(-0.2, -0.125);
    loose.pegs.wanted = false;
    const Findings findings = reviewed(loose);
    CHECK(std::count_if(findings.begin(), findings.end(), [](const Finding &f) {
              return f.code == "corner-not-locked" && f.weight == Weight::warning;
          }) == 2);
}
