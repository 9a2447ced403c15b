#include "kernel/measure/spelling.h"
#include "kernel/measure/tidied.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

using namespace roundlay;

TEST_CASE("What sums leave in the last digits is tidied, and nothing else") {
    CHECK(tidied(Length::feet(36) - Length::feet(12) - Length::feet(12)) == Length::feet(12));
    CHECK(tidied(Length::mm(914.3999999999996)) == Length::feet(3));
    CHECK(tidied(Length::mm(0.1) + Length::mm(0.2)) == Length::mm(0.3));
    CHECK(tidied(Length::mm(1000.0 / 3)).mm() == 1000.0 / 3);
    CHECK(tidied(Length::mm(10.0002)) == Length::mm(10.0002));
}

TEST_CASE("Lengths are spelled as a person would write them") {
    struct Row {
        double mm;
        UnitSystem system;
        const char *text;
    };
    constexpr auto metric = UnitSystem::metric, imperial = UnitSystem::imperial;
    const Row rows[] = {
        {4876.8, imperial, "16 ft"},
        {3302, imperial, "10 ft 10 in"},
        {203.2, imperial, "8 in"},
        {38.1, imperial, "1 1/2 in"},
        {-38.1, imperial, "-1 1/2 in"},
        {220.13333333333333, imperial, "8 2/3 in"},
        {220.13333333333333, metric, "8 2/3 in"},
        {0, imperial, "0 in"},
        {0, metric, "0 mm"},
        {-0.0, metric, "0 mm"},
        {230, metric, "230 mm"},
        {38.1, metric, "38.1 mm"},
        {230, imperial, "230 mm"},
        {0.1, imperial, "0.1 mm"},
    };
    for (const Row &row : rows)
        CHECK(spell_length(Length::mm(row.mm), row.system) == row.text);
}

TEST_CASE("A spelled length reads back to the same double") {
    CHECK(rc::check([] {
        const double value = *rc::gen::oneOf(
            rc::gen::map(rc::gen::inRange<long long>(-1'000'000'000'000'000, 1'000'000'000'000'000),
                         [](long long v) { return static_cast<double>(v) / 1024e6; }),
            rc::gen::map(rc::gen::inRange(-100000, 100000), [](int v) { return v / 3.0 * 25.4; }),
            rc::gen::map(rc::gen::inRange(-100000, 100000), [](int v) { return v / 64.0 * 25.4; }));
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
            const auto read = parse_length(spell_length(Length::mm(value), system));
            RC_ASSERT(std::holds_alternative<Length>(read));
            RC_ASSERT(std::get<Length>(read).mm() == value);
        }
    }));
}

TEST_CASE("A spelled slope reads back to the same double") {
    CHECK(spell_slope(Slope()) == "level");
    CHECK(spell_slope(Slope::rise_per_run(0.125)) == "1:8");
    CHECK(spell_slope(Slope::rise_per_run(0.31)) == "0.31");
    CHECK(spell_slope(Slope::rise_per_run(-1 / 7.5)) == "-1:7.5");
    CHECK(rc::check([] {
        const double ratio =
            static_cast<double>(*rc::gen::inRange<long long>(-1'000'000'000'000'000, 1'000'000'000'000'000)) /
            1.1e14;
        const auto read = parse_slope(spell_slope(Slope::rise_per_run(ratio)));
        RC_ASSERT(std::holds_alternative<Slope>(read));
        RC_ASSERT(std::get<Slope>(read).ratio() == ratio);
    }));
}
