#include "kernel/measure/measure.h"
#include "tests/support/catch.h"

#include <limits>

using namespace roundlay;

TEST_CASE("Inches are printed as a carpenter writes them") {
    struct Row {
        double inches;
        int denominator;
        bool feet;
        const char *text;
    };
    const Row rows[] = {
        {0, 16, true, "0\""},
        {9, 16, true, "9\""},
        {9.5, 16, true, "9 1/2\""},
        {0.1875, 16, true, "3/16\""},
        {-0.1875, 16, true, "-3/16\""},
        {-3, 16, true, "-3\""},
        {12, 16, true, "1' 0\""},
        {130, 16, true, "10' 10\""},
        {130, 16, false, "130\""},
        {130.5, 16, false, "130 1/2\""},
        {90.5, 16, true, "7' 6 1/2\""},
        {-90.5, 16, true, "-7' 6 1/2\""},
        {48.1875, 16, true, "4' 0 3/16\""},
        {11.96875, 32, true, "11 31/32\""},
        {11.96875, 16, true, "1' 0\""},  // carried over, not 11 16/16 or 12"
        {23.984375, 16, true, "2' 0\""}, // 23 63/64
        {23.984375, 64, true, "1' 11 63/64\""},
        {0.03125, 16, true, "1/16\""}, // a tie goes away from zero
        {-0.03125, 16, true, "-1/16\""},
        {0.03, 16, true, "0\""},
        {-0.03, 16, true, "0\""}, // and never -0"
        {8.0 + 2.0 / 3, 3, true, "8 2/3\""},
        {8.0 + 2.0 / 3, 12, true, "8 2/3\""},
        {8.0 + 2.0 / 3, 16, true, "8 11/16\""},
        {8.5, 1, true, "9\""},
        {8.5, 0, true, "9\""}, // a denominator out of range is the nearest allowed one
        {8.0078125, 1000, true, "8 1/64\""},
    };
    for (const Row &row : rows) {
        INFO(row.inches << " in at 1/" << row.denominator);
        CHECK(print_length(Length::inches(row.inches), {.system = UnitSystem::imperial,
                                                        .denominator = row.denominator,
                                                        .feet = row.feet}) == row.text);
    }
}

TEST_CASE("Millimetres are printed with the decimals asked for") {
    struct Row {
        double mm;
        int decimals;
        bool with_unit;
        const char *text;
    };
    const Row rows[] = {
        {230, 0, true, "230 mm"},        {230, 0, false, "230"},
        {230.5, 0, true, "231 mm"},      {229.5, 0, true, "230 mm"},
        {-230.5, 0, true, "-231 mm"},    {-0.4, 0, true, "0 mm"},
        {-0.04, 1, true, "0.0 mm"},      {220.13333333333333, 1, true, "220.1 mm"},
        {0.05, 3, true, "0.050 mm"},     {999.96, 1, true, "1000.0 mm"},
        {1e9, 0, true, "1000000000 mm"}, {1e9, 6, true, "1000000000.000000 mm"},
        {0.15, 1, true, "0.2 mm"}, // though the double nearest to 0.15 lies below the tie
        {0.125, 2, true, "0.13 mm"},     {12.25, 12, true, "12.250000 mm"},
        {12.25, -1, true, "12 mm"},
    };
    for (const Row &row : rows) {
        INFO(row.mm << " mm with " << row.decimals << " decimals");
        CHECK(print_length(Length::mm(row.mm), {.decimals = row.decimals, .with_unit = row.with_unit}) ==
              row.text);
    }
}

TEST_CASE("What no shell can measure is still printed and never read back as something else") {
    const double values[] = {1e12, -1e300, std::numeric_limits<double>::infinity(),
                             std::numeric_limits<double>::quiet_NaN()};
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial})
        for (const double value : values) {
            const std::string text = print_length(Length::mm(value), {.system = system});
            INFO(text);
            CHECK_FALSE(text.empty());
            CHECK(std::holds_alternative<MeasureError>(parse_length(text)));
        }
}

TEST_CASE("Running dimensions are each rounded from the true value") {
    // Fifteen rounds of 8 2/3 in: the story pole must end at 10' 10" exactly, whatever was printed below.
    const Length pitch = Length::inches(26.0 / 3);
    const char *marks[] = {"8 11/16\"",    "1' 5 5/16\"",  "2' 2\"",       "2' 10 11/16\"", "3' 7 5/16\"",
                           "4' 4\"",       "5' 0 11/16\"", "5' 9 5/16\"",  "6' 6\"",        "7' 2 11/16\"",
                           "7' 11 5/16\"", "8' 8\"",       "9' 4 11/16\"", "10' 1 5/16\"",  "10' 10\""};
    for (int round = 1; round <= 15; ++round)
        CHECK(print_length(round * pitch, {.system = UnitSystem::imperial}) == marks[round - 1]);
}
