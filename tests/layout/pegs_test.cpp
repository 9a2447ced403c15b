// Pegs: places, spacing, stagger.

#include "kernel/layout/fastenings/pegs.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <map>

using namespace roundlay;

namespace {

/// Fastening places of a log on its bearers in wall x: pegs and locked corners.
std::vector<double> places(const Layout &layout, Index<Piece> piece) {
    std::vector<double> xs;
    const Piece &p = layout.pieces[piece];
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
    // Ontario Building Code, Division B, 9.37.2.3(1) (PEG-OBC-N, PEG-OBC-S: read there). Interlocking corners
    // count.
    std::vector<double> lengths{1500, 3000, 6000, 7300, 10750, 11000};
    for (double more = 1400; more < 14000; more += 137)
        lengths.push_back(more);
    for (const double length : lengths) {
        const Layout layout = long_wall(length);
        CHECK_FALSE(test::has(layout.findings, "pegs-far-apart"));
        REQUIRE_FALSE(has_errors(layout.findings));
        for (const auto i : layout.pieces.indices()) {
            if (layout.pieces[i].round == 1) continue; // sill logs lie on the foundation
            if (layout.pieces[i].log != LogKind::full) continue;
            const std::vector<double> xs = places(layout, i);
            INFO(layout.pieces[i].tag << " of " << length);
            CHECK(xs.size() >= 3);
            for (std::size_t k = 1; k < xs.size(); ++k)
                CHECK(xs[k] - xs[k - 1] <= 1800);
        }
    }
}

TEST_CASE(
    "Pegs as they are usual in inches keep under 1800 mm too") { // 9.37.2.3(1), as above; 6 ft are 1829 mm
    CHECK(begun_in(UnitSystem::imperial).pegs.spacing <= Length::mm(1800));
    CHECK(begun_in(UnitSystem::metric).pegs.spacing <= Length::mm(1800));
}

TEST_CASE("Logs whose corners do not lock have their three places in pegs") { // 9.37.2.3(1), as above
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(2600), Length::mm(2400));
    shell.notch.kind = NotchKind::square_lap;
    const Layout layout = lay_out(shell);
    for (const auto i : layout.pieces.indices()) {
        if (layout.pieces[i].round == 1) continue;
        const auto pegs =
            std::count_if(layout.pegs.begin(), layout.pegs.end(), [&](const Peg &p) { return p.upper == i; });
        INFO(layout.pieces[i].tag);
        CHECK(pegs >= 3);
    }
}

namespace {

/// A wall of 8 m with a window of 4 m, its top so far over a seam.
Layout wide_window(double over_seam) {
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(8000), Length::mm(5000));
    shell.rounds.count = 8;
    shell.openings = {test::window("A", 2000, 0, 4000, 1150 + over_seam)};
    return lay_out(shell);
}

} // namespace

TEST_CASE("Where a thin header leaves no place for pegs that is said, and a high one is pegged") {
    const Layout thin = wide_window(150); // 60 mm of the header are left
    REQUIRE(test::has(thin.findings, "pegs-far-apart"));
    const auto said = std::find_if(thin.findings.begin(), thin.findings.end(),
                                   [](const Finding &f) { return f.code == "pegs-far-apart"; });
    CHECK(said->weight == Weight::warning);
    CHECK(said->subject == "opening[0].from_left");
    CHECK_THAT(test::message(*said), ContainsSubstring("1800 mm"));

    const Layout high = wide_window(30); // 180 mm are left: pegs end 75 mm over the opening
    INFO(test::words(high.findings));
    CHECK_FALSE(test::has(high.findings, "pegs-far-apart"));
    for (const Body &body : bodies_of(high))
        CHECK(body.bores_clear);
}

TEST_CASE("A sill too wide for pegs beside it is told where its window is stated") {
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(8000), Length::mm(5000));
    shell.rounds.count = 8;
    shell.openings = {test::window("A", 2000, 460, 4000, 720)}; // takes nothing of the log up to 440
    const Findings findings = lay_out(shell).findings;
    const auto told = std::ranges::find(findings, "pegs-far-apart", &Finding::code);
    REQUIRE(told != findings.end());
    CHECK(told->weight == Weight::warning);
    CHECK(told->subject == "opening[0].from_left");
}

namespace {

/// Bores of pegs whose mouth lies in a window of wall A, in all logs.
int open_bores(const Layout &layout, const Shell &shell) {
    int open = 0;
    for (const Opening &o : shell.openings)
        for (const Piece &p : layout.pieces)
            for (const Cut &cut : p.cuts) {
                const Bore *bore = std::get_if<Bore>(&cut);
                if (!bore || layout.walls[p.wall].name != o.wall) continue;
                const double x = p.frame.origin.x + bore->x, half = bore->diameter / 2;
                const double low = p.frame.origin.z + bore->z_from, high = p.frame.origin.z + bore->z_to;
                const double sill = o.sill.mm(), head = (o.sill + o.height).mm();
                const bool beside = x + half < o.from_left.mm() || x - half > (o.from_left + o.width).mm();
                const double gap = shell.rounds.gap.mm() + 1e-6; // of the seams that its edges lie in
                if (!beside &&
                    ((high <= sill + gap && high >= sill - gap) || (low >= head - gap && low <= head + gap)))
                    ++open;
            }
    return open;
}

} // namespace

TEST_CASE("No peg's bore opens in the sill or the head of an opening that takes nothing of that log") {
    // Logs of the walls that start full lie from 230 to 440, 460 to 670 and so on.
    for (const double depth : {0.5, 1.0})
        for (const double sill : {440.0, 450.0, 460.0})
            for (const double head : {1130.0, 1140.0, 1150.0}) {
                Shell shell = test::plain_shell();
                shell.walls = rectangle_plan(Length::mm(8000), Length::mm(6000));
                shell.rounds.count = 8;
                shell.pegs.depth_below = depth;
                shell.openings = {test::window("A", 2000, sill, 1500, head - sill),
                                  test::window("A", 4200, sill, 1300, head - sill)};
                const Layout layout = lay_out(shell);
                CAPTURE(depth, sill, head);
                INFO(test::words(layout.findings));
                REQUIRE_FALSE(has_errors(layout.findings));
                CHECK(open_bores(layout, shell) == 0);
                CHECK_FALSE(layout.pegs.empty());
            }
}

TEST_CASE("A draw takes nothing from the distances that bores keep in either log") {
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(8000), Length::mm(6000));
    shell.rounds.count = 9;
    shell.pegs.draw = Length::mm(4);
    shell.openings = {test::window("A", 3000, 0, 1000, 1840), test::window("A", 4400, 400, 900, 900)};
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(layout.pieces.empty());
    int ends = 0;
    for (const Piece &p : layout.pieces) {
        std::vector<double> xs;
        for (const Cut &cut : p.cuts)
            if (const Bore *bore = std::get_if<Bore>(&cut)) xs.push_back(bore->x);
        std::sort(xs.begin(), xs.end());
        INFO(p.tag);
        for (std::size_t i = 1; i < xs.size(); ++i)
            CHECK(xs[i] - xs[i - 1] >= 75 - 1e-9);
        if (xs.empty()) continue;
        ends += (p.datum.kind == EndKind::jamb) + (p.far.kind == EndKind::jamb);
        if (p.datum.kind == EndKind::jamb) CHECK(xs.front() >= 100 - 1e-9);
        if (p.far.kind == EndKind::jamb) CHECK(xs.back() <= p.blank.length - 100 + 1e-9);
    }
    CHECK(ends > 10);
}

TEST_CASE("A jamb's groove is taken off the end that a peg keeps its distance from") {
    // Each peg to the nearest jamb of the logs that it goes through, less what the groove takes of the jamb.
    const auto nearest_to_a_jamb = [](double groove) {
        Shell shell = test::plain_shell();
        shell.openings = {test::window("A", 1500, 100, 800, 700), test::window("A", 3100, 100, 700, 700)};
        shell.trim.spline_width = Length::mm(40), shell.trim.spline_depth = Length::mm(groove);
        const Layout layout = lay_out(shell);
        double nearest = HUGE_VAL;
        for (const Peg &peg : layout.pegs)
            for (const Index<Piece> i : {peg.upper, peg.lower}) {
                const Piece &p = layout.pieces[i];
                const double x = p.frame.to_local(peg.top).x;
                if (p.datum.kind == EndKind::jamb) nearest = std::min(nearest, x);
                if (p.far.kind == EndKind::jamb) nearest = std::min(nearest, p.blank.length - x);
            }
        return nearest - groove;
    };
    const double rule = test::plain_shell().pegs.end_distance.mm();
    for (const double groove : {0.0, 25.0, 60.0, 95.0}) {
        INFO(groove);
        CHECK(nearest_to_a_jamb(groove) >= rule - 1e-9);
        CHECK(nearest_to_a_jamb(groove) < HUGE_VAL);
    }
}

TEST_CASE("Pegs keep clear of bores that a person placed, however wide") {
    Shell shell = test::plain_shell();
    StatedBore hole;
    hole.wall = "A";
    hole.from_left = Length::mm(1700); // where a peg would stand
    hole.diameter = Length::mm(120);
    shell.bores = {hole};
    const Layout layout = lay_out(shell);
    REQUIRE_FALSE(layout.pieces.empty());
    for (const Body &body : bodies_of(layout))
        CHECK(body.bores_apart);
}

TEST_CASE("What stands too close to be held as asked for is said in words that hold") {
    Shell shell = test::plain_shell();
    shell.walls = rectangle_plan(Length::mm(8000), Length::mm(6000));
    shell.pegs.spacing = Length::mm(150); // two staggered rows of bores 75 mm apart
    const Layout dense = lay_out(shell);
    CHECK_FALSE(has_errors(dense.findings));
    for (const Finding &f : dense.findings)
        CHECK(test::message(f).find("would hold them") == std::string::npos);
    CHECK_FALSE(dense.pegs.empty());
}

TEST_CASE("A peg runs through one log and half into the next") { // common practice, no source
    const Layout layout = lay_out(test::plain_shell());
    REQUIRE_FALSE(layout.pegs.empty());
    for (const Peg &peg : layout.pegs) {
        const Piece &upper = layout.pieces[peg.upper];
        const Piece &lower = layout.pieces[peg.lower];
        CHECK(peg.length == Approx(upper.blank.height + 20 + lower.blank.height / 2));
        CHECK(upper.wall == lower.wall);
        CHECK(upper.round == lower.round + 1);
    }
}

TEST_CASE("Both logs of a peg are bored at the same place") {
    const Layout layout = lay_out(test::plain_shell());
    std::map<std::optional<Index<Peg>>, std::vector<Vec3>> bored;
    for (const Piece &p : layout.pieces)
        for (const Cut &cut : p.cuts)
            if (const auto *b = std::get_if<Bore>(&cut))
                bored[b->peg].push_back(p.frame.to_world({b->x, b->y, 0}));
    for (const auto i : layout.pegs.indices()) {
        REQUIRE(bored[i].size() == 2);
        for (const Vec3 &at : bored[i]) {
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
        for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
            taken.push_back(from + *rc::gen::inRange(0, 8000));
        const std::vector<double> xs = place_pegs(joint, rule, taken);
        const double slack = 1e-9;
        for (std::size_t i = 0; i < xs.size(); ++i) {
            RC_ASSERT(xs[i] >= from - slack);
            RC_ASSERT(xs[i] <= from + span + slack);
            if (i) RC_ASSERT(xs[i] - xs[i - 1] >= rule.between.mm() - slack);
            for (const double t : taken)
                RC_ASSERT(std::abs(xs[i] - t) >= rule.between.mm() - slack);
        }
        if (taken.empty() && span >= rule.between.mm() * joint.fewest)
            RC_ASSERT(static_cast<int>(xs.size()) >= joint.fewest);
    }));
}

TEST_CASE("An island is held by three pegs a joint, or it is said that it is not") { // 9.37.2.3(1), as above
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
    for (const Finding &f : layout.findings)
        UNSCOPED_INFO(test::message(f));
    REQUIRE_FALSE(has_errors(layout.findings));
    int islands = 0;
    for (const auto i : layout.pieces.indices()) {
        if (!layout.pieces[i].island) continue;
        ++islands;
        CHECK(places(layout, i).size() == 3);
    }
    CHECK(islands == 2);
    CHECK_FALSE(test::has(layout.findings, "held-in-few-places"));
    shell.openings[1].from_left = Length::mm(2300); // an island of 500 mm
    const Findings shorter = lay_out(shell).findings;
    const auto said = std::find_if(shorter.begin(), shorter.end(),
                                   [](const Finding &f) { return f.code == "held-in-few-places"; });
    REQUIRE(said != shorter.end());
    CHECK(said->weight == Weight::note);
    CHECK_THAT(test::message(*said), ContainsSubstring("in 2 places where 3 are asked for"));
}

TEST_CASE("A peg stands where its log may be bored nearest to where it is wished") {
    Joint joint;
    joint.reach = {0, 1000};
    joint.locked_left = joint.locked_right = true;
    joint.fewest = 1;
    joint.allowed = {{100, 100}, {450, 450}, {900, 900}}; // wished in the middle of the reach
    CHECK(place_pegs(joint, PegRule{}, {}) == std::vector<double>{450});
}

TEST_CASE("Where even places fail, each peg stands as far on as the spacing lets it") {
    // Places at 0, 1750, 1790 and 3580. The evenly wished ones come to 1750 from the left, which keeps the
    // next one 75 off and leaves 1830 to the end; only 1790 is within 1800 of both ends.
    PegRule rule;
    rule.spacing = Length::mm(1800);
    rule.between = Length::mm(75);
    Joint joint;
    joint.reach = {0, 3580};
    joint.allowed = {{0, 0}, {1750, 1750}, {1790, 1790}, {3580, 3580}};
    CHECK(place_pegs(joint, rule, {}) == std::vector<double>{0, 1790, 3580});
}
