#include "kernel/measure/spelling.h"
#include "kernel/measure/tidied.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>
#include <vector>

using namespace roundlay;

TEST_CASE("What sums leave in the last digits is tidied, and nothing else") {
    CHECK(tidied(Length::feet(36) - Length::feet(12) - Length::feet(12)) == Length::feet(12));
    CHECK(tidied(Length::mm(914.3999999999996)) == Length::feet(3));
    CHECK(tidied(Length::mm(0.1) + Length::mm(0.2)) == Length::mm(0.3));
    CHECK(tidied(Length::mm(1000.0 / 3)).mm() == 1000.0 / 3);
    CHECK(tidied(Length::mm(10.0002)) == Length::mm(10.0002));
}

namespace {

constexpr auto metric = UnitSystem::metric, imperial = UnitSystem::imperial;

struct Spelled {
    double mm;
    UnitSystem system;
    const char *text;
};

void check_spelled(const std::vector<Spelled> &rows) {
    for (const Spelled &row : rows)
        CHECK(spell_length(Length::mm(row.mm), row.system) == row.text);
}

} // namespace

TEST_CASE("Lengths are spelled as a person would write them") {
    check_spelled({
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
    });
}

namespace {

double typed(const std::string &text) {
    return std::get<Length>(parse_length(text)).mm();
}

} // namespace

TEST_CASE("A spelled length that a person could have typed reads back to the same double") {
    CHECK(rc::check([] {
        const double value =
            *rc::gen::oneOf(rc::gen::map(rc::gen::inRange(-100'000'000, 100'000'000),
                                         [](int v) { return static_cast<double>(v) / 1000; }),
                            rc::gen::map(rc::gen::inRange(-100000, 100000),
                                         [](int v) { return typed(std::to_string(v) + "/3 in"); }),
                            rc::gen::map(rc::gen::inRange(-100000, 100000),
                                         [](int v) { return typed(std::to_string(v) + "/64 in"); }));
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
            const auto read = parse_length(spell_length(Length::mm(value), system));
            RC_ASSERT(std::holds_alternative<Length>(read));
            RC_ASSERT(std::get<Length>(read).mm() == value);
        }
    }));
}

namespace {

/// Halves down to 64ths, thirds and twelfths of an inch, and no more decimals than the place of a hair asks
/// for.
bool can_be_typed(const std::string &text) {
    const std::size_t point = text.find('.');
    if (point == std::string::npos) return text.size() < 24;
    return text.find(' ', point) - point - 1 <= 8;
}

} // namespace

TEST_CASE("Whatever was worked out is written as a person could have typed it, to a hair") {
    check_spelled({
        {1727.1999999999998, imperial, "5 ft 8 in"},
        {1727.1999999999998, metric, "1727.2 mm"},
        {219.99999999999997, imperial, "220 mm"},
        {2999.3609000000006, imperial, "2999.3609 mm"},
        {440.26666666666677, imperial, "1 ft 5 1/3 in"},
        {5638.1557249999996, metric, "5638.155725 mm"},
        {0.30000000000000004, metric, "0.3 mm"},
    });
    CHECK(rc::check([] {
        const double value =
            static_cast<double>(*rc::gen::inRange<long long>(-102'400'000'000'000, 102'400'000'000'000)) /
            1024e6;
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
            const std::string text = spell_length(Length::mm(value), system);
            RC_ASSERT(can_be_typed(text));
            const auto read = parse_length(text);
            RC_ASSERT(std::holds_alternative<Length>(read));
            RC_ASSERT(std::abs(std::get<Length>(read).mm() - value) <= 1e-6);
            RC_ASSERT(spell_length(std::get<Length>(read), system) == text);
        }
    }));
}

TEST_CASE("A spelled slope reads back to the same slope") {
    CHECK(spell_slope(Slope()) == "level");
    CHECK(spell_slope(Slope::rise_per_run(0.125)) == "1:8");
    CHECK(spell_slope(Slope::rise_per_run(0.31)) == "0.31");
    CHECK(spell_slope(Slope::rise_per_run(0.1 + 0.2)) == "0.3");
    CHECK(spell_slope(Slope::rise_per_run(0.125 + 1e-15)) == "1:8");
    CHECK(spell_slope(Slope::rise_per_run(-1 / 7.5)) == "-1:7.5");
    CHECK(spell_slope(Slope::degrees(7)) == "7 deg");
    CHECK(spell_slope(Slope::degrees(-7.125)) == "-7.125 deg");
    CHECK(rc::check([] {
        const Slope typed = Slope::degrees(*rc::gen::inRange(-840'000, 840'000) / 10'000.0);
        RC_ASSERT(std::get<Slope>(parse_slope(spell_slope(typed))) == typed);
    }));
    CHECK(rc::check([] {
        const double ratio =
            static_cast<double>(*rc::gen::inRange<long long>(-1'000'000'000'000'000, 1'000'000'000'000'000)) /
            1.1e14;
        const auto read = parse_slope(spell_slope(Slope::rise_per_run(ratio)));
        RC_ASSERT(std::holds_alternative<Slope>(read));
        RC_ASSERT(std::abs(std::get<Slope>(read).ratio() - ratio) <= 1e-10);
    }));
}
