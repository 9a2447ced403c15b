// The pitch that is offered where tails, or what a saddle leaves, are too thin.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;

namespace {

constexpr const char *thin = "tail-too-thin";

/// The largest pitch that a finding of thin tails offers, in millimetres; 0: none does.
double offered(const Findings &findings) {
    double most = 0;
    for (const Finding &f : findings) {
        const std::string words = f.code == thin ? test::words({f}) : "", before = "a pitch of ";
        if (const std::size_t at = words.find(before); at != std::string::npos)
            most = std::max(most, std::stod(words.substr(at + before.size())));
    }
    return most;
}

/// True where it offered a pitch. That pitch clears every tail, and one that is 3 mm lower does not.
bool tried(Shell shell) {
    const double pitch = offered(lay_out(shell).findings);
    if (pitch == 0) return false;
    shell.rounds.pitch = Length::mm(pitch + 0.05); // it is printed to a tenth
    const Layout mended = lay_out(shell);
    if (test::has(mended.findings, thin)) RC_FAIL(test::words(mended.findings));
    if (mended.pieces.empty()) RC_FAIL(test::words(mended.findings));
    shell.rounds.pitch = Length::mm(pitch - 3);
    RC_ASSERT(test::has(lay_out(shell).findings, thin));
    return true;
}

} // namespace

TEST_CASE("The pitch that is offered for thin tails clears them, and one a little lower does not") {
    int offers = 0;
    CHECK(rc::check([&] {
        Shell shell = test::plain_shell();
        shell.rounds.pitch = Length::mm(*rc::gen::inRange(70, 200));
        shell.rounds.gap = Length::mm(*rc::gen::inRange(0, 20));
        shell.notch.slope = Slope::rise_per_run(*rc::gen::inRange(5, 25) / 100.0);
        shell.notch.kind = *rc::gen::element(NotchKind::full_dovetail, NotchKind::half_dovetail);
        offers += tried(shell);
    }));
    CHECK(offers > 20);
}

TEST_CASE("So does the one for saddles that leave too little") {
    int offers = 0;
    CHECK(rc::check([&] {
        Shell shell = test::round_shell();
        shell.rounds.pitch = Length::mm(*rc::gen::inRange(60, 239));
        offers += tried(shell);
    }));
    CHECK(offers > 5);
}

TEST_CASE("No pitch is offered for a saddle that the thinnest logs do not reach") {
    Shell shell = test::round_shell(); // 240 mm thick, a pitch of 210
    OwnLog thick, thin_one;
    thick.wall = "A", thick.round = 3;
    thick.sizes.diameter = Length::mm(240);
    thin_one.wall = "B", thin_one.round = 3;
    thin_one.sizes.diameter = Length::mm(212);
    shell.notch.least_tail = Length::mm(110);
    shell.own_logs = {thick, thin_one};
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    REQUIRE(test::has(layout.findings, thin));
    CHECK(offered(layout.findings) <= 212);
}

TEST_CASE("A half log whose tail would be too thin is told of where it goes without one") {
    // A's first half log lies under a tail's seam: what is left of it is told against the least that is
    // asked.
    Shell shell = test::plain_shell();
    shell.notch.least_tail = Length::mm(90);
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    const auto told = std::ranges::find(layout.findings, "half-log-without-tail", &Finding::code);
    REQUIRE(told != layout.findings.end());
    CHECK(told->weight == Weight::note);
    CHECK(told->subject == "notch.least_tail");
    CHECK_THAT(test::message(*told), ContainsSubstring("under the least of 90 mm"));
    const auto butts = std::ranges::any_of(layout.pieces, [](const Piece &p) {
        return p.datum.kind == EndKind::butt || p.far.kind == EndKind::butt;
    });
    CHECK(butts);
    shell.notch.least_tail = Length::mm(5);
    CHECK_FALSE(test::has(lay_out(shell).findings, "half-log-without-tail"));
}

TEST_CASE(
    "Where logs' own heights are stated the pitch is no help: higher logs are offered, and clear the tails") {
    int offers = 0;
    CHECK(rc::check([&] {
        Shell shell = test::plain_shell();
        const int tip = *rc::gen::inRange(70, 200);
        shell.logs.tip_height = Length::mm(tip), shell.logs.butt_height = Length::mm(tip + 10);
        shell.notch.slope = Slope::rise_per_run(*rc::gen::inRange(5, 20) / 100.0);
        shell.pegs.wanted = false;
        const Findings findings = lay_out(shell).findings;
        RC_ASSERT(offered(findings) == 0);
        double most = 0;
        for (const Finding &f : findings) {
            const std::string words = f.code == thin ? test::words({f}) : "", before = "logs that are ";
            if (const std::size_t at = words.find(before); at != std::string::npos)
                most = std::max(most, std::stod(words.substr(at + before.size())));
        }
        if (most == 0) return;
        ++offers;
        shell.logs.tip_height = Length::mm(tip + most), shell.logs.butt_height = Length::mm(tip + 10 + most);
        const Findings mended = lay_out(shell).findings;
        if (test::has(mended, thin)) RC_FAIL(test::words(mended));
    }));
    CHECK(offers > 20);
}

TEST_CASE("A pitch that logs of stated heights leave out is told, with how high the walls stand") {
    Shell shell = test::plain_shell();
    shell.logs.butt_height = Length::mm(220), shell.logs.tip_height = Length::mm(200);
    shell.rounds.pitch = Length::mm(300);
    shell.rounds.gap = Length::mm(90);
    const auto told = ContainsSubstring("the heights stated of logs count, not the pitch");
    shell.rounds.gap = Length::mm(20);
    CHECK_THAT(test::words(lay_out(shell).findings), told);
    shell.rounds.pitch = Length::mm(230);
    CHECK_THAT(test::words(lay_out(shell).findings), !told);
}
