#include "kernel/document/compass.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

using namespace roundlay;

TEST_CASE("Headings are read from compass words, counter-clockwise from east") {
    struct Row {
        const char *text;
        double degrees;
    };
    const Row rows[] = {
        {"east", 0},
        {"North", 90},
        {"west", 180},
        {"SOUTH", 270},
        {"north-east", 45},
        {"northwest", 135},
        {"south west", 225},
        {"south_east", 315},
        {" east ", 0},
        {"30 deg north of east", 30},
        {"30\u00b0 north of east", 30},
        {"30 \u00b0 south of east", 330},
        {"30 degrees north of west", 150},
        {"30 deg south of west", 210},
        {"10 deg east of north", 80},
        {"10 deg west of north", 100},
        {"10 deg east of south", 280},
        {"10 deg west of south", 260},
        {"0 deg south of east", 0},
        {"0.5 deg south of east", 359.5},
        {"359 deg west of south", 271},
    };
    for (const Row &row : rows) {
        INFO(row.text);
        REQUIRE(parse_heading(row.text));
        CHECK(*parse_heading(row.text) == row.degrees);
    }
}

TEST_CASE("What is no heading is refused") {
    const char *rows[] = {"",
                          " ",
                          "up",
                          "90",
                          "90 deg",
                          "30 north of east",
                          "30 deg north of south",
                          "30 deg east of east",
                          "360 deg north of east",
                          "-1 deg north of east",
                          "nan deg north of east",
                          "1e1 deg north of east",
                          "30 deg north by east",
                          "30 deg north of east now",
                          "east east",
                          "deg deg deg deg deg",
                          "\u00b0"};
    for (const char *text : rows) {
        INFO(text);
        CHECK_FALSE(parse_heading(text));
    }
}

TEST_CASE("A spelled heading reads back to the same number") {
    CHECK(spell_heading(135) == "north-west");
    CHECK(spell_heading(12.5) == "12.5 deg north of east");
    CHECK(rc::check([] {
        const double degrees = static_cast<double>(*rc::gen::inRange<long long>(0, 360'000'000'000)) / 1e9;
        RC_ASSERT(parse_heading(spell_heading(degrees)) == degrees);
    }));
}
