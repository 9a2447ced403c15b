#include "kernel/review/review.h"

#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

Findings reviewed(const Shell &shell) {
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    return review(shell, layout, bodies_of(layout));
}

int count(const Findings &findings, const std::string &code) {
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(), [&](const Finding &f) { return f.code == code; }));
}

} // namespace

TEST_CASE("A full dovetail of walls alike has nothing said against it") {
    CHECK(reviewed(test::plain_shell()).empty());
}

TEST_CASE("A square lap does not lock, and without pegs that is a warning") {
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::square_lap;
    Findings findings = reviewed(shell);
    CHECK(count(findings, "corner-not-locked") == 4);
    CHECK(findings[0].weight == Weight::note);
    shell.pegs.wanted = false;
    findings = reviewed(shell);
    CHECK(findings[0].weight == Weight::warning);
}

TEST_CASE("A full dovetail between walls of unequal thickness leads water in on one of them") {
    // p T_A <= -q T_B with p = -q = s holds only for the thinner log's own tops.
    Shell shell = test::plain_shell();
    shell.walls[1].thickness = shell.walls[3].thickness = Length::mm(160);
    const Findings findings = reviewed(shell);
    CHECK(count(findings, "seam-leads-water-in") == 4);
    shell.notch.kind = NotchKind::half_dovetail; // sheds whatever the thicknesses
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 0);
}

TEST_CASE("Slopes that fall to the inside lead water in at every corner") {
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::stated;
    shell.notch.along = Slope::rise_per_run(0.1);
    shell.notch.across = Slope::rise_per_run(0.05);
    CHECK(count(reviewed(shell), "seam-leads-water-in") == 8);
}

TEST_CASE("Pieces pushed into one another are an error of the review") {
    const Shell shell = test::plain_shell();
    Layout layout = lay_out(shell);
    layout.pieces[3].frame.origin.z -= 2;
    const Findings findings = review(shell, layout, bodies_of(layout));
    CHECK(count(findings, "pieces-overlap") >= 1);
    CHECK(findings[0].weight == Weight::error);
}
