// How strings, numbers and instances are spelt, after ISO 10303-21:2002 clause 6.3.
#include "exporters/part21/part21_reader.h"
#include "exporters/part21/part21_text.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <cmath>
#include <limits>

using namespace roundlay;

TEST_CASE("Strings are spelt in printable ASCII") {
    struct Row {
        const char *text, *spelt;
    };
    // The rows with directives follow clause 6.3.3.1 of the standard.
    const Row rows[] = {
        {"", "''"},
        {"A-01-1", "'A-01-1'"},
        {"don't", "'don''t'"},
        {"a\\b", "'a\\\\b'"},
        {"\u00e4", "'\\X2\\00E4\\X0\\'"},
        {"K\u00fchl", "'K\\X2\\00FC\\X0\\hl'"},
        {"\u4e38\u592a", "'\\X2\\4E38592A\\X0\\'"},
        {"\U0001F332", "'\\X4\\0001F332\\X0\\'"},
        {"\u00e4\U0001F332\u00e4", "'\\X2\\00E4\\X0\\\\X4\\0001F332\\X0\\\\X2\\00E4\\X0\\'"},
        {"a\nb\tc", "'a b c'"},
        {"\x7f", "' '"},
        {"a\xff"
         "b",
         "'a\\X2\\FFFD\\X0\\b'"},                       // no UTF-8
        {"\xc3", "'\\X2\\FFFD\\X0\\'"},                 // cut off
        {"\xc0\xaf", "'\\X2\\FFFDFFFD\\X0\\'"},         // over-long spelling of '/'
        {"\xed\xa0\x80", "'\\X2\\FFFDFFFDFFFD\\X0\\'"}, // half a surrogate pair
    };
    for (const Row &row : rows)
        CHECK(part21::spelt(row.text) == row.spelt);
}

TEST_CASE("Long names are cut between characters") {
    CHECK(part21::shortened("abcdef", 6) == "abcdef");
    CHECK(part21::shortened("abcdefg", 6) == "abc...");
    CHECK(part21::shortened("\u00e4\u00e4\u00e4\u00e4\u00e4", 4) == "\u00e4...");
}

TEST_CASE("Reals have a point and as few digits as read back the same") {
    struct Row {
        double value;
        const char *spelt;
    };
    const Row rows[] = {{0, "0."},        {-0.0, "0."},        {1, "1."},
                        {-220, "-220."},  {0.5, "0.5"},        {1e-5, "1.E-05"},
                        {1e22, "1.E+22"}, {1.5e-7, "1.5E-07"}, {0.1, "0.1"}};
    for (const Row &row : rows) {
        std::string text;
        part21::append_real(text, row.value);
        CHECK(text == row.spelt);
    }
    std::string text;
    CHECK_THROWS_AS(part21::append_real(text, std::numeric_limits<double>::quiet_NaN()),
                    std::invalid_argument);
    CHECK_THROWS_AS(part21::append_real(text, HUGE_VAL), std::invalid_argument);
}

TEST_CASE("Any real reads back the same") {
    CHECK(rc::check([](double value) {
        RC_PRE(std::isfinite(value));
        std::string text;
        part21::append_real(text, value);
        RC_ASSERT(text.find('.') != std::string::npos);
        RC_ASSERT(std::stod(text) == value);
    }));
}

TEST_CASE("Instances are numbered as they come") {
    part21::DataWriter data;
    const part21::Ref point = data.add("CARTESIAN_POINT", "", Vec3{1, -2.5, 0});
    data.add("VERTEX_POINT", "it's", point);
    data.complex().part("LENGTH_UNIT").part("NAMED_UNIT", part21::Derived{}).end();
    data.add("X", true, 3, part21::Unset{}, part21::Enumeration{"BOTH"}, std::vector{point, point},
             part21::Typed{"AREA_MEASURE", 2});
    CHECK(data.take() == "#1=CARTESIAN_POINT('',(1.,-2.5,0.));\n"
                         "#2=VERTEX_POINT('it''s',#1);\n"
                         "#3=(LENGTH_UNIT()NAMED_UNIT(*));\n"
                         "#4=X(.T.,3,$,.BOTH.,(#1,#1),AREA_MEASURE(2.));\n");
}

TEST_CASE("Long lists are folded") {
    part21::DataWriter data;
    data.add("X", std::vector<part21::Ref>(200, part21::Ref{12345}));
    const std::string text = data.take();
    std::size_t from = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', from)) {
        CHECK(end - from <= 90);
        from = end + 1;
    }
}

TEST_CASE("A data section is read apart, blanks, comments and strings considered") {
    const part21::Instances all =
        part21::read_data("ISO-10303-21;\nHEADER;ENDSEC;\nDATA;\n"
                          "#1 = P ( 'a;b #7 '' /*' , ( 1. ,\n 2. ) ) ; /* #9=Q(); */\n"
                          "#20=( A() B(#1) );#3=C(#1,#20);\nENDSEC;\nEND-ISO-10303-21;\n");
    REQUIRE(all.size() == 3);
    CHECK(all.at(1).text == "P('a;b #7 '' /*',(1.,2.))");
    CHECK(all.at(1).type() == "P");
    CHECK(all.at(1).references.empty());
    CHECK(all.at(20).type().empty());
    REQUIRE(all.at(3).references.size() == 2);
    CHECK(all.at(3).references[0].id == 1);
    CHECK(all.at(3).references[1].id == 20);
    CHECK(all.at(3).text.substr(all.at(3).references[1].at, all.at(3).references[1].length) == "#20");
}

TEST_CASE("A data section that cannot be taken over is refused with a sentence") {
    struct Row {
        const char *data, *cause;
    };
    const Row rows[] = {
        {"#1=P(#2);", "#1 refers to #2, which is not there"},
        {"#1=P();#1=P();", "#1 is given twice"},
        {"P();", "an instance does not start with its number"},
        {"#1 P();", "\"=\" is missing"},
        {"#1=P('a", "a string has no end"},
        {"#1=P()", "\";\" is missing"},
        {"#1=P(#);", "a number is missing behind \"#\""},
    };
    for (const Row &row : rows)
        CHECK_THROWS_WITH(part21::read_data("DATA;" + std::string(row.data) + "\nENDSEC;"),
                          "The STEP text cannot be taken over: " + std::string(row.cause) + ".");
    CHECK_THROWS_WITH(part21::read_data("nothing"),
                      "The STEP text cannot be taken over: it has no data section.");
}
