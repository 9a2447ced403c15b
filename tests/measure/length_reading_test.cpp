#include "kernel/measure/measure.h"
#include "tests/support/catch.h"

#include <string>
#include <vector>

using namespace roundlay;

namespace {

double read_mm(std::string_view text) {
    const auto read = parse_length(text);
    INFO(text);
    if (const auto *error = std::get_if<MeasureError>(&read)) FAIL(error->message << " at " << error->offset);
    return std::get<Length>(read).mm();
}

MeasureError refusal(std::string_view text) {
    const auto read = parse_length(text);
    INFO(text);
    if (const auto *length = std::get_if<Length>(&read)) FAIL("read as " << length->mm() << " mm");
    return std::get<MeasureError>(read);
}

} // namespace

namespace {

/// Expected values are the exact fractions of a millimetre, from 25.4 mm to the inch (international inch,
/// 1959, e.g. NIST SP 811 appendix B.6), as literals that the compiler rounds once.
struct Read {
    const char *text;
    double mm;
};

void check_read(const std::vector<Read> &rows) {
    for (const Read &row : rows) {
        INFO(row.text);
        CHECK(read_mm(row.text) == row.mm);
    }
}

} // namespace

TEST_CASE("Metric lengths are read to the last bit") {
    check_read({
        {"230 mm", 230},
        {"230mm", 230},
        {"2.4 m", 2400},
        {"12.5 cm", 125},
        {"1/3 mm", 0.33333333333333331},
        {"1000000 m", 1e9},
        {"0.12345678901234567 mm", 0.12345678901234567},
        {"2641.6000000000004 mm", 2641.6000000000004},
    });
}

TEST_CASE("Feet and inches are read to the last bit") {
    check_read({
        {"9 in", 228.6},
        {"1.5 in", 38.1},
        {".5 in", 12.7},
        {"3/16\"", 4.7625},
        {"-3/4\"", -19.05},
        {"7'-6 1/2\"", 2298.7},
        {"-7'-6 1/2\"", -2298.7},
        {"7' 6 1/2\"", 2298.7},
        {"7'6-1/2\"", 2298.7},
        {"7' - 6 1/2\"", 2298.7},
        {"7'-1/2\"", 2146.3},
        {"4' 0 3/16\"", 1223.9625},
        {"11ft6-7/8in", 3527.425},
        {"11 feet 6 7/8 inches", 3527.425},
        {"10ft 10in", 3302},
        {"10 ft. 10 in.", 3302},
        {"1 foot 1 inch", 330.2},
        {"1 FT 1 IN", 330.2},
        {"16'", 4876.8},
        {"7.5'", 2286},
        {"7 1/2 ft", 2286},
        {"7'6''", 2286},
        {"8 2/3 in", 220.13333333333333},
        {"26/3 in", 220.13333333333333},
    });
}

TEST_CASE("Signs and zeros of lengths are read") {
    check_read({
        {"0.1 mm", 0.1},
        {"+3 in", 76.2},
        {"- 3 in", -76.2},
        {"\u22123 in", -76.2},
        {"0", 0},
        {" 0 ", 0},
        {"-0", 0},
        {"0.0", 0},
        {"0 mm", 0},
        {"0\"", 0},
        {"-0' 3\"", -76.2},
    });
}

TEST_CASE("Lengths set by a word processor or a telephone are read to the last bit") {
    check_read({
        {"7\u2032 6\u00bd\u2033", 2298.7},
        {"7\u2019-6 1/2\u201d", 2298.7},
        {"7\u2032\u20136\u00a0\u00bd\u2033", 2298.7},
        {"6\u00bd in", 165.1},
        {"6 \u00bd in", 165.1},
        {"6-\u00bd in", 165.1},
        {"\u215e\"", 22.225},
        {"8 2\u20443 in", 220.13333333333333},
        {"230\u00a0mm", 230},
        {"230\u202fmm", 230},
        {"\u2009230\u2009mm\u2009", 230},
        {"\t230\tmm", 230},
    });
}

TEST_CASE("Inches given as a number are the same as inches read from text") {
    CHECK(Length::inches(1.5).mm() == read_mm("1 1/2 in"));
    CHECK(Length::feet(7.5).mm() == read_mm("7 1/2 ft"));
    for (int parts = 1; parts < 64 * 1200; ++parts) {
        const double mm = read_mm(std::to_string(parts) + "/64 in");
        REQUIRE(Length::inches(parts / 64.0).mm() == mm);
        REQUIRE(Length::mm(mm).inches() == parts / 64.0);
    }
}

TEST_CASE("A comma is the decimal mark where it can be nothing else") {
    CHECK(read_mm("8,5 m") == 8500);
    CHECK(read_mm("9,7m") == 9700);
    CHECK(read_mm("2,415 m") == 2415);
    CHECK(read_mm("0,250 mm") == 0.25);
    CHECK(read_mm("-12,25 cm") == -122.5);
    CHECK(read_mm("1,5 ft") == 457.2);
    CHECK(read_mm("7' 6,5\"") == 2298.7);
}

TEST_CASE("Every set fraction has its value") {
    // Values: Unicode Standard, UnicodeData.txt, field Numeric_Value.
    struct Row {
        const char *text;
        int over, under;
    };
    const Row rows[] = {{"\u00bd", 1, 2}, {"\u00bc", 1, 4}, {"\u00be", 3, 4}, {"\u2153", 1, 3},
                        {"\u2154", 2, 3}, {"\u215b", 1, 8}, {"\u215c", 3, 8}, {"\u215d", 5, 8},
                        {"\u215e", 7, 8}, {"\u2155", 1, 5}, {"\u2156", 2, 5}, {"\u2157", 3, 5},
                        {"\u2158", 4, 5}, {"\u2159", 1, 6}, {"\u215a", 5, 6}, {"\u2150", 1, 7},
                        {"\u2151", 1, 9}, {"\u2152", 1, 10}};
    for (const Row &row : rows)
        CHECK(read_mm(std::string(row.text) + " mm") == static_cast<double>(row.over) / row.under);
}

namespace {

struct Refused {
    const char *text;
    std::size_t offset;
    const char *message;
};

/// With the place and what was expected there.
void check_refused(const std::vector<Refused> &rows) {
    for (const Refused &row : rows) {
        const MeasureError error = refusal(row.text);
        INFO(row.text);
        CHECK(error.message == row.message);
        CHECK(error.offset == row.offset);
        CHECK_FALSE(error.expected.empty());
    }
}

} // namespace

TEST_CASE("What has no number where a length should begin is refused at its place") {
    check_refused({
        {"", 0, "the length is empty"},
        {"   ", 0, "the length is empty"},
        {"nan", 0, "\"nan\" stands where a number should"},
        {"NaN mm", 0, "\"NaN\" stands where a number should"},
        {"inf", 0, "\"inf\" stands where a number should"},
        {"-inf mm", 1, "\"inf\" stands where a number should"},
        {"in", 0, "\"in\" stands where a number should"},
        {"-", 1, "a number is missing"},
        {"--3 in", 1, "'-' stands where a number should"},
        {".", 0, "'.' stands where a number should"},
        {"\x01", 0, "byte 0x01 stands where a number should"},
        {"\xff mm", 0, "byte 0xFF stands where a number should"},
        {"\u00e9 mm", 0, "'\u00e9' stands where a number should"},
    });
}

TEST_CASE("Commas, points and fractions that can be read in two ways or in none are refused at their place") {
    check_refused({
        {"5. in", 2, "no digit stands behind the decimal point"},
        {"2,400 mm", 1, "a comma in a number can be read in two ways"},
        {"2,400", 1, "a comma in a number can be read in two ways"},
        {"1,200,000 mm", 1, "a comma in a number can be read in two ways"},
        {"1,200.5 mm", 1, "a comma in a number can be read in two ways"},
        {"2, m", 1, "a comma in a number can be read in two ways"},
        {"1/ in", 2, "no whole number stands under the fraction bar"},
        {"1/0 in", 2, "a fraction cannot have zero under the bar"},
        {"6 3/2 in", 2, "the fraction behind a whole number is not under 1"},
        {"6 1/0 in", 4, "a fraction cannot have zero under the bar"},
        {"7' 1/0\"", 5, "a fraction cannot have zero under the bar"},
    });
}

TEST_CASE("What has no unit, another one or too many is refused at its place") {
    check_refused({
        {"12", 0, "the number has no unit"},
        {"12 ", 0, "the number has no unit"},
        {"0.5", 0, "the number has no unit"},
        {"12 yards", 3, "\"yards\" is not a unit of length"},
        {"12 m2", 4, "'2' stands behind the end of the length"},
        {"12 mmm", 3, "\"mmm\" is not a unit of length"},
        {"0 yards", 2, "\"yards\" is not a unit of length"},
        {"1e3 mm", 1, "\"e\" is not a unit of length"},
        {"1/2/3 in", 3, "'/' is not a unit of length"},
        {"7' 6", 3, "the number behind the feet has no unit"},
        {"7' 6 mm", 5, "only inches can stand behind feet"},
        {"7' 6'", 4, "only inches can stand behind feet"},
        {"7' 6 furlongs", 5, "\"furlongs\" is not a unit of length"},
        {"7' 12\"", 3, "inches behind feet are not under 12"},
        {"7.5' 6\"", 0, "feet in front of inches must be a whole number"},
        {"7'-", 2, "'-' stands behind the end of the length"},
        {"2 m 40 cm", 4, "'4' stands behind the end of the length"},
        {"6 in 3 mm", 5, "'3' stands behind the end of the length"},
        {"6 in x", 5, "\"x\" stands behind the end of the length"},
        {"12 abcdefghijklmnopqrstuvwxyzabc", 3, "\"abcdefghijklmnopqrstuvwx...\" is not a unit of length"},
    });
}

TEST_CASE("Lengths that are too long, or cannot be read exactly, are refused") {
    check_refused({
        {"1000001 m", 0, "the length is over 1000 km"},
        {"-1000001 m", 0, "the length is over 1000 km"},
        {"1234567890123456789012345678901 mm", 0, "the number has too many digits to be read exactly"},
        {"0.1234567890123456789012345678901 mm", 0, "the number has too many digits to be read exactly"},
        {"1/1234567890123456789012345678901 mm", 0, "the number has too many digits to be read exactly"},
        {"1 1234567890123456789012345678901/2 mm", 2, "the number has too many digits to be read exactly"},
        {"123456789012345678901234567890.123456789012345678901234567890 mm", 0,
         "the number has too many digits to be read exactly"},
        {"123456789012345678901234567890 1/123456789012345678901234567891 mm", 0,
         "the number has too many digits to be read exactly"},
    });
}
