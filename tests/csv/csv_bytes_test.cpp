// The bytes of a table of logs, one by one: what stands at a line's end, at a file's end and beyond ASCII.
#include "kernel/csv/csv_measure.h"
#include "kernel/csv/csv_rows.h"
#include "kernel/csv/csv_text.h"
#include "tests/support/catch.h"

using namespace roundlay;

TEST_CASE("Every line end is one line feed, so that lines are counted as an editor counts them") {
    CHECK(csv_text("a\r\nb\r\n") == "a\nb\n");
    CHECK(csv_text("a\rb\r") == "a\nb\n");
    CHECK(csv_text("a\r\r\nb") == "a\n\nb");
}

TEST_CASE("A letter that takes a pair in UTF-16 is one letter, and half of a pair is unreadable") {
    // By RFC 2781: U+1F332 less 0x10000 is 0xF332; D800 + 0x3C, DC00 + 0x332. In UTF-8 by RFC 3629: 0, 1F, C
    // and 32 behind F0, 80, 80 and 80. Both from memory.
    const std::string tree = "\xf0\x9f\x8c\xb2";
    CHECK(csv_text(std::string("\xff\xfe\x61\0\x3c\xd8\x32\xdf\x62\0", 10)) == "a" + tree + "b");
    CHECK(csv_text(std::string("\xfe\xff\0\x61\xd8\x3c\xdf\x32\0\x62", 10)) == "a" + tree + "b");
    CHECK(csv_text(std::string("\xff\xfe\x3c\xd8\x62\0", 6)) == "\xef\xbf\xbd\x62");
}

TEST_CASE("Half a letter at the end of UTF-16 is left out") {
    CHECK(csv_text(std::string("\xff\xfe\x61\0\x62", 5)) == "a");
    CHECK(csv_text(std::string("\xff\xfe\x62", 3)) == "");
}

TEST_CASE("A row that ends with a separator ends with an empty cell, whatever lies behind the text") {
    const std::string_view more = "a,\"b";
    const CsvRows split = split_csv(more.substr(0, 2), ',');
    CHECK(split.unclosed == 0);
    REQUIRE(split.rows.size() == 1);
    CHECK(split.rows[0].cells == std::vector<std::string>{"a", ""});
}

TEST_CASE("A heading may hold every letter from a to z") {
    CHECK(heading_of("abcdefghijklmnopqrstuvwxyz").key == "abcdefghijklmnopqrstuvwxyz");
    CHECK(heading_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ").key == "abcdefghijklmnopqrstuvwxyz");
    CHECK(heading_of("Zone Size (mm)").key == "zone_size");
    CHECK(heading_of("Zone Size (mm)").unit == "mm");
}
