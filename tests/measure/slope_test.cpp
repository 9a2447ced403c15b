#include "kernel/measure/measure.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>

using namespace roundlay;

TEST_CASE("Slopes are read in every form that is used at the bench") {
    struct Row {
        const char *text;
        double ratio;
    };
    const Row rows[] = {
        {"1:8", 0.125},
        {"-1:8", -0.125},
        {"1 : 8", 0.125},
        {"1:7.5", 1 / 7.5},
        {"1 1/2:12", 0.125},
        {"1 in 8", 0.125},
        {"-1 in 8", -0.125},
        {"2 in in 6 in", 1.0 / 3},
        {"2\" in 6\"", 1.0 / 3},
        {"2\" over 6\"", 1.0 / 3},
        {"-2 in in 6 in", -1.0 / 3},
        {"25 mm in 200 mm", 0.125},
        {"1 in over 200 mm", 0.127},
        {"1/2 in in 1 ft", 1.0 / 24},
        {"1 in in 1' 6\"", 1.0 / 18},
        {"0.125", 0.125},
        {"1/8", 0.125},
        {"-0.125", -0.125},
        {"0", 0},
        {"level", 0},
        {" Level ", 0},
        {"0:8", 0},
        {"10:1", 10},
        {"45 deg", std::tan(std::acos(-1.0) / 4)},
        {"-45\u00b0", -std::tan(std::acos(-1.0) / 4)},
        {"45 degrees", std::tan(std::acos(-1.0) / 4)},
    };
    for (const Row &row : rows) {
        INFO(row.text);
        const auto read = parse_slope(row.text);
        REQUIRE(std::holds_alternative<Slope>(read));
        CHECK(std::get<Slope>(read).ratio() == row.ratio);
    }
}

TEST_CASE("Degrees and ratio agree with a table of tangents") {
    // tan 7.125 deg = 0.1250 and tan 30 deg = 0.5773502692 (any table of trigonometric functions).
    CHECK(Slope::degrees(7.125).ratio() == Approx(0.125).epsilon(1e-4));
    CHECK(Slope::degrees(30).ratio() == Approx(0.5773502692).epsilon(1e-9));
    CHECK(Slope::rise_per_run(0.5773502692).as_degrees() == Approx(30).epsilon(1e-9));
    CHECK(rc::check([] {
        const double angle = *rc::gen::inRange(-84000, 84000) / 1000.0;
        RC_ASSERT(std::abs(Slope::degrees(angle).as_degrees() - angle) < 1e-12);
    }));
}

TEST_CASE("What is no slope is refused with the place and what was expected") {
    struct Row {
        const char *text;
        std::size_t offset;
        const char *message;
    };
    const Row rows[] = {
        {"", 0, "the slope is empty"},
        {"steep", 0, "\"steep\" stands where a number should"},
        {"nan", 0, "\"nan\" stands where a number should"},
        {"level 3", 6, "'3' stands behind the end of the slope"},
        {"1:", 2, "a number is missing"},
        {"1:0", 2, "a slope needs a run over 0"},
        {"1:-8", 2, "'-' stands where a number should"},
        {"1:8 x", 4, "\"x\" stands behind the end of the slope"},
        {"11:1", 0, "the slope is steeper than 10:1 (84 degrees)"},
        {"-11", 0, "the slope is steeper than 10:1 (84 degrees)"},
        {"85 deg", 0, "the slope is steeper than 10:1 (84 degrees)"},
        {"90 deg", 0, "the slope is steeper than 10:1 (84 degrees)"},
        {"1000000 deg", 0, "the slope is steeper than 10:1 (84 degrees)"},
        {"7 deg 3", 6, "'3' stands behind the end of the slope"},
        {"2 in in 6", 8, "the number has no unit"},
        {"2 in 6 in", 5, "the rise is not followed by \"in\" and a run"},
        {"2 in", 4, "the rise is not followed by \"in\" and a run"},
        {"2 in in", 7, "a number is missing"},
        {"2 in in 0 in", 8, "a slope needs a run over 0"},
        {"2 in in -6 in", 8, "a slope needs a run over 0"},
        {"2 in in 6 in 1", 13, "'1' stands behind the end of the slope"},
        {"12 %", 3, "'%' is not a unit of length"},
        {"1234567890123456789012345678901", 0, "the number has too many digits to be read exactly"},
        {"0.000000000000000000000000000001:123456789012345678901234567890", 0,
         "the number has too many digits to be read exactly"},
    };
    for (const Row &row : rows) {
        INFO(row.text);
        const auto read = parse_slope(row.text);
        REQUIRE(std::holds_alternative<MeasureError>(read));
        const auto &error = std::get<MeasureError>(read);
        CHECK(error.message == row.message);
        CHECK(error.offset == row.offset);
        CHECK_FALSE(error.expected.empty());
    }
}

TEST_CASE("Slopes are printed as a run for each rise, to three figures") {
    struct Row {
        double ratio;
        const char *text;
    };
    const Row rows[] = {{0.125, "1:8"},
                        {-0.125, "-1:8"},
                        {0, "level"},
                        {0.3, "1:3.33"},
                        {1, "1:1"},
                        {2, "1:0.5"},
                        {10, "1:0.1"},
                        {1.0 / 7.125, "1:7.13"},
                        {1.0 / 1234, "1:1234"},
                        {1.0 / 12.5, "1:12.5"},
                        {1e-9, "level"},
                        {-1e-9, "level"},
                        {1.0 / 100, "1:100"},
                        {1.0 / 9.996, "1:10"}};
    for (const Row &row : rows)
        CHECK(print_slope(Slope::rise_per_run(row.ratio)) == row.text);
}

TEST_CASE("A printed slope reads back to three figures") {
    CHECK(rc::check([] {
        const double ratio = *rc::gen::inRange(-100000, 100001) / 10000.0;
        const auto read = parse_slope(print_slope(Slope::rise_per_run(ratio)));
        RC_ASSERT(std::holds_alternative<Slope>(read));
        RC_ASSERT(std::abs(std::get<Slope>(read).ratio() - ratio) <= 0.0051 * std::abs(ratio));
    }));
}
