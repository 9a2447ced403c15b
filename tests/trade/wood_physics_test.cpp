// Against the Wood Handbook (USDA FPL). Marks: seen, second-hand, memory, derived; see kernel/trade/origin.h.
#include "kernel/trade/species.h"
#include "kernel/trade/weight.h"
#include "kernel/trade/wood_physics.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

using namespace roundlay;

namespace {

constexpr double kg_m3_per_lb_ft3 = 16.018463; // 0.45359237 kg over 0.3048^3 m3

const Species &species(const char *name) {
    return *std::get<const Species *>(find_species(name));
}

} // namespace

TEST_CASE("density matches the published table") {
    CHECK(density(0.60, 12) == Approx(672).margin(0.5));  // FPL-GTR-282 Table 4-6a, second-hand
    CHECK(density(0.40, 100) == Approx(800).margin(0.5)); // FPL-GTR-282 Table 4-6a, second-hand
    CHECK(density(0.40, 12) == Approx(448).margin(0.5));  // forestry text citing FPL-GTR-190 ch. 4, seen
    CHECK(density(0.40, 12) / kg_m3_per_lb_ft3 == Approx(27.97).margin(0.005)); // the same text, seen
}

TEST_CASE("density of white ash at 12 percent matches the worked example within half a percent") {
    // FPL-GTR-282 ch. 4 worked example, second-hand: printed 0.605 and 678. CONFLICT: its own Eq. 4-13 gives
    // 0.6027 and 675.0, which is what is computed here.
    CHECK(specific_gravity_at(0.55, 12) == Approx(0.605).epsilon(0.005));
    CHECK(density_at(0.55, 12) == Approx(678).epsilon(0.005));
    CHECK(specific_gravity_at(0.55, 12) == Approx(0.6027).margin(0.00005));
    CHECK(density_at(0.55, 12) == Approx(675.0).margin(0.05));
}

TEST_CASE("densities of green wood match those worked out from the published tables") {
    // Table 5-3 x Table 4-1 x Eq. 4-14 (FPL-GTR-282), derived.
    const struct {
        const char *name;
        double heart;
        double sap; // 0 = none worked out
    } cases[] = {
        {"Engelmann spruce", 498.3, 900.9},
        {"eastern hemlock", 748.6, 0},
        {"western hemlock", 777.0, 0},
        {"Douglas-fir coast", 616.5, 967.5},
        {"lodgepole pine", 535.8, 0},
        {"western larch", 739.2, 0},
        {"white oak", 984.0, 0},
    };
    for (const auto &c : cases) {
        const Species &s = species(c.name);
        CHECK(density_at(s.gravity.green, s.moisture->heart) == Approx(c.heart).margin(0.06));
        if (c.sap > 0) CHECK(density_at(s.gravity.green, *s.moisture->sap) == Approx(c.sap).margin(0.06));
    }
}

TEST_CASE("published shipping weights of green wood lie in the range that is printed") {
    // Average green shipping weights of the Oregon Wood Innovation Center, lb/ft3, seen. CONFLICT with
    // heart-only figures: they mix heart and sap, and western hemlock's 41 lies under even its
    // heartwood's 48.5.
    const struct {
        const char *name;
        double green;
    } cases[] = {{"Douglas-fir coast", 43},
                 {"western larch", 50},
                 {"Engelmann spruce", 36},
                 {"western hemlock", 41},
                 {"subalpine fir", 45}};
    for (const auto &c : cases) {
        INFO(c.name);
        const auto range = weigh(1e9, {c.name, {}});
        CHECK(c.green * kg_m3_per_lb_ft3 > range.low_kg);
        CHECK(c.green * kg_m3_per_lb_ft3 < range.high_kg);
    }
}

TEST_CASE(
    "air-dry shipping weights of five western woods match within a twentieth, but for two that conflict") {
    // The same table at 12 %, lb/ft3, seen, against Table 5-3a's gravity at 12 % x Eq. 4-14. CONFLICT:
    // subalpine fir's 28 is a quarter over the handbook's 22.4, Engelmann spruce's 27 a tenth over its 24.5.
    const struct {
        const char *name;
        double dry;
        bool agrees;
    } cases[] = {{"Douglas-fir coast", 34, true},
                 {"western larch", 36, true},
                 {"western hemlock", 31, true},
                 {"Engelmann spruce", 27, false},
                 {"subalpine fir", 28, false}};
    for (const auto &c : cases) {
        INFO(c.name);
        const double ours = density(species(c.name).gravity.at_12, 12) / kg_m3_per_lb_ft3;
        CHECK((std::abs(ours / c.dry - 1) < 0.05) == c.agrees);
        CHECK(std::abs(ours / c.dry - 1) < 0.21);
        // What is printed for a stated 12 % holds the published figure wherever the two agree.
        const auto range = weigh(1e9, {c.name, 12.0});
        const bool held = c.dry * kg_m3_per_lb_ft3 > range.low_kg && c.dry * kg_m3_per_lb_ft3 < range.high_kg;
        CHECK((held || !c.agrees));
    }
}

TEST_CASE(
    "gravity at 12 percent by the equation agrees with the table's own for every species within 4 percent") {
    // Eq. 4-13 from the green gravity against Table 5-3a's two columns (FPL-GTR-282 and 190; marks as in the
    // table).
    CHECK(all_species().size() == 17);
    for (const Species &s : all_species()) {
        INFO(s.name);
        CHECK(std::abs(specific_gravity_at(s.gravity.green, 12) / s.gravity.at_12 - 1) < 0.04);
    }
}

TEST_CASE("partial shrinkage matches the published tables") {
    // Table 4-3 x Eq. 4-9 (FPL-GTR-282), derived.
    CHECK(partial_shrinkage(species("Engelmann spruce").shrinkage.radial, 12) == Approx(2.28));
    CHECK(partial_shrinkage(species("Engelmann spruce").shrinkage.tangential, 12) == Approx(4.26));
    CHECK(partial_shrinkage(species("eastern hemlock").shrinkage.radial, 12) == Approx(1.80));
    CHECK(partial_shrinkage(species("eastern hemlock").shrinkage.tangential, 12) == Approx(4.08));
    CHECK(partial_shrinkage(species("Douglas-fir coast").shrinkage.tangential, 19) ==
          Approx(2.79).margin(0.005));
    CHECK(partial_shrinkage(species("western redcedar").shrinkage.radial, 12) == Approx(1.44));
    // Fibre saturation 30 %, FPL-GTR-190 p. 4-2, seen: nothing shrinks above it.
    CHECK(partial_shrinkage(7.1, 30) == 0);
    CHECK(partial_shrinkage(7.1, 150) == 0);
    CHECK(partial_shrinkage(7.1, 0) == 7.1);
}

TEST_CASE("the most moisture wood can hold matches the handbook's text") {
    // FPL-GTR-282 p. 4-3, second-hand: about 267 (its formula gives 268.4).
    CHECK(most_moisture(0.30) == Approx(267).epsilon(0.01));
    CHECK(most_moisture(0.30) == Approx(268.4).margin(0.05));
    // Same page: 44 printed. CONFLICT: its formula gives 46.2, which is what is computed here.
    CHECK(most_moisture(0.90) == Approx(46.2).margin(0.05));
}

TEST_CASE("wood of a gravity under 0.87 gets heavier with moisture and never heavier than full of water") {
    CHECK(rc::check([] {
        // Very dense wood swells faster than it takes up water: by the formula, from a gravity of 0.871 on.
        const double gravity = *rc::gen::inRange(25, 87) / 100.0;
        const double moisture = *rc::gen::inRange(0, 200) * 1.0;
        RC_ASSERT(density_at(gravity, moisture + 1) > density_at(gravity, moisture));
        // Full of water, a cubic metre of wood holds its walls and water in all the rest.
        const double full = 1000 * gravity + 1000 * (1 - gravity / 1.54);
        const double most = most_moisture(gravity);
        RC_ASSERT(std::abs(density_at(gravity, std::max(30.0, most)) - full) < 1e-6);
        if (moisture <= most) RC_ASSERT(density_at(gravity, moisture) <= full + 1e-6);
    }));
}
