#include "kernel/measure/measure.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>
#include <string>

using namespace roundlay;

namespace {

/// Lengths of every order of size that is met in a shell, both signs, dense near the round numbers.
rc::Gen<double> any_millimetres() {
    return rc::gen::oneOf(
        rc::gen::map(rc::gen::inRange<long long>(-20'000'000, 20'000'000),
                     [](long long v) { return v / 1000.0; }),
        rc::gen::map(rc::gen::inRange<long long>(-64 * 1200, 64 * 1200),
                     [](long long v) { return v * 25.4 / 64; }),
        rc::gen::map(rc::gen::inRange<long long>(-12'000, 12'000), [](long long v) { return v * 25.4 / 12; }),
        rc::gen::map(rc::gen::inRange<long long>(-900'000'000'000'000'000, 900'000'000'000'000'000),
                     [](long long v) { return static_cast<double>(v) * 1e-9; }));
}

double must_read(const std::string &text) {
    const auto read = parse_length(text);
    if (!std::holds_alternative<Length>(read)) RC_FAIL("not read back: " + text);
    return std::get<Length>(read).mm();
}

/// Half a part of print; beside it the band that counts as a tie, and what two doubles may be off.
void check_within(double mm, double back, double part) {
    RC_ASSERT(std::abs(back - mm) <= part * (0.5 + 1e-9) + 2e-15 * std::abs(mm));
}

rc::Gen<std::string> any_bytes() {
    return rc::gen::container<std::string>(
        rc::gen::map(rc::gen::inRange(0, 256), [](int b) { return static_cast<char>(b); }));
}

/// Made of what measures are made of, so that most of the reader is reached.
rc::Gen<std::string> nearly_a_measure() {
    const auto part = rc::gen::elementOf(std::vector<std::string>{
        "0",      "1",      "12",     "7",          "3/16", "1/0",    "/",     ".",      "-",        "+",
        " ",      "  ",     "'",      "\"",         "''",   "mm",     "cm",    "m",      "in",       "in.",
        "ft",     "feet",   "inches", ":",          "deg",  "\u00b0", "level", "\u00bd", "\u2033",   "\u2032",
        "\u2019", "\u00a0", "over",   "9999999999", "nan",  "e5",     ",",     "\xc2",   "\xe2\x80", "\x00"});
    return rc::gen::map(rc::gen::container<std::vector<std::string>>(part),
                        [](const std::vector<std::string> &parts) {
                            std::string text;
                            for (const std::string &p : parts)
                                text += p;
                            return text;
                        });
}

void check_survives(const std::string &text) {
    for (int kind = 0; kind < 2; ++kind) {
        const auto refused = kind == 0 ? std::holds_alternative<MeasureError>(parse_length(text))
                                       : std::holds_alternative<MeasureError>(parse_slope(text));
        if (!refused) continue;
        const MeasureError error = kind == 0 ? std::get<MeasureError>(parse_length(text))
                                             : std::get<MeasureError>(parse_slope(text));
        RC_ASSERT(error.offset <= text.size());
        RC_ASSERT(!error.message.empty());
        RC_ASSERT(!error.expected.empty());
    }
    if (const auto read = parse_length(text); const auto *length = std::get_if<Length>(&read))
        RC_ASSERT(std::abs(length->mm()) <= 1e9);
    if (const auto read = parse_slope(text); const auto *slope = std::get_if<Slope>(&read))
        RC_ASSERT(std::abs(slope->ratio()) <= 10);
}

} // namespace

TEST_CASE("Inches read back within half a part, for every denominator") {
    CHECK(rc::check([] {
        const double mm = *any_millimetres();
        const bool feet = *rc::gen::arbitrary<bool>();
        for (int denominator = 1; denominator <= 64; ++denominator) {
            const std::string text = print_length(
                Length::mm(mm), {.system = UnitSystem::imperial, .denominator = denominator, .feet = feet});
            check_within(mm, must_read(text), 25.4 / denominator);
        }
    }));
}

TEST_CASE("Millimetres read back within half a part, for every number of decimals") {
    CHECK(rc::check([] {
        const double mm = *any_millimetres();
        for (int decimals = 0; decimals <= 6; ++decimals)
            check_within(mm, must_read(print_length(Length::mm(mm), {.decimals = decimals})),
                         std::pow(10.0, -decimals));
    }));
}

TEST_CASE("Printing what was read from print gives the same text") {
    CHECK(rc::check([] {
        const Length length = Length::mm(*any_millimetres());
        const LengthStyle style{.system = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial),
                                .denominator = *rc::gen::inRange(1, 65),
                                .feet = *rc::gen::arbitrary<bool>(),
                                .decimals = *rc::gen::inRange(0, 7)};
        const std::string text = print_length(length, style);
        RC_ASSERT(print_length(Length::mm(must_read(text)), style) == text);
    }));
}

TEST_CASE("Fractions are reduced, inches stay under a foot, and nothing is minus zero") {
    CHECK(rc::check([] {
        const int denominator = 1 << *rc::gen::inRange(0, 7);
        const std::string text = print_length(Length::mm(*any_millimetres()),
                                              {.system = UnitSystem::imperial, .denominator = denominator});
        if (const auto bar = text.find('/'); bar != std::string::npos) {
            const std::size_t begin = text.find_last_of(" -", bar);
            const int over = std::stoi(text.substr(begin == std::string::npos ? 0 : begin + 1));
            const int under = std::stoi(text.substr(bar + 1));
            RC_ASSERT(over % 2 == 1);
            RC_ASSERT(over < under);
            RC_ASSERT(denominator % under == 0);
        }
        if (const auto mark = text.find('\''); mark != std::string::npos)
            RC_ASSERT(std::stoi(text.substr(mark + 2)) < 12);
        RC_ASSERT(text != "-0\"");
        RC_ASSERT(text.rfind("-0'", 0) == std::string::npos);
    }));
}

TEST_CASE("A minus in front turns the value over, in reading and in printing") {
    CHECK(rc::check([] {
        const double mm = std::abs(*any_millimetres());
        const LengthStyle style{.system = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial)};
        const std::string text = print_length(Length::mm(mm), style);
        RC_ASSERT(must_read("-" + text) == -must_read(text));
        RC_ASSERT(must_read("+" + text) == must_read(text));
        const std::string turned = print_length(Length::mm(-mm), style);
        RC_ASSERT(turned == (must_read(text) == 0 ? text : "-" + text));
    }));
}

TEST_CASE("No bytes whatever bring the reader down") {
    CHECK(rc::check([] { check_survives(*any_bytes()); }));
    CHECK(rc::check([] { check_survives(*nearly_a_measure()); }));
}
