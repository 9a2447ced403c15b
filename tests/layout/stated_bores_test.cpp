// Bores that a person states, and bores that draw a joint together.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/pieces.h"
#include "tests/support/shells.h"

using namespace roundlay;
using roundlay::test::piece;
using test::has;
using test::laid;
using test::words;

TEST_CASE("Stated bores go through the rounds that are named, and pegs keep clear") {
    Shell shell = test::plain_shell();
    shell.bores = {test::rod("A", 1500, 30)};
    shell.bores[0].drift = Length::mm(4);
    const Layout layout = laid(shell);
    double x = 1500;
    for (const char *tag : {"A-01-1", "A-02-1", "A-03-1", "A-04-1"}) {
        const Piece &p = piece(layout, tag);
        std::vector<double> pegs;
        const Bore *bore = nullptr;
        for (const Cut &cut : p.cuts)
            if (const auto *b = std::get_if<Bore>(&cut))
                b->use == BoreUse::rod ? void(bore = b) : pegs.push_back(b->x);
        REQUIRE(bore != nullptr);
        CHECK(bore->x == Approx(x));
        for (const double peg : pegs)
            CHECK(std::abs(peg - x) >= shell.pegs.between.mm() - 1e-9);
        x += 4;
    }
    shell.bores[0].from_left = Length::mm(100);
    CHECK_THAT(words(lay_out(shell).findings),
               ContainsSubstring("no whole log") && ContainsSubstring("; 300 mm from the left would do"));
    shell.bores[0].from_left =
        Length::mm(300); // the corner's shoulder and the distance that pegs keep from ends
    CHECK_FALSE(has_errors(lay_out(shell).findings));
    shell.bores[0].from_left = Length::mm(1500);
    shell.bores[0].to_round = 9;
    CHECK_THAT(words(lay_out(shell).findings), ContainsSubstring("only 4 rounds"));
}

TEST_CASE("A draw-bore draws toward the log's nearer end") {
    Shell shell = test::plain_shell();
    shell.pegs.draw = Length::mm(4);
    const Layout layout = laid(shell);
    int seen = 0;
    for (const auto k : layout.pegs.indices()) {
        const Peg &peg = layout.pegs[k];
        const Piece &upper = layout.pieces[peg.upper];
        const Piece &lower = layout.pieces[peg.lower];
        const auto hole = [&](const Piece &p) {
            for (const Cut &cut : p.cuts)
                if (const auto *b = std::get_if<Bore>(&cut); b && b->peg == k)
                    return p.frame.to_world({b->x, b->y, 0});
            return Vec3{};
        };
        const double above = upper.frame.to_local(hole(upper)).x, below = upper.frame.to_local(hole(lower)).x;
        CHECK(std::abs(below - above) == Approx(4));
        CHECK((below < above) == (above < upper.blank.length / 2));
        ++seen;
    }
    CHECK(seen > 10);
    shell.pegs.draw = Length::mm(12);
    CHECK(has(lay_out(shell).findings, "peg-rule"));
}
