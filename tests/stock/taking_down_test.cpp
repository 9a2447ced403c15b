// Taking down, step by step, against what the wood itself allows.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/layout/wood/rise.h"
#include "kernel/stock/taking_down.h"
#include "tests/stock/support/demos.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <set>

using namespace roundlay;
using roundlay::test::demo;

namespace {

struct Down {
    explicit Down(const Shell &shell)
        : layout(lay_out(shell)), bodies(bodies_of(layout)), steps(taking_down(layout, bodies)) {}

    Layout layout;
    Bodies bodies;
    std::vector<DownStep> steps;
};

/// What the piece meets that was raised before it, moved up by so much, in mm3.
double met(const Down &down, Index<Piece> piece, double up) {
    Layout there = down.layout;
    const int raise = there.pieces[piece].raise;
    there.pieces[piece].frame.origin.z += up;
    Indexed<Piece> standing;
    for (const Piece &other : there.pieces)
        if (other.raise <= raise) standing.push_back(other);
    there.pieces = std::move(standing);
    double sum = 0;
    for (const Overlap &overlap : overlaps(there, down.bodies))
        for (const auto i : {overlap.a, overlap.b})
            if (there.pieces[i].raise == raise) sum += overlap.volume;
    return sum;
}

/// Anything of the shell that still stands beside or over the piece's lowest wood would be met on its way.
void check_free(const Down &down, const DownStep &step) {
    for (const double more : {0.0, 1.0, 50.0, 400.0})
        RC_ASSERT(met(down, step.piece, step.rise + more) == 0);
    RC_ASSERT(met(down, step.piece, step.rise / 2) == 0); // and on its way there
}

} // namespace

TEST_CASE("Every piece is free once it has risen as far as it is told, and the reverse raises it") {
    CHECK(rc::check([] {
        const Shell shell = test::any_family_shell();
        if (has_errors(lay_out(shell).findings)) return; // counted and named elsewhere
        const Down down(shell);
        RC_ASSERT(down.steps.size() == down.layout.pieces.size());
        RC_ASSERT(blocked_on_the_way_down(down.layout, down.bodies).empty());
        for (std::size_t i = 0; i < down.steps.size(); ++i)
            RC_ASSERT(down.layout.pieces[down.steps[i].piece].raise ==
                      static_cast<int>(down.steps.size() - i));
        for (int i = 0; i < 3; ++i)
            check_free(down, *rc::gen::elementOf(down.steps));
    }));
}

TEST_CASE(
    "A piece can be swung away once its under face is over the tops of the logs that it is notched to") {
    const Down down(test::plain_shell()); // four square walls: tops and under faces are the blanks' own
    const auto &pieces = down.layout.pieces;
    const auto under = [](const Piece &p) { return p.frame.origin.z; };
    const auto top = [](const Piece &p) { return p.frame.origin.z + p.blank.height; };
    for (const DownStep &step : down.steps) {
        const Piece &piece = pieces[step.piece];
        double rise = 0;
        for (const Piece &other : pieces)
            if (other.raise < piece.raise && other.wall.at() % 2 != piece.wall.at() % 2)
                rise = std::max(rise, top(other) - under(piece));
        INFO(piece.tag);
        CHECK(step.rise == Approx(rise).margin(1e-6));
    }
}

TEST_CASE("A joist is free when its under face is over the log that it is let into") {
    const Down down(test::floored());
    int joists = 0;
    for (const DownStep &step : down.steps) {
        const Piece &piece = down.layout.pieces[step.piece];
        if (!piece.timber) continue;
        ++joists;
        CHECK(step.rise > 0); // its pocket's two sides hold it until then
        CHECK(step.rise <= 230);
    }
    CHECK(joists > 0);
}

TEST_CASE("Each peg is drawn once, before the upper of its two logs rises") {
    for (const char *name : {"one-room", "ell-house", "round-cabin"}) {
        const Down down(demo(name));
        std::multiset<std::size_t> drawn;
        for (const DownStep &step : down.steps)
            for (const Index<Peg> peg : step.pegs) {
                drawn.insert(peg.at());
                CHECK(down.layout.pegs[peg].upper == step.piece);
                CHECK(down.layout.pieces[down.layout.pegs[peg].lower].raise <
                      down.layout.pieces[step.piece].raise);
            }
        CHECK(drawn.size() == down.layout.pegs.size());
        CHECK(std::set<std::size_t>(drawn.begin(), drawn.end()).size() == drawn.size());
    }
}

TEST_CASE("Raising goes the same way back: the same pieces, and into each the pegs that were drawn") {
    for (const char *name : {"one-room", "ell-house", "round-cabin"}) {
        const Down down(demo(name));
        const auto up = raising(down.layout);
        REQUIRE(up.size() == down.steps.size());
        for (std::size_t i = 0; i < up.size(); ++i) {
            const DownStep &back = down.steps[up.size() - 1 - i];
            CHECK(up[i].piece == back.piece);
            CHECK(up[i].pegs == back.pegs);
            CHECK(down.layout.pieces[up[i].piece].raise == static_cast<int>(i) + 1);
        }
    }
}

TEST_CASE("A short log between two openings is told when the last log over it has gone") {
    const Down down(demo("ell-house"));
    std::set<std::size_t> told;
    for (const DownStep &step : down.steps)
        for (const Index<Piece> loose : step.loose) {
            const Piece &island = down.layout.pieces[loose];
            INFO(island.tag);
            CHECK(told.insert(loose.at()).second);
            CHECK(island.datum.kind == EndKind::jamb);
            CHECK(island.far.kind == EndKind::jamb);
            CHECK(island.raise < down.layout.pieces[step.piece].raise);
        }
    for (const Index<Piece> i : down.layout.pieces.indices())
        if (down.layout.pieces[i].island && !down.layout.pieces[i].timber) CHECK(told.contains(i.at()));
    CHECK_FALSE(told.empty());
}
