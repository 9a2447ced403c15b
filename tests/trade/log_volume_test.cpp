#include "kernel/measure/measure.h"
#include "kernel/trade/log_volume.h"
#include "tests/support/catch.h"

using namespace roundlay;

TEST_CASE("Smalian's volumes match the worked examples") {
    // Worked examples of a university forestry text, seen: 10 and 12 in, 16 ft; 25 and 29 cm, 5 m.
    CHECK(smalian(area_of_diameter(10.0 / 12), area_of_diameter(1), 16) == Approx(10.647).margin(0.0005));
    CHECK(smalian(area_of_diameter(0.25), area_of_diameter(0.29), 5) == Approx(0.287848).margin(0.0000005));
}

TEST_CASE("the area of a round of d inches is 0.00545415 d squared in square feet") {
    CHECK(area_of_diameter(1.0 / 12) == Approx(0.00545415).margin(5e-9)); // forestry constant, derived
}

TEST_CASE(
    "a log of 10 in at its small end grows to 12 in over 16 ft, and is no less than the worked example's") {
    // 1/2 in in 4 ft as in the International rule (USDA program, seen): 16 ft give 2 in, which is the
    // example's log.
    constexpr double mm3_per_ft3 = mm_per_foot * mm_per_foot * mm_per_foot;
    CHECK(tapered_log_volume(10 * mm_per_inch, 16 * mm_per_foot) / mm3_per_ft3 ==
          Approx(10.647).margin(0.0005));
}

TEST_CASE("a stick of 3 by 4 needs a round of 5") {
    CHECK(least_round(3, 4) == 5); // Pythagoras, derived
}
