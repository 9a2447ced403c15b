// Random shells with floors, trim and bores.
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "tests/layout/floored_bodies.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <chrono>
#include <sstream>

using namespace roundlay;
using test::has;
using test::words;

namespace {

struct Drawn {
    int laid = 0, timbers = 0, beams = 0, trimmers = 0, tailed = 0, closed = 0;
    /// Joists and bores drawn at random often find no wood; the rest is as of every random shell.
    test::ThrownAway thrown{{"floor-does-not-fit", "floor-over-wall", "timber-misses-wall", "bore-misses-log",
                             "trim-does-not-fit", "tail-too-thin", "tee-too-near", "walls-run-together",
                             "overhang-hits-wall", "opening-cuts-tee", "opening-cuts-corner",
                             "opening-over-wall", "openings-too-close", "walls-do-not-alternate",
                             "corner-not-square", "wall-too-short", "opening-too-wide", "tee-off-wall"}};
};

void check_one(Drawn &drawn) {
    const Shell shell = test::any_fitted_shell();
    const Layout layout = lay_out(shell);
    drawn.thrown.discard_refused(layout.findings);
    const auto bodies = bodies_of(layout);
    for (const Overlap &o : overlaps(layout, bodies)) {
        const Piece &a = layout.pieces[o.a], &b = layout.pieces[o.b];
        if (a.timber && b.timber && shell.floors.size() > 1) RC_DISCARD("two floors cross each other");
        RC_FAIL(a.tag + " and " + b.tag + " share " + std::to_string(o.volume) + "\n" +
                write_document(shell));
    }
    const bool closed = has(layout.findings, "pocket-closed");
    drawn.closed += closed;
    for (const Blocked &b : blocked_on_the_way_down(layout, bodies)) {
        const Piece &p = layout.pieces[b.piece], &by = layout.pieces[b.by];
        if (shell.floors.size() > 1 && (p.timber || by.timber)) continue;
        if (!closed || !p.timber) RC_FAIL(p.tag + " is blocked by " + by.tag + "\n" + write_document(shell));
    }
    for (const Body &body : bodies)
        RC_ASSERT(is_closed(body.hewn));
    ++drawn.laid;
    drawn.timbers += static_cast<int>(layout.timbers.size());
    for (const Timber &t : layout.timbers) {
        drawn.beams += t.use == TimberUse::beam;
        drawn.trimmers += t.use == TimberUse::trimmer;
    }
    for (const Floor &f : shell.floors)
        drawn.tailed += f.pocket == PocketKind::tailed;
}

} // namespace

TEST_CASE("Random shells with floors, trim and bores keep the invariants", "[fitted]") {
    Drawn drawn;
    const auto start = std::chrono::steady_clock::now();
    CHECK(rc::check([&] { check_one(drawn); }));
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    std::ostringstream line;
    line << drawn.laid << " shells with " << drawn.timbers << " timbers in " << seconds << " s; "
         << drawn.beams << " beams, " << drawn.trimmers << " trimmers, " << drawn.tailed << " tailed floors, "
         << drawn.closed << " with closed pockets; " << drawn.thrown.words();
    WARN(line.str());
    CHECK(drawn.laid >= 90);
    CHECK(drawn.thrown.share() < 0.88); // a floor of random joists is mostly none
    CHECK(drawn.timbers > drawn.laid);
    CHECK(drawn.beams > 0);
    CHECK(drawn.trimmers > 0);
}
