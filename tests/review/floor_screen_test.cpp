// The screen of floors against sums worked out by hand. Statics and E: textbook and Wood Handbook
// (FPL-GTR-282, second-hand), derived; see tests/trade/joist_test.cpp for the formulas' own checks.
#include "kernel/layout/floors/bearing.h"
#include "kernel/layout/lay_out.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/review.h"
#include "kernel/review/review_parts.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/floored.h"
#include "tests/support/said.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using namespace roundlay;
using test::laid;

namespace {

constexpr double live = 1.9e-3, dead = 0.5e-3; // N/mm2
constexpr double elasticity = 7400;            // eastern hemlock, green, Table 5-3a, second-hand
/// N/mm of a section: 1.1 x 0.38 x 2.19 x 1000 kg/m3 (sapwood at 119 %, Table 4-1, second-hand), 9.80665
/// m/s2.
double own_weight(double width, double height) {
    return 1.1 * 0.38 * 2.19 * 1000 * 9.80665 * width * height * 1e-9;
}

Shell with_stair() {
    Shell shell = test::floored_and_loaded();
    shell.floors[0].openings = {
        {"stair", Length::mm(1500), Length::mm(1000), Length::mm(1400), Length::mm(1200)}};
    return shell;
}

const TimberScreen &screen_of(const FloorScreen &all, const Layout &layout, const std::string &tag) {
    for (const TimberScreen &s : all.timbers)
        if (layout.pieces[layout.timbers[s.timber].piece].tag == tag) return s;
    FAIL(tag << " is not screened");
    return all.timbers.front();
}

TimberScreen screened(const Shell &shell, const std::string &tag) {
    const Layout layout = laid(shell);
    return screen_of(screen_floors(shell, layout), layout, tag);
}

std::vector<std::string> codes(const Shell &shell) {
    const Layout layout = laid(shell);
    std::vector<std::string> all;
    for (const Finding &f : review(shell, layout, bodies_of(layout)))
        all.push_back(f.code);
    return all;
}

bool told(const Shell &shell, const std::string &code) {
    const auto all = codes(shell);
    return std::find(all.begin(), all.end(), code) != all.end();
}

} // namespace

TEST_CASE("A joist from wall to wall is screened as worked out by hand, its own weight counted") {
    const TimberScreen s = screened(test::floored_and_loaded(), "G-J03");
    const double w = 600 * (live + dead) + own_weight(100, 180), span = 3600 + 80; // 40 of each bearing
    CHECK(s.span == Approx(span));
    CHECK(s.live == Approx(600 * live));
    CHECK(s.total == Approx(w));
    CHECK(s.points.empty());
    CHECK(s.deflection == Approx(5 * 600 * live * span * span * span * span / (384 * elasticity * 48.6e6)));
    CHECK(s.bending == Approx(w * span * span / 8 / 540'000));
    CHECK(s.shear == Approx(1.5 * w * span / 2 / 18'000));
    CHECK(s.bearing == Approx(w * span / 2 / (100 * 80)));
}

TEST_CASE("A beam under two equal spans carries 1.25 w L of each joist where it lies") {
    Shell shell = test::floored_and_loaded();
    shell.floors[0].beams = {{Length::mm(1800), {Length::mm(200), Length::mm(200)}}};
    const double w = 600 * (live + dead) + own_weight(100, 180), span = 1800 + 40; // to the beam's middle
    const TimberScreen beam = screened(shell, "G-B01");
    REQUIRE(beam.points.size() == 7);
    auto points = beam.points;
    std::sort(points.begin(), points.end(),
              [](const PointLoad &a, const PointLoad &b) { return a.at < b.at; });
    for (std::size_t i = 0; i < points.size(); ++i) {
        CHECK(points[i].at == Approx(600.0 * static_cast<double>(i + 1)));
        // The last joist's strip is wider by the room's odd end: 4600 - 4200 + half of 600.
        const double strip = i == 6 ? 500 : 600;
        CHECK(points[i].force == Approx(1.25 * span * (strip * (live + dead) + own_weight(100, 180))));
    }
    CHECK(beam.span == Approx(4600 + 80));
    CHECK(beam.total == Approx(own_weight(200, 200)));
    const TimberScreen joist = screened(shell, "G-J03");
    CHECK(joist.span == Approx(span));
    CHECK(joist.bending == Approx(w * span * span / 8 / 540'000)); // over the beam as in a simple span
    CHECK(joist.shear == Approx(1.5 * 0.625 * w * span / 18'000)); // 5/8 w L beside the beam
    CHECK(joist.bearing == Approx(std::max(1.25 * w * span / (100 * 200), w * span / 2 / (100 * 80))));
}

TEST_CASE(
    "Trimmed joists, trimmers and joists beside a stair are screened with what the others lay on them") {
    const Shell shell = with_stair();
    const Layout layout = laid(shell);
    const FloorScreen all = screen_floors(shell, layout);
    CHECK(all.timbers.size() == layout.timbers.size());
    // The joist at 1800 from wall A: 900 clear, 80 in the wall and 0.4 x 100 in the trimmer; its strip from
    // 1450 to 2400.
    const TimberScreen trimmed = screen_of(all, layout, "G-J04");
    const double span = 900 + 60, w = 475 * (live + dead) + own_weight(100, 180), end = w * span / 2;
    CHECK(trimmed.span == Approx(span)); // more than the clear span and the smaller of the two bearings
    CHECK(trimmed.total == Approx(w));
    // Its end is notched to 3/4: V = (2/3 F'v b dn)(dn / d)^2 (NDS 2018, 3.4.3.2, second-hand).
    CHECK(trimmed.shear == Approx(1.5 * end / (100 * 135) * 16 / 9));
    CHECK(trimmed.bearing == Approx(end / (100 * 40)));
    const TimberScreen trimmer = screen_of(all, layout, "G-T01");
    REQUIRE(trimmer.points.size() == 2);
    for (const PointLoad &p : trimmer.points)
        if (p.at == Approx(300))
            CHECK(p.force == Approx(end)); // the trimmer starts at the side of the joist at 1450
    const TimberScreen beside = screen_of(all, layout, "G-J03");
    REQUIRE(beside.points.size() == 2);
    std::vector<double> places{beside.points[0].at, beside.points[1].at};
    std::sort(places.begin(), places.end());
    CHECK(places[0] == Approx(950));
    CHECK(places[1] == Approx(2250));
    // More than its own strip alone would bend it, and its housings weaken it: 40 of 100 wide.
    CHECK(beside.deflection > 5 * beside.live * std::pow(beside.span, 4) / (384 * elasticity * 48.6e6) * 1.2);
    SpanLoad on_it{beside.span, beside.total, beside.points};
    for (PointLoad &p : on_it.points)
        p.at += 40; // from the middle of the bearing
    CHECK(beside.bending == Approx(largest_moment(on_it) / (0.6 * 540'000)));
}

TEST_CASE("What trimmers lay on the joists beside a stair is all that lies on them") {
    const Shell shell = with_stair();
    const Layout layout = laid(shell);
    const FloorScreen all = screen_floors(shell, layout);
    double on_joists = 0, on_trimmers = 0;
    for (const TimberScreen &s : all.timbers) {
        const TimberUse use = layout.timbers[s.timber].use;
        double sum = 0;
        for (const PointLoad &p : s.points)
            sum += p.force;
        (use == TimberUse::trimmer ? on_trimmers : on_joists) += sum;
        if (use == TimberUse::trimmer) on_trimmers += s.total * s.span;
    }
    CHECK(on_trimmers > 0);
    CHECK(on_joists == Approx(on_trimmers));
}

TEST_CASE("A tailed end bears and shears by its neck") {
    Shell shell = test::floored_and_loaded();
    shell.floors[0].pocket = PocketKind::tailed;
    shell.floors[0].tail = Slope::rise_per_run(1.0 / 8);
    const TimberScreen s = screened(shell, "G-J03");
    const double end = s.total * s.span / 2; // neck: 100 - 2 x 80 / 8
    CHECK(s.bearing == Approx(end / (80 * 80)));
    CHECK(s.shear == Approx(1.5 * end / (80 * 180)));
}

TEST_CASE("Loads that are not stated are told: none live, no screen; none dead, 0.5 kPa") {
    Shell shell = test::floored_and_loaded();
    CHECK_FALSE(told(shell, "dead-load-not-stated"));
    const TimberScreen stated = screened(shell, "G-J03");
    shell.floors[0].dead_load.reset(); // 10 lb/ft2 = 0.479 kPa (IRC R502.3.1, from memory), rounded up
    CHECK(told(shell, "dead-load-not-stated"));
    CHECK(screened(shell, "G-J03").total == Approx(stated.total));
    CHECK_THAT(test::english(screen_floors(shell, laid(shell)).basis, shell.units),
               ContainsSubstring("none is stated"));
    shell.floors[0].live_load.reset();
    CHECK(told(shell, "floor-not-screened"));
    CHECK(screen_floors(shell, laid(shell)).timbers.empty());
}

TEST_CASE("The screen says what its elasticity is, where it comes from and what contradicts it") {
    Shell shell = test::floored_and_loaded();
    const std::string basis = test::english(screen_floors(shell, laid(shell)).basis, shell.units);
    CHECK_THAT(basis, ContainsSubstring("mean of small clear green eastern hemlock, no design value") &&
                          ContainsSubstring("second-hand") && ContainsSubstring("licensed professional"));
    shell.wood.species = "white spruce";
    CHECK_THAT(test::english(screen_floors(shell, laid(shell)).basis, shell.units),
               ContainsSubstring("from memory") && ContainsSubstring("may be exchanged"));
    shell.wood.species = "unobtainium";
    CHECK(screen_floors(shell, laid(shell)).timbers.empty());
    CHECK(told(shell, "species-unknown"));
}

TEST_CASE("A joist that bends more than a 360th part is told, one that does not is not") {
    // IRC R301.7, from memory. By hand: the joist of the first case bends 7.57 mm of 3680 / 360 = 10.2.
    Shell shell = test::floored_and_loaded();
    CHECK(screened(shell, "G-J03").deflection == Approx(7.57).margin(0.005));
    CHECK_FALSE(told(shell, "floor-springy"));
    shell.floors[0].live_load = 1.9 * 10.2 / 7.5;
    CHECK(told(shell, "floor-springy"));
}

TEST_CASE(
    "A joist that bends by a hair too much is told with the digits that show it, in the shell's units") {
    Shell shell = test::floored_and_loaded();
    const double limit = screened(shell, "G-J03").span / 360, at_1_9 = screened(shell, "G-J03").deflection;
    shell.floors[0].live_load = 1.9 * limit / at_1_9 * 1.001; // 0.01 mm over 10.2 mm
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        shell.units = units;
        const Layout layout = laid(shell);
        Findings findings;
        review_floors(shell, layout, bodies_of(layout), findings);
        const auto found = std::find_if(findings.begin(), findings.end(),
                                        [](const Finding &f) { return f.code == "floor-springy"; });
        REQUIRE(found != findings.end());
        const std::string told = test::message(*found, units);
        INFO(told);
        const auto between = [&](const std::string &from, const std::string &to) {
            const std::size_t begin = told.find(from) + from.size();
            return told.substr(begin, told.find(to, begin) - begin);
        };
        CHECK(between("it would bend ", " under") != between("from memory) is ", ". A screen"));
        CHECK_THAT(told, ContainsSubstring(units == UnitSystem::metric ? " mm" : " in under"));
    }
}

TEST_CASE("The screen of a shell in feet and inches speaks of pounds, and names no allowable stress") {
    Shell shell = test::floored_and_loaded();
    shell.units = UnitSystem::imperial;
    shell.floors[0].live_load = 40 * 0.45359237 * 9.80665 / (0.3048 * 0.3048) / 1000;
    shell.floors[0].dead_load.reset();
    const std::string basis = test::english(screen_floors(shell, laid(shell)).basis, shell.units);
    CHECK_THAT(basis, ContainsSubstring("live 40 psf, dead 10.44 psf") &&
                          ContainsSubstring(" psi is a mean of") && !ContainsSubstring("kPa") &&
                          !ContainsSubstring("MPa"));
    CHECK_THAT(basis,
               ContainsSubstring("No allowable stress is published") && ContainsSubstring("licensed person"));
}

TEST_CASE(
    "A joist's end bears on the wood that a tapered log has there, not on what the wall's face promises") {
    // By hand: logs 200 wide at the butt and 160 at the tip stand up to 20 behind the wall's face, so of 80
    // asked for 60 to 80 are left; the least at the joist that lies nearest to a tip. Bearing stress is force
    // by area.
    Shell shell = test::floored_and_loaded();
    const double before = screened(shell, "G-J01").bearing;
    shell.logs.butt_width = shell.thickness;
    shell.logs.tip_width = Length::mm(shell.thickness.mm() - 40);
    const Layout layout = laid(shell);
    for (const Timber &t : layout.timbers)
        for (const End end : {End::datum, End::far}) {
            const Piece &own = layout.pieces[t.piece];
            const std::string &tag = own.below[end == End::datum ? 0 : 1];
            const auto log = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                          [&](const Piece &p) { return p.tag == tag; });
            REQUIRE(log != layout.pieces.end());
            const FloorPlace &floor = layout.floors.front();
            const Vec2 at = end == End::datum ? t.from : t.to;
            const double x = log->frame.to_local(floor.frame.to_world({at.x, at.y, 0})).x;
            const double from_butt = (log->butt_at_datum ? x : log->blank.length - x) + own.blank.width / 2;
            const Bearing bearing = bearing_of(layout, t, end);
            CHECK(bearing.gap == Approx(20 * from_butt / log->blank.length).margin(0.01));
            CHECK(bearing.length == Approx(80 - bearing.gap));
        }
    CHECK(screened(shell, "G-J01").bearing > before * 1.02);
    shell.floors[0].bearing = Length::mm(45);
    CHECK(told(shell, "bearing-short"));
}

TEST_CASE("Wane at the height of a joist's bed takes from what it bears on") {
    Shell shell = test::floored_and_loaded();
    shell.floors[0].level = Length::mm(600);
    shell.logs.diameter = Length::mm(222);
    const Layout layout = laid(shell);
    const Timber &t = layout.timbers.front();
    const Piece &own = layout.pieces[t.piece];
    const auto log = std::find_if(layout.pieces.begin(), layout.pieces.end(),
                                  [&](const Piece &p) { return p.tag == own.below[0]; });
    REQUIRE(log != layout.pieces.end());
    // By Pythagoras: half the chord of a 222 circle about the log's middle, at the height of the bed.
    const double up = own.frame.origin.z - (log->frame.origin.z + log->blank.height / 2);
    const double half = std::sqrt(111 * 111 - up * up);
    REQUIRE(half < 90);
    CHECK(bearing_of(layout, t, End::datum).gap == Approx(shell.thickness.mm() / 2 - half).margin(0.01));
}

TEST_CASE("An end that bears on 38 mm is enough, 37.9 is told") {
    // Ontario Building Code, joist end bearing article, seen.
    Shell shell = test::floored_and_loaded();
    shell.floors[0].bearing = Length::mm(38);
    CHECK_FALSE(told(shell, "bearing-short"));
    shell.floors[0].bearing = Length::mm(37.9);
    CHECK(told(shell, "bearing-short"));
}

TEST_CASE("Wood cut from under a tapered joist is told where it is more than a code's notch") {
    // IRC R502.8.1, second-hand: a quarter of the height at an end, a sixth elsewhere. The trimmer's housing
    // is set out for the least high joist: at a butt of 180 against a tip of 150 it leaves 112.5, which
    // cuts 67.5 of 180.
    Shell shell = with_stair();
    CHECK_FALSE(told(shell, "notch-deep"));
    shell.floors[0].tip_height = Length::mm(150);
    CHECK(told(shell, "notch-deep"));
}

TEST_CASE("Of any floor every timber is screened, with figures that a person could hold against a table") {
    int screens = 0;
    CHECK(rc::check([&] {
        Shell shell = test::any_fitted_shell();
        shell.wood.species = "eastern hemlock";
        for (Floor &floor : shell.floors)
            floor.live_load = 1.9;
        const Layout layout = lay_out(shell);
        if (has_errors(layout.findings)) return; // counted below
        const FloorScreen all = screen_floors(shell, layout);
        RC_ASSERT(all.timbers.size() == layout.timbers.size());
        for (const TimberScreen &s : all.timbers) {
            const Timber &t = layout.timbers[s.timber];
            const double longest = *std::max_element(t.spans.begin(), t.spans.end());
            RC_ASSERT(s.span > 0 && s.span < longest + 2 * 2000);
            RC_ASSERT(s.total > 0 && std::isfinite(s.deflection) && s.deflection >= 0);
            // No end bears less than its share of what lies on the timber.
            double on_it = s.total * (length(t.to - t.from));
            for (const PointLoad &p : s.points)
                on_it += p.force;
            const double widest = std::max(s.width, layout.pieces[t.piece].blank.width);
            double borne = widest * (t.bearing_from + t.bearing_to);
            for (const TimberRest &rest : t.rests)
                borne += widest * rest.width;
            RC_ASSERT(s.bearing > on_it / borne * 0.999);
            RC_ASSERT(s.bending > 0 && std::isfinite(s.bending) && s.shear > 0 && std::isfinite(s.shear));
            ++screens;
        }
    }));
    INFO(screens);
    CHECK(screens > 100); // enough of the random floors can be built
}
