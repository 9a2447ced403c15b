#include "kernel/measure/load.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

using namespace roundlay;

TEST_CASE("loads are read in kilopascals and in pounds on a square foot") {
    // 1 lbf/ft2 = 47.88026 Pa (NIST SP 811, appendix B.8, from memory)
    CHECK(*parse_load("40 psf") == Approx(40 * 0.04788026).epsilon(1e-7));
    CHECK(*parse_load(" 40lb/ft2 ") == *parse_load("40 psf"));
    CHECK(*parse_load("40 lb/ft\u00B2") == *parse_load("40 PSF"));
    CHECK(*parse_load("1.9 kPa") == 1.9);
    CHECK(*parse_load("1.9 kN/m2") == 1.9);
    CHECK(*parse_load("40", UnitSystem::imperial) == *parse_load("40 psf"));
    CHECK(*parse_load("1.9", UnitSystem::metric) == 1.9);
    for (const char *wrong :
         {"", "40", "psf", "40 psi", "40 psf live", "nan psf", "inf kPa", "1,9 kPa", "40 40 psf"}) {
        INFO(wrong);
        CHECK_FALSE(parse_load(wrong));
    }
    CHECK(mpa_per_psi == Approx(0.006894757).epsilon(1e-6)); // the same source
    CHECK(n_per_mm_per_plf == Approx(0.01459390).epsilon(1e-6));
}

TEST_CASE("a load is spelled in the unit that it was stated in, and reads back to the very same") {
    CHECK(spell_load(*parse_load("40 psf"), UnitSystem::imperial) == "40 psf");
    CHECK(spell_load(*parse_load("40 psf"), UnitSystem::metric) == "40 psf");
    CHECK(spell_load(1.9, UnitSystem::metric) == "1.9 kPa");
    CHECK(spell_load(1.9, UnitSystem::imperial) == "1.9 kPa");
    CHECK(print_load(*parse_load("40 psf"), UnitSystem::metric) == "1.915 kPa");
    CHECK(print_load(1.9, UnitSystem::imperial) == "39.68 psf");
    CHECK(rc::check([] {
        const double figure = *rc::gen::inRange(1, 50'000'001) / 1e6;
        const double kpa = *rc::gen::element(figure, figure * kpa_per_psf);
        const UnitSystem units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
        RC_ASSERT(parse_load(spell_load(kpa, units)) == std::optional(kpa));
    }));
}
