// Exact solids of mended logs: what stays and what comes add up to the log, round surfaces and all.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/solid/build_all.h"
#include "tests/support/any_kind.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/tagged.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <cmath>
#include <cstdio>

using namespace roundlay;
using roundlay::test::tagged;

namespace {

double exact_volume(const Layout &layout, Index<Piece> piece) {
    const BuiltSolid built = build(body_of(layout.pieces[piece]));
    if (!is_valid(built.solid) || count_solids(built.solid) < 1)
        throw std::runtime_error(layout.pieces[piece].tag + " is no valid solid");
    return volume(built.solid);
}

} // namespace

TEST_CASE("The exact solids of both parts of a mended log are its exact volume") {
    test::ThrownAway thrown(test::refusals());
    test::MendsDrawn told;
    int logs = 0, joined = 0;
    double worst = 0;
    CHECK(rc::check([&] {
        const Shell shell = test::any_kind_of_shell();
        const Layout whole = lay_out(shell);
        thrown.discard_refused(whole.findings);
        const Layout mended = lay_out(test::with_any_mends(shell, whole, 3, told));
        for (const auto i : mended.pieces.indices()) {
            const Piece &piece = mended.pieces[i];
            if (piece.mends || piece.mended.empty()) continue;
            double sum = exact_volume(mended, i);
            for (const auto j : mended.pieces.after(i))
                if (mended.pieces[j].mends == i) sum += exact_volume(mended, j), ++joined;
            const double was = exact_volume(whole, tagged(whole, piece.tag));
            worst = std::max(worst, std::abs(sum - was) / was);
            if (std::abs(sum - was) > 1e-6 * was)
                RC_FAIL(piece.tag + ": " + std::to_string(was) + " mm3 whole, " + std::to_string(sum));
            ++logs;
        }
    }));
    std::printf("%d logs with %d pieces of new wood, %.2e of the volume apart at worst\n", logs, joined,
                worst);
    CHECK(logs > 5);
}

TEST_CASE("A shallow patch let into the wane of a log is no less exact") {
    Shell shell = test::plain_shell();
    shell.thickness = Length::mm(239), shell.rounds.pitch = Length::mm(190);
    shell.logs.diameter = Length::mm(250);
    const Layout whole = lay_out(shell);
    const double was = exact_volume(whole, tagged(whole, "A-02-1"));
    Mend patch;
    patch.wall = "A", patch.round = 2, patch.kind = MendKind::let_in, patch.face = LogSide::outside;
    patch.from = Length::mm(600), patch.to = Length::mm(2600), patch.depth = Length::mm(20);
    for (const double high : {77.0, 90.0}) { // few flats: what they miss was more than was allowed for
        patch.low = Length::mm(49), patch.high = *patch.low + Length::mm(high);
        shell.mends = {patch};
        const Layout mended = lay_out(shell);
        const double both = exact_volume(mended, tagged(mended, "A-02-1")) +
                            exact_volume(mended, tagged(mended, "A-02-1-M1"));
        CHECK(std::abs(both - was) < 1e-6 * was);
    }
}

TEST_CASE("Mended logs cut one cut after another are the same") {
    Shell shell = test::plain_shell();
    Mend sole;
    sole.wall = "A", sole.round = 3, sole.kind = MendKind::face, sole.face = LogSide::under;
    sole.from = Length::mm(0), sole.to = Length::mm(1300), sole.depth = Length::mm(60);
    Mend patch = sole;
    patch.round = 2, patch.kind = MendKind::let_in, patch.face = LogSide::inside;
    patch.from = Length::mm(900), patch.low = Length::mm(50), patch.high = Length::mm(120);
    Mend end = sole;
    end.wall = "B", end.kind = MendKind::splice, end.face = LogSide::top, end.end = LogEnd::right;
    end.from.reset(), end.depth.reset(), end.to = Length::mm(600), end.lap = Length::mm(500);
    shell.mends = {sole, patch, end};
    for (const bool tapers : {false, true}) {
        if (tapers) {
            shell.logs.butt_height = Length::mm(220), shell.logs.tip_height = Length::mm(200);
            shell.logs.tip_width = Length::mm(170);
        }
        const Layout layout = lay_out(shell);
        REQUIRE_FALSE(layout.pieces.empty());
        int built_count = 0;
        for (const Piece &piece : layout.pieces) {
            if (piece.mended.empty()) continue;
            const Solid plain = build_plainly(piece);
            const Body body = body_of(piece);
            CHECK(std::abs(volume(plain) - body.volume) < 1e-8 * body.volume);
            CHECK(build(body).method == Method::direct);
            ++built_count;
        }
        CHECK(built_count == 6);
    }
}
