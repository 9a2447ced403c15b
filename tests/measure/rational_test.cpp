#include "kernel/measure/character.h"
#include "kernel/measure/rational.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

using namespace roundlay;

namespace {

Rational fraction(WholeNumber over, WholeNumber under) {
    return Rational::of(over, under).value();
}

constexpr WholeNumber power(int exponent) {
    return exponent == 0 ? 1 : 10 * power(exponent - 1);
}

} // namespace

TEST_CASE("Fractions are reduced and keep their sign above the bar") {
    CHECK(fraction(6, -8).numerator() == -3);
    CHECK(fraction(6, -8).denominator() == 4);
    CHECK(fraction(0, 5).is_zero());
    CHECK(fraction(10, 5).is_whole());
    CHECK(sum(fraction(1, 3), fraction(1, 6))->nearest() == 0.5);
    CHECK(product(fraction(-2, 3), fraction(3, 4))->nearest() == -0.5);
    CHECK(quotient(fraction(1, 2), fraction(-1, 4))->nearest() == -2);
}

TEST_CASE("What leaves the exact range is refused, never rounded") {
    CHECK_FALSE(Rational::of(1, 0));
    CHECK_FALSE(Rational::of(power(37), 1));
    CHECK_FALSE(Rational::of(1, power(37)));
    CHECK(Rational::of(power(36), power(36)));
    CHECK_FALSE(sum(fraction(1, power(30)), fraction(1, power(30) + 1)));
    CHECK_FALSE(product(fraction(power(20), 1), fraction(power(20), 1)));
    CHECK_FALSE(quotient(fraction(1, 1), fraction(0, 1)));
}

TEST_CASE("The nearest double is the one that a correctly rounding division gives") {
    // Whole numbers up to 2^53 are doubles, and IEEE 754 division of two doubles rounds correctly.
    CHECK(rc::check([] {
        const auto over = *rc::gen::inRange<std::int64_t>(-(1LL << 53), 1LL << 53);
        const auto under = *rc::gen::inRange<std::int64_t>(1, 1LL << 53);
        RC_ASSERT(fraction(over, under).nearest() == static_cast<double>(over) / static_cast<double>(under));
    }));
}

TEST_CASE("The nearest double of a decimal is the one that the C library reads") {
    CHECK(rc::check([] {
        const auto high = *rc::gen::inRange<std::int64_t>(0, 1'000'000'000'000'000'000);
        const auto low = *rc::gen::inRange<std::int64_t>(0, 1'000'000'000'000);
        const int decimals = *rc::gen::inRange(0, 31);
        const WholeNumber digits = WholeNumber(high) * power(12) + low;
        char text[80];
        std::snprintf(text, sizeof text, "%lld%012llde-%d", static_cast<long long>(high),
                      static_cast<long long>(low), decimals);
        RC_ASSERT(fraction(digits, power(decimals)).nearest() == std::strtod(text, nullptr));
    }));
}

TEST_CASE("Ties go to the even double") {
    const WholeNumber one = 1;
    CHECK(fraction((one << 53) + 1, 1).nearest() == 9007199254740992.0);
    CHECK(fraction((one << 53) + 3, 1).nearest() == 9007199254740996.0);
    CHECK(fraction((one << 100) + (one << 47), 1).nearest() == std::ldexp(1.0, 100));
    CHECK(fraction((one << 100) + (one << 47) + 1, 1).nearest() == std::ldexp(1 + std::ldexp(1.0, -52), 100));
}

TEST_CASE("Characters are told from bytes that are none") {
    // Rows of Table 3-7 of the Unicode Standard, and just outside them.
    CHECK(character_length("a") == 1);
    CHECK(character_length("\u00e9x") == 2);
    CHECK(character_length("\u2033") == 3);
    CHECK(character_length("\U0001F332") == 4);
    CHECK(character_length("\xf4\x8f\xbf\xbf") == 4);
    const char *none[] = {"\x80",
                          "\xc0\x80",
                          "\xc1\xbf",
                          "\xe0\x9f\xbf",
                          "\xed\xa0\x80",
                          "\xf0\x8f\xbf\xbf",
                          "\xf4\x90\x80\x80",
                          "\xf5\x80\x80\x80",
                          "\xff",
                          "\xc3",
                          "\xe2\x80",
                          "\xe2\x80x",
                          "\xf0\x9f\x8cx",
                          ""};
    for (const char *bytes : none)
        CHECK(character_length(bytes) == 0);
    CHECK(byte_in_words('\xC3') == "byte 0xC3");
}
