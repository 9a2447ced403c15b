// Pegs: places, spacing, stagger.

#include "kernel/layout/layout.h"
#include "kernel/layout/pegs.h"

#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>

using namespace roundlay;

namespace {

/// Fastening places of a log on its bearers in wall x: pegs and locked corners.
std::vector<double> places(const Layout &layout, int piece) {
    std::vector<double> xs;
    const Piece &p = layout.pieces[static_cast<std::size_t>(piece)];
    for (const Peg &peg : layout.pegs)
        if (peg.upper == piece) xs.push_back(p.frame.to_local(peg.top).x);
    for (const PieceEnd *e : {&p.datum, &p.far})
        if (e->kind == EndKind::corner)
            xs.push_back(e == &p.datum ? e->shoulder / 2 : (e->shoulder + p.blank.length) / 2);
    std::sort(xs.begin(), xs.end());
    return xs;
}

Layout long_wall(double length) {
    Shell shell = test::plain_shell();
    shell.walls[0].length = shell.walls[2].length = Length::mm(length);
    return lay_out(shell);
}

} // namespace

TEST_CASE("A log is held in at least three places never more than 1800 mm apart") {
    // Ontario Building Code, Division B, 9.37.2.3(1) (PEG-OBC-N, PEG-OBC-S: read there). Interlocking corners count.
    for (const double length : {1500.0, 3000.0, 6000.0, 11000.0}) {
        const Layout layout = long_wall(length);
        REQUIRE_FALSE(has_errors(layout.findings));
        for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
            if (layout.pieces[i].round == 1) continue; // sill logs lie on the foundation
            if (layout.pieces[i].log != LogKind::full) continue;
            const std::vector<double> xs = places(layout, static_cast<int>(i));
            INFO(layout.pieces[i].tag << " of " << length);
            CHECK(xs.size() >= 3);
            for (std::size_t k = 1; k < xs.size(); ++k) CHECK(xs[k] - xs[k - 1] <= 1800);
        }
    }
}

TEST_CASE("A peg runs through one log and half into the next") { // common practice, no source
    const Layout layout = lay_out(test::plain_shell());
    REQUIRE_FALSE(layout.pegs.empty());
    for (const Peg &peg : layout.pegs) {
        const Piece &upper = layout.pieces[static_cast<std::size_t>(peg.upper)];
        const Piece &lower = layout.pieces[static_cast<std::size_t>(peg.lower)];
        CHECK(peg.length == Approx(upper.blank.height + 20 + lower.blank.height / 2));
        CHECK(upper.wall == lower.wall);
        CHECK(upper.round == lower.round + 1);
    }
}

TEST_CASE("Both logs of a peg are bored at the same place") {
    const Layout layout = lay_out(test::plain_shell());
    std::map<int, std::vector<Vec3>> bored;
    for (const Piece &p : layout.pieces)
        for (const Cut &cut : p.cuts)
            if (const auto *b = std::get_if<Bore>(&cut)) bored[b->peg].push_back(p.frame.to_world({b->x, b->y, 0}));
    for (std::size_t i = 0; i < layout.pegs.size(); ++i) {
        REQUIRE(bored[static_cast<int>(i)].size() == 2);
        for (const Vec3 &at : bored[static_cast<int>(i)]) {
            CHECK(at.x == Approx(layout.pegs[i].top.x).margin(1e-9));
            CHECK(at.y == Approx(layout.pegs[i].top.y).margin(1e-9));
        }
    }
}

TEST_CASE("Peg places keep their distances whatever the joint") {
    CHECK(rc::check([] {
        PegRule rule;
        rule.between = Length::mm(*rc::gen::inRange(40, 200));
        Joint joint;
        const double from = *rc::gen::inRange(0, 500), span = *rc::gen::inRange(1, 8000);
        joint.allowed = {{from, from + span}};
        joint.reach = joint.allowed[0];
        joint.locked_left = *rc::gen::arbitrary<bool>();
        joint.shifted = *rc::gen::arbitrary<bool>();
        joint.fewest = *rc::gen::inRange(1, 4);
        std::vector<double> taken;
        for (int i = *rc::gen::inRange(0, 4); i > 0; --i) taken.push_back(from + *rc::gen::inRange(0, 8000));
        const std::vector<double> xs = place_pegs(joint, rule, taken);
        const double slack = 1e-9;
        for (std::size_t i = 0; i < xs.size(); ++i) {
            RC_ASSERT(xs[i] >= from - slack);
            RC_ASSERT(xs[i] <= from + span + slack);
            if (i) RC_ASSERT(xs[i] - xs[i - 1] >= rule.between.mm() - slack);
            for (const double t : taken) RC_ASSERT(std::abs(xs[i] - t) >= rule.between.mm() - slack);
        }
        if (taken.empty() && span >= rule.between.mm() * joint.fewest)
            RC_ASSERT(static_cast<int>(xs.size()) >= joint.fewest);
    }));
}

TEST_CASE("An island is held by two pegs a joint") {
    Shell shell = test::plain_shell();
    for (const double from : {1000.0, 2400.0}) {
        Opening o;
        o.wall = "A";
        o.from_left = Length::mm(from);
        o.sill = Length::mm(100);
        o.width = Length::mm(800);
        o.height = Length::mm(700);
        shell.openings.push_back(o);
    }
    const Layout layout = lay_out(shell);
    for (const Finding &f : layout.findings) UNSCOPED_INFO(f.message);
    REQUIRE_FALSE(has_errors(layout.findings));
    int islands = 0;
    for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
        if (!layout.pieces[i].island) continue;
        ++islands;
        CHECK(places(layout, static_cast<int>(i)).size() == 2);
    }
    CHECK(islands == 2);
}
