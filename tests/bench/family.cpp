// bench_family [SHELLS]: random shells over the whole family of joints (2,000), held to the invariants: every
// piece closed, no two share wood, each can be lowered into place. Prints the seed, the count, what was
// drawn, and the time. A failure is shrunk by rapidcheck, printed as a document, and ends with 1.
// RC_PARAMS="seed=N" draws the same shells again.
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <map>

using namespace roundlay;

namespace {

struct Drawn {
    int shells = 0, pieces = 0, timbers = 0;
    test::ThrownAway thrown{
        {"floor-does-not-fit",     "timber-misses-wall",  "bore-misses-log",    "trim-does-not-fit",
         "tail-too-thin",          "tee-too-near",        "walls-run-together", "overhang-hits-wall",
         "opening-cuts-tee",       "opening-cuts-corner", "opening-over-wall",  "openings-too-close",
         "walls-do-not-alternate", "corner-not-square",   "wall-too-short",     "opening-too-wide",
         "tee-off-wall",           "stick-too-thin",      "opening-meets-step", "step-cuts-corner",
         "steps-too-close",        "step-over-wall",      "floor-over-wall"}};
    std::map<std::string, int> with;
    Shell last; ///< where one failed: the smallest that fails
};

Shell any_of_all() {
    switch (*rc::gen::inRange(0, 8)) {
    case 0:
        return test::any_tapered_shell();
    case 1:
        return test::any_fitted_shell();
    case 2:
        return test::any_stepped_shell();
    case 3:
        return test::any_waned_shell();
    case 4:
        return test::any_saddle_shell();
    case 5:
        return test::any_stepped_saddle_shell();
    default:
        return test::any_family_shell();
    }
}

void count(const Shell &shell, const Layout &layout, Drawn &drawn) {
    ++drawn.shells;
    drawn.pieces += static_cast<int>(layout.pieces.size());
    drawn.timbers += static_cast<int>(layout.timbers.size());
    const auto some = [&](CornerKind kind) {
        return std::any_of(layout.corners.begin(), layout.corners.end(),
                           [&](const CornerPlace &c) { return c.kind == kind; });
    };
    drawn.with["tees"] += some(CornerKind::tee);
    drawn.with["crossings"] += some(CornerKind::crossing);
    drawn.with["corners that are not square"] +=
        std::any_of(layout.walls.begin(), layout.walls.end(), [](const WallPlace &w) {
            return std::any_of(w.meetings.begin(), w.meetings.end(),
                               [](const WallMeeting &m) { return m.skew != 0; });
        });
    drawn.with["half-log starts"] += std::any_of(layout.pieces.begin(), layout.pieces.end(),
                                                 [](const Piece &p) { return p.log == LogKind::half_start; });
    const bool saddles = shell.notch.kind == NotchKind::saddle;
    drawn.with["saddles"] += saddles;
    drawn.with["saddles over steps"] += saddles && !shell.steps.empty();
    drawn.with["wane"] += !saddles && shell.logs.diameter.has_value();
    drawn.with["trim"] += !(shell.trim == Trim{});
    drawn.with["bores"] += !shell.bores.empty();
    drawn.with["floors"] += !layout.timbers.empty();
    drawn.with["steps"] += !shell.steps.empty();
    drawn.with["tapers"] += shell.logs.butt_height.has_value();
    drawn.with["overhangs"] += shell.notch.overhang.mm() > 0;
    drawn.with["openings"] += !shell.openings.empty();
}

void hold_one(const Shell &shell, Drawn &drawn) {
    const Layout layout = lay_out(shell);
    drawn.thrown.discard_refused(layout.findings);
    const auto bodies = bodies_of(layout);
    const bool two_floors =
        shell.floors.size() > 1; // they may be stated across each other: the review says so
    for (const Overlap &o : overlaps(layout, bodies))
        if (!two_floors) RC_FAIL(layout.pieces[o.a].tag + " shares wood with " + layout.pieces[o.b].tag);
    const bool slid = test::has(layout.findings, "pocket-closed");
    for (const Blocked &b : blocked_on_the_way_down(layout, bodies)) {
        const Piece &piece = layout.pieces[b.piece];
        const Piece &by = layout.pieces[b.by];
        const bool timber = piece.timber || by.timber;
        if (!timber || (!two_floors && !slid)) RC_FAIL(piece.tag + " cannot be lowered past " + by.tag);
    }
    for (const auto i : bodies.indices())
        if (!is_closed(bodies[i].hewn))
            RC_FAIL(layout.pieces[layout.models[i].pieces.front()].tag + " is not closed");
    count(shell, layout, drawn);
}

void hold(Drawn &drawn) {
    const Shell shell = any_of_all();
    try {
        hold_one(shell, drawn);
    } catch (const rc::detail::CaseResult &result) {
        if (result.type == rc::detail::CaseResult::Type::Failure) drawn.last = shell;
        throw;
    }
}

} // namespace

int main(int argc, char **argv) {
    rc::detail::TestParams params = rc::detail::configuration().testParams;
    params.maxSuccess = argc > 1 ? std::atoi(argv[1]) : 2000;
    Drawn drawn;
    const auto start = std::chrono::steady_clock::now();
    const auto result = rc::detail::checkTestable([&] { hold(drawn); }, rc::detail::TestMetadata{}, params);
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    rc::detail::printResultMessage(result, std::cout);
    std::printf("\nseed %llu: %d shells of %d pieces and %d timbers of floors held in %.1f s (%.2f ms each); "
                "%s\n  with",
                static_cast<unsigned long long>(params.seed), drawn.shells, drawn.pieces - drawn.timbers,
                drawn.timbers, seconds, 1000 * seconds / std::max(drawn.shells, 1),
                drawn.thrown.words().c_str());
    for (const auto &[what, times] : drawn.with)
        std::printf(" %s %d,", what.c_str(), times);
    std::printf(" and others\n");
    if (drawn.thrown.share() > 0.5) std::printf("too many are thrown away\n");
    if (result.is<rc::detail::SuccessResult>()) return drawn.thrown.share() > 0.5 ? 1 : 0;
    std::cout << "\n" << write_document(drawn.last);
    return 1;
}
