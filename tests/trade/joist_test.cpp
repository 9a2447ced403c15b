#include "kernel/measure/measure.h"
#include "kernel/trade/joist.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>

using namespace roundlay;

namespace {

constexpr double mpa_per_psi = 4.4482216152605 / (25.4 * 25.4); // 1 lbf = 4.4482216152605 N exactly
constexpr double newton_per_lbf = 4.4482216152605;

double in(double v) {
    return v * mm_per_inch;
}

/// Pounds per square foot on joists so far apart (inches), as N/mm.
double line_load(double psf, double apart) {
    return psf * newton_per_lbf / (12 * mm_per_inch * 12 * mm_per_inch) * in(apart);
}

} // namespace

TEST_CASE("deflections match the formula's figures") {
    // FPL-GTR-282 Eq. 9-2, derived: b 0.1 m, h 0.3 m, L 4 m, W 5000 N, E 10 GPa, G 0.6 GPa.
    const JoistLoad load = {5000.0 / 4000, 4000};
    const JoistSection section = rectangular(100, 300);
    CHECK(deflection_by_bending(load, section, 10'000) == Approx(1.85185).margin(0.000005));
    CHECK(deflection_by_shear(load, section, 600) == Approx(0.16667).margin(0.000005));
}

TEST_CASE("sections have the textbook's properties") {
    // FPL-GTR-282 Eq. 9-13 and 9-14, second-hand: S = b h^2 / 6 and pi d^3 / 32, k = 3/2 and 4/3;
    // Eq. 9-2: A' = 5/6 b h and 9/40 pi d^2.
    const JoistSection r = rectangular(100, 200), o = round_section(200);
    CHECK(r.modulus == Approx(100 * 200.0 * 200 / 6));
    CHECK(r.inertia == Approx(r.modulus * 100));
    CHECK(o.modulus == Approx(3.14159265 * 8e6 / 32));
    CHECK(o.inertia == Approx(o.modulus * 100));
    CHECK(r.shear_factor == 1.5);
    CHECK(o.shear_factor == Approx(4.0 / 3));
    CHECK(o.shear_area / o.area == Approx(0.9));
    CHECK(r.shear_area / r.area == Approx(5.0 / 6));
}

TEST_CASE("a 6 x 8 in joist of 12 ft gives the figures worked out by hand") {
    // 24 in on centre, 40 + 10 psf, E 1.3e6 psi; a regression case of our own in inches and pounds, derived.
    const JoistSection section = rectangular(in(6), in(8));
    const JoistLoad all = {line_load(50, 24), in(144)}, live = {line_load(40, 24), in(144)};
    CHECK(moment(all) / newton_per_lbf / mm_per_inch == Approx(21'600));
    CHECK(bending_stress(all, section) / mpa_per_psi == Approx(337.5));
    CHECK(shear_stress(all, section) / mpa_per_psi == Approx(18.75));
    CHECK(bearing_stress(all, in(6), in(3)) / mpa_per_psi == Approx(33.33).margin(0.005));
    CHECK(deflection_by_bending(live, section, 1.3e6 * mpa_per_psi) / mm_per_inch ==
          Approx(0.11215).margin(0.00005));
}

TEST_CASE("spans match a published span table to the inch") {
    // IRC R502.3.1(2), 40 psf live and 10 psf dead, L/360, 16 in on centre, spruce-pine-fir No. 2, from
    // memory; E 1.4e6 psi, Fb 875 psi, repetitive factor 1.15, size factors 1.3, 1.2, 1.1, 1.0, dressed
    // sizes.
    const struct {
        double depth, size_factor;
        double table; // inches
    } rows[] = {{5.5, 1.3, 9 * 12 + 4},
                {7.25, 1.2, 12 * 12 + 3},
                {9.25, 1.1, 15 * 12 + 5},
                {11.25, 1.0, 17 * 12 + 10}};
    for (const auto &row : rows) {
        INFO(row.depth << " in deep");
        const JoistSection section = rectangular(in(1.5), in(row.depth));
        const double by_bending =
            span_by_bending(line_load(50, 16), section, 875 * 1.15 * row.size_factor * mpa_per_psi);
        const double by_deflection = span_by_deflection(line_load(40, 16), section, 1.4e6 * mpa_per_psi, 360);
        const double least = std::min(by_bending, by_deflection) / mm_per_inch;
        CHECK(std::abs(least - row.table) < 1);
    }
}

TEST_CASE("at its longest span a joist just reaches what limits it") {
    CHECK(rc::check([] {
        const JoistSection section = rectangular(*rc::gen::inRange(50, 300), *rc::gen::inRange(100, 400));
        const double w = *rc::gen::inRange(1, 100) / 10.0;
        const double by_stress = span_by_bending(w, section, 8);
        RC_ASSERT(std::abs(bending_stress({w, by_stress}, section) / 8 - 1) < 1e-12);
        const double by_bend = span_by_deflection(w, section, 9000, 360);
        RC_ASSERT(std::abs(deflection_by_bending({w, by_bend}, section, 9000) * 360 / by_bend - 1) < 1e-12);
    }));
}
