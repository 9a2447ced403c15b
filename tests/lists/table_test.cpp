#include "exporters/lists/table.h"
#include "tests/support/catch.h"

#include <limits>

using namespace roundlay;

namespace {

Table table_of(std::vector<std::vector<Entry>> rows) {
    return {{{"aaa", "a"}, {"bbb", "b"}, {"ccc", ""}}, std::move(rows)};
}

} // namespace

// RFC 4180 section 2: the examples of rules 2 to 7, with CRLF for the ends of lines.
TEST_CASE("CSV is spelled as RFC 4180 shows it") {
    const Table table = {
        {{"field_name", ""}, {"field_name2", ""}, {"field_name3", ""}},
        {{"aaa", "bbb", "ccc"}, {"aaa", "b\r\nbb", "ccc"}, {"aaa", "b\"bb", "c,c"}, {"", " x ", ""}}};
    CHECK(to_csv(table) == "field_name,field_name2,field_name3\r\n"
                           "aaa,bbb,ccc\r\n"
                           "aaa,\"b\r\nbb\",ccc\r\n"
                           "aaa,\"b\"\"bb\",\"c,c\"\r\n"
                           ", x ,\r\n");
}

TEST_CASE("CSV joins lists with a blank and leaves other letters as they are") {
    const std::vector<std::string> tags = {"A-01-1", "C-01-1"};
    CHECK(to_csv(table_of({{tags, number(8.5, 3), "Tür"}})) == "aaa,bbb,ccc\r\nA-01-1 C-01-1,8.5,Tür\r\n");
}

TEST_CASE("numbers say no more than they know") {
    CHECK(number(8.5, 3).digits == "8.5");
    CHECK(number(8.0, 3).digits == "8");
    CHECK(number(100, 0).digits == "100");
    CHECK(number(220.1333333, 3).digits == "220.133");
    CHECK(number(-0.0001, 3).digits == "0");
    CHECK(number(-1.5, 3).digits == "-1.5");
    CHECK(number(0.1234567, 6, 4) == Number{"0.123457", "0.1235"});
    CHECK_THAT(to_text({{{"m3", "m3"}}, {{number(0.1234567, 6, 4)}}}), ContainsSubstring("0.1235\n"));
    CHECK_THAT(to_csv({{{"m3", "m3"}}, {{number(0.1234567, 6, 4)}}}), ContainsSubstring("0.123457"));
    CHECK(number(std::numeric_limits<double>::max(), 0).digits.size() == 309);
}

TEST_CASE("JSON is an array of objects in the order of the columns") {
    const std::vector<std::string> tags = {"A-01-1", "C-01-1"};
    CHECK(to_json(table_of({{"say \"hi\"\n", number(8.5, 3), tags}})) == R"([
  {
    "aaa": "say \"hi\"\n",
    "bbb": 8.5,
    "ccc": [
      "A-01-1",
      "C-01-1"
    ]
  }
]
)");
    CHECK(to_json(table_of({})) == "[]\n");
    CHECK_THAT(to_json(table_of({{"caf\xe9", number(1, 0), ""}})), ContainsSubstring("caf\xEF\xBF\xBD"));
}

TEST_CASE("text is aligned, numbers to the right, without blanks at the end") {
    const std::vector<std::string> tags = {"A-01-1", "B-01-1", "C-01-1"};
    const Table table =
        table_of({{"Tür", number(8, 0), "hidden"}, {tags, number(120, 0), "hidden"}, {"x", "", ""}});
    CHECK(to_text(table) == "a            b\n"
                            "Tür          8\n"
                            "A-01-1 +2  120\n"
                            "x\n");
}

TEST_CASE("what a person stated cannot steer the terminal") {
    const Table table = table_of({{"a\x1b[31mred\r\n\x7f", number(1, 0), ""}});
    for (const char c : to_text(table))
        CHECK((c == '\n' || static_cast<unsigned char>(c) >= 0x20));
    CHECK(to_text(table).find('\x1b') == std::string::npos);
}
