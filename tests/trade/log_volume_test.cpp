#include "kernel/trade/log_volume.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <numbers>

using namespace roundlay;

namespace {

struct TaperedLog {
    double small, large, length; // in one unit
    double as() const { return area_of_diameter(small); }
    double al() const { return area_of_diameter(large); }
    double am() const { return area_of_diameter((small + large) / 2); } // middle of a cone
};

constexpr TaperedLog feet = {10.0 / 12, 1.0, 16}; // 10 and 12 in, 16 ft
constexpr TaperedLog metres = {0.25, 0.29, 5};    // 25 and 29 cm, 5 m

} // namespace

// Worked examples of a university forestry text, seen; rows without a mark of their own are these.
TEST_CASE("volumes of a 10 by 12 in log of 16 ft match the worked examples") {
    CHECK(smalian(feet.as(), feet.al(), feet.length) == Approx(10.647).margin(0.0005));
    CHECK(cone_frustum(feet.as(), feet.al(), feet.length) == Approx(10.588).margin(0.0005));
    // CONFLICT: printed 10.568, exact 10.56891, which rounds to 10.569.
    CHECK(neiloid_frustum(feet.as(), feet.al(), feet.length) == Approx(10.56891).margin(0.00001));
    CHECK(huber(feet.am(), feet.length) == Approx(10.55924).margin(0.00001)); // derived
    CHECK(newton(feet.as(), feet.am(), feet.al(), feet.length) ==
          Approx(10.58833).margin(0.00001)); // derived
}

TEST_CASE("volumes of a 25 by 29 cm log of 5 m match the worked examples") {
    CHECK(smalian(metres.as(), metres.al(), metres.length) == Approx(0.287848).margin(0.0000005));
    CHECK(cone_frustum(metres.as(), metres.al(), metres.length) == Approx(0.286801).margin(0.0000005));
    CHECK(neiloid_frustum(metres.as(), metres.al(), metres.length) == Approx(0.286452).margin(0.0000005));
    CHECK(huber(metres.am(), metres.length) == Approx(0.2862776).margin(0.00000005)); // derived
    CHECK(newton(metres.as(), metres.am(), metres.al(), metres.length) ==
          Approx(0.2868012).margin(0.00000005)); // derived
}

TEST_CASE("the area of a round of d inches is 0.00545415 d squared in square feet") {
    CHECK(area_of_diameter(1.0 / 12) == Approx(0.00545415).margin(5e-9)); // forestry constant, derived
}

TEST_CASE("the quarter girth measures 78.54 percent of a cylinder") {
    // Hoppus, forestry lecture notes, seen.
    const double d = 400, girth = std::numbers::pi * d;
    CHECK(quarter_girth(girth, 5000) / huber(area_of_diameter(d), 5000) == Approx(0.7854).margin(0.00005));
}

TEST_CASE("the beams out of a round have the textbook's proportions") {
    // Textbook strength of materials, derived.
    CHECK(largest_square(1) == Approx(0.7071068).margin(5e-8));
    CHECK(largest_square(1) * largest_square(1) / area_of_diameter(1) == Approx(0.6366198).margin(5e-8));
    CHECK(strongest_beam(1).width == Approx(0.5773503).margin(5e-8));
    CHECK(strongest_beam(1).height == Approx(0.8164966).margin(5e-8));
    CHECK(stiffest_beam(1).width == Approx(0.5).margin(5e-8));
    CHECK(stiffest_beam(1).height == Approx(0.8660254).margin(5e-8));
    CHECK(least_round(3, 4) == 5);
}

TEST_CASE("no beam out of a round is stronger or stiffer than those named so") {
    CHECK(rc::check([](unsigned char step) {
        const double angle = (step + 1) / 257.0 * std::numbers::pi / 2;
        const double b = std::cos(angle), h = std::sin(angle); // any rectangle in a round of 1
        const Section strong = strongest_beam(1), stiff = stiffest_beam(1);
        RC_ASSERT(b * h * h <= strong.width * strong.height * strong.height + 1e-12);
        RC_ASSERT(b * h * h * h <= stiff.width * stiff.height * stiff.height * stiff.height + 1e-12);
        RC_ASSERT(b * h <= largest_square(1) * largest_square(1) + 1e-12);
    }));
}

TEST_CASE("on any cone Newton is the frustum, Huber is under it and Smalian over it") {
    CHECK(rc::check([] {
        const double small = *rc::gen::inRange(100, 400), taper = *rc::gen::inRange(1, 300);
        const TaperedLog log = {small, small + taper, 5000};
        const double cone = cone_frustum(log.as(), log.al(), log.length);
        RC_ASSERT(std::abs(newton(log.as(), log.am(), log.al(), log.length) / cone - 1) < 1e-12);
        RC_ASSERT(huber(log.am(), log.length) < cone);
        RC_ASSERT(smalian(log.as(), log.al(), log.length) > cone);
    }));
}
