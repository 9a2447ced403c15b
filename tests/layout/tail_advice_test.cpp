// The pitch that is offered where tails, or what a saddle leaves, are too thin.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

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
