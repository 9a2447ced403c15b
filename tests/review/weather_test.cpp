// Where the weather reaches a corner, and which way it runs from there: by hand, from the slopes.
#include "kernel/layout/lay_out.h"
#include "kernel/review/water.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

Shell sloped(double along, double across) {
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::stated;
    shell.notch.along = Slope::rise_per_run(along);
    shell.notch.across = Slope::rise_per_run(across);
    return shell;
}

Findings water_in(const Shell &shell) {
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    REQUIRE_FALSE(has_errors(layout.findings));
    Findings findings;
    check_water(shell, layout, findings);
    return findings;
}

Partition partition(const std::string &name, const std::string &from, double at, const std::string &to) {
    Partition p = test::partition(name, from, Length::mm(at), to);
    return p;
}

} // namespace

TEST_CASE("Water runs in along the log whose tails fall along it, and along the crossing log across it") {
    for (const bool along : {true, false}) {
        const Findings findings = water_in(sloped(along ? 0.1 : 0, along ? 0 : 0.1));
        CHECK(findings.size() == 8);
        for (const Finding &f : findings)
            CHECK_THAT(test::message(f), ContainsSubstring(along ? "runs in along the log, "
                                                                 : "runs in along the crossing log, "));
    }
}

TEST_CASE("Indoors no water is led in, whatever way the notches of partitions fall") {
    // P from A to C crosses Q from B to D; R from B ends in P.
    Shell shell = sloped(0.1, 0.05);
    shell.partitions = {partition("P", "A", 2000, "C"), partition("Q", "B", 2600, "D"),
                        partition("R", "B", 1300, "P")};
    const Layout layout = lay_out(shell);
    std::vector<std::string> indoors;
    for (const CornerPlace &c : layout.corners)
        if (c.ends.at() >= 4 && c.starts.at() >= 4) indoors.push_back("corner " + c.name);
    CHECK(indoors.size() == 2);
    const Findings findings = water_in(shell);
    CHECK(findings.size() >= 8); // at the corners of the outside walls
    for (const Finding &f : findings) {
        INFO(test::sentence(f));
        CHECK(std::ranges::find(indoors, test::place(f)) == indoors.end());
    }
}
