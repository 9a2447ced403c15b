#include "kernel/levelling/csv_table.h"
#include "kernel/levelling/pile.h"
#include "tests/support/catch.h"

using namespace roundlay;

namespace {

template <typename Row> std::string problems_of(const CsvRead<Row> &read) {
    CHECK((read.rows.empty() || read.problems.empty()));
    std::string all;
    for (const CsvProblem &p : read.problems)
        all += std::to_string(p.line) + ": " + p.message + "\n";
    return all;
}

} // namespace

TEST_CASE("A pile is read whatever separates its columns and whatever order they are in") {
    for (const char *text : {"mark,length,butt_height,tip_height,butt_width\n7,6 m,260 mm,\"9 in\",\n",
                             "mark;tip_height;length;butt_height\r\n\r\n7; 9 in ;6000 mm;26 cm\r\n",
                             "\xef\xbb\xbfmark\tlength\tbutt_height\ttip_height\n 7\t6 m\t260 mm\t9\""}) {
        INFO(text);
        const auto read = read_pile(text);
        CHECK(problems_of(read).empty());
        REQUIRE(read.rows.size() == 1);
        CHECK(read.rows[0].mark == "7");
        CHECK(read.rows[0].length == 6000);
        CHECK(read.rows[0].butt_height == 260);
        CHECK(read.rows[0].tip_height == Approx(228.6));
        CHECK_FALSE(read.rows[0].butt_width);
    }
}

TEST_CASE("Quotes hold separators, line ends and quotes") {
    std::vector<CsvProblem> problems;
    const auto rows = split_csv("a,\"b,\"\"c\"\"\nd\",e\nf,g,h\n", problems);
    CHECK(problems.empty());
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].cells == std::vector<std::string>{"a", "b,\"c\"\nd", "e"});
    CHECK(rows[1].line == 3);
}

TEST_CASE("Each thing wrong with a pile is told with its line, all at once") {
    struct Case {
        const char *text, *problems;
    };
    const std::string head = "mark,length,butt_height,tip_height\n";
    CHECK(problems_of(read_pile("")) == "1: there is no header line; expected the columns mark, length, "
                                        "butt_height, tip_height, butt_width, tip_width\n");
    CHECK(problems_of(read_pile("mark,length,girth\n")) ==
          "1: the column \"girth\" is not known; the columns are mark, length, butt_height, tip_height, "
          "butt_width, tip_width\n1: the column \"butt_height\" is missing\n1: the column \"tip_height\" is "
          "missing\n");
    CHECK(problems_of(read_pile(head)) == "1: there is no log under the header\n");
    CHECK(
        problems_of(read_pile(head + "a,6 m,260,\n,-1 m,30 m,9 in\n")) ==
        "2: butt_height \"260\": the number has no unit; expected a length such as 8 1/2 in, 7'-6\" or 215 "
        "mm\n"
        "2: tip_height is missing\n3: mark is missing; it is what tells one log from another\n3: length "
        "\"-1 m\" is out of bounds; expected a length over 0 and up to 30000 mm\n3: butt_height \"30 m\" is "
        "out of bounds; expected a length over 0 and up to 2000 mm\n");
    CHECK(problems_of(read_pile(head + "a,6 m,9 in,8 in\na,6 m,9 in,8 in\n")) ==
          "3: the log \"a\" stands there twice, first in line 2\n");
    CHECK(problems_of(read_pile(head + "\"a,6 m\n"))
              .starts_with("2: a quote that opens here is never closed\n"));
    CHECK(problems_of(read_pile(std::string("PK\0\3", 4))).starts_with("1: this is no text"));
}

TEST_CASE("A record gives logs as the document states them, butt first") {
    const auto read = read_record("wall,round,left_height,right_height,left_width,right_width,butt,mark\n"
                                  "A,1,230 mm,250 mm,200 mm,210 mm,,IV\nA,2,250 mm,240 mm,,,right,\n");
    CHECK(problems_of(read).empty());
    REQUIRE(read.rows.size() == 2);
    CHECK(read.rows[0].mark == "IV");
    CHECK(read.rows[0].sizes.butt == LogEnd::right);
    CHECK(read.rows[0].sizes.butt_height == Length::mm(250));
    CHECK(read.rows[0].sizes.tip_width == Length::mm(200));
    CHECK(read.rows[1].sizes.butt == LogEnd::right); // stated, though the left end is larger
    CHECK(read.rows[1].sizes.butt_height == Length::mm(240));
    CHECK_FALSE(read.rows[1].sizes.butt_width);
}

TEST_CASE("What is absurd in a record is told") {
    const std::string head = "wall,round,left_height,right_height,butt\n";
    CHECK(problems_of(read_record(head + "A,0,1 m,1 m,up\nA,x,3 m,1 m,left\n,2,1 m,1 m,\n")) ==
          "2: round \"0\" is not a round; expected 1 (the sill log) and up\n2: butt \"up\" is not known; "
          "expected "
          "left or right\n3: round \"x\" is not a round; expected 1 (the sill log) and up\n3: left_height "
          "\"3 m\" "
          "is out of bounds; expected a length over 0 and up to 2000 mm\n4: wall is missing\n");
    CHECK(problems_of(read_record(head + "B,1,1 m,1 m,\nB,1,1 m,1 m,\n")) ==
          "3: wall B, round 1 stands there twice, first in line 2\n");
}
