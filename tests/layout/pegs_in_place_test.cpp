// Pegs that are bored through the standing wall: the logs are laid out without their holes.

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace roundlay;

namespace {

Layout laid_with(Shell shell, PegBoring bored) {
    shell.pegs.bored = bored;
    if (bored == PegBoring::in_place) shell.pegs.draw = {};
    return lay_out(shell);
}

/// What the pegs' holes take out of a log with level or sloping faces: their length along the centre line.
double bored_out(const Piece &piece) {
    double sum = 0;
    for (const Cut &cut : piece.cuts)
        if (const Bore *bore = bore_of(cut); bore != nullptr && bore->peg)
            sum += std::numbers::pi / 4 * bore->diameter * bore->diameter * (bore->z_to - bore->z_from);
    return sum;
}

std::size_t bores_in(const Piece &piece) {
    return static_cast<std::size_t>(std::ranges::count_if(
        piece.cuts, [](const Cut &cut) { return bore_of(cut) != nullptr && bore_of(cut)->peg; }));
}

void compare(const Layout &bench, const Layout &in_place) {
    RC_ASSERT(bench.pieces.size() == in_place.pieces.size());
    RC_ASSERT(bench.pegs.size() == in_place.pegs.size());
    for (const Index<Peg> i : bench.pegs.indices()) {
        RC_ASSERT(bench.pegs[i].name == in_place.pegs[i].name);
        RC_ASSERT(bench.pegs[i].upper == in_place.pegs[i].upper);
        RC_ASSERT(bench.pegs[i].lower == in_place.pegs[i].lower);
        RC_ASSERT(bench.pegs[i].length == in_place.pegs[i].length);
    }
    for (const Index<Piece> i : bench.pieces.indices()) {
        const Piece &with = bench.pieces[i], &without = in_place.pieces[i];
        RC_ASSERT(bores_in(without) == 0U);
        RC_ASSERT(without.cuts.size() + bores_in(with) == with.cuts.size());
        const Body bored = body_of(with), whole = body_of(without);
        if (!bored.bores_clear || !bored.rounds.empty()) continue; // no volume to the letter
        RC_ASSERT(std::abs(whole.volume - bored.volume - bored_out(with)) <= 1e-6 * whole.volume);
    }
    RC_ASSERT(in_place.models.size() <= bench.models.size());
}

} // namespace

TEST_CASE("Pegs bored in place stand where those bored at the bench do; only the logs have no holes") {
    CHECK(rc::check([] {
        Shell shell = test::any_fitted_shell();
        shell.pegs.draw = {};
        const Layout bench = laid_with(shell, PegBoring::at_the_bench);
        RC_PRE(!bench.pieces.empty());
        compare(bench, laid_with(shell, PegBoring::in_place));
    }));
}

TEST_CASE("Logs that differ only by their pegs' holes are one where these are bored in place") {
    const Shell shell = test::plain_shell();
    const Layout bench = laid_with(shell, PegBoring::at_the_bench),
                 in_place = laid_with(shell, PegBoring::in_place);
    CHECK(in_place.models.size() < bench.models.size());
}

TEST_CASE("Pegs that are bored straight through two logs cannot be draw-bored") {
    Shell shell = test::plain_shell();
    shell.pegs.draw = Length::mm(3);
    CHECK_FALSE(has_errors(lay_out(shell).findings));
    shell.pegs.bored = PegBoring::in_place;
    CHECK(test::has(lay_out(shell).findings, "peg-rule"));
    CHECK(has_errors(lay_out(shell).findings));
}
