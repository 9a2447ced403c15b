#include "kernel/trade/log_rules.h"
#include "tests/support/catch.h"

using namespace roundlay;

// 16 ft logs, figures derived from: Doyle, the formula from memory; Scribner, the formula as on published
// pages, seen (CONFLICT by design with the decimal tables: 280 against 272 at 20 in); International 1/4 in,
// as in a USDA Forest Service program, seen.
TEST_CASE("the log rules match the published figures for logs of 16 ft") {
    const struct {
        double inches, doyle, scribner, international;
    } rows[] = {
        {8, 16, 30.6, 40},     {10, 36, 55.0, 65},    {12, 64, 85.8, 95},
        {14, 100, 122.8, 135}, {16, 144, 166.2, 180}, {18, 196, 216.0, 230},
        {20, 256, 272.0, 290}, {24, 400, 403.0, 425}, {30, 676, 647.0, 675},
    };
    const Length length = Length::feet(16);
    for (const auto &row : rows) {
        INFO(row.inches << " in");
        const Length d = Length::inches(row.inches);
        CHECK(doyle(d, length) == Approx(row.doyle));
        CHECK(scribner(d, length) == Approx(row.scribner).margin(0.05));
        CHECK(international_quarter(d, length) == row.international);
    }
}

TEST_CASE("a board foot is 144 cubic inches") {
    // American Softwood Lumber Standard PS 20, from memory: 1/12 ft3, 0.00235974 m3.
    CHECK(board_feet(1e9) == Approx(1 / 0.00235974).epsilon(0.00001));
    const double stick = Length::inches(8).mm() * Length::inches(12).mm() * Length::feet(16).mm();
    CHECK(board_feet(stick) == Approx(8 * 12 * 16 / 12.0));
}

TEST_CASE("logs that are too thin or have no length give no boards") {
    CHECK(doyle(Length::inches(3), Length::feet(16)) == 0);
    CHECK(scribner(Length::inches(2), Length::feet(16)) == 0);
    CHECK(international_quarter(Length::inches(2), Length::feet(8)) == 0);
    CHECK(international_quarter(Length::inches(12), Length()) == 0);
    CHECK(international_quarter(Length::inches(12), Length::feet(-4)) == 0);
}
