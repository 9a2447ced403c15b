#include "kernel/document/lines.h"
#include "kernel/document/toml_scan.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <string>

using namespace roundlay;

TEST_CASE("A value ends where TOML says it ends") {
    // Each row: the value, then what may stand behind it. Forms: TOML 1.0.0, sections String to Array.
    const char *values[] = {
        "\"\"",
        "\"a\"",
        "\"a # b\"",
        R"("a \" b")",
        R"("a\\")",
        "''",
        "'a'",
        R"('a\')",
        "\"\"\"\"\"\"",
        "\"\"\"a\nb\"\"\"",
        "\"\"\"a\"b\"\"c\"\"\"",
        "\"\"\"a\"\"\"\"\"",
        R"("""a\"""b""")",
        "''''a'''''",
        "'''a\nb'''",
        "12",
        "-1.5",
        "1979-05-27 07:32:00",
        "true",
        "[]",
        "[1, [2, 3]]",
        "[\n  \"]\", # ]\n  '['\n]",
        "{}",
        "{ a = \"}\", b = [1] }",
    };
    for (const std::string value : values)
        for (const std::string behind : {"", " ", "\n", " # c\n", "\r\n", ", 3", " ]", "}"}) {
            INFO(value << " before " << behind);
            CHECK(value_end("k = " + value + behind, 4) == 4 + value.size());
        }
}

TEST_CASE("An unclosed value ends with its line or the text") {
    CHECK(value_end("\"abc\nd", 0) == 4);
    CHECK(value_end("\"abc\\\nd", 0) == 5);
    CHECK(value_end("'abc", 0) == 4);
    CHECK(value_end("\"\"\"abc\nd", 0) == 8);
    CHECK(value_end("[1, 2", 0) == 5);
    CHECK(value_end("x", 5) == 1);
}

TEST_CASE("Names of eight parts are let through, of nine not, however they are spelled") {
    CHECK_FALSE(find_too_much("a.b.c.d.e.f.g.h = 1.5"));
    CHECK_FALSE(find_too_much("# a.b.c.d.e.f.g.h.i"));
    CHECK_FALSE(find_too_much("k = \"a.b.c.d.e.f.g.h.i\""));
    CHECK_FALSE(find_too_much("k = [1.1, 2.2, 3.3, 4.4, 5.5, 6.6, 7.7, 8.8, 9.9]"));
    CHECK(find_too_much("[a . \"b\" . 'c.d' . d.e.f.g.h.i]")->deep);
    CHECK(find_too_much("k = { a.b.c.d.e.f.g.h.i = 1 }")->deep);
}

TEST_CASE("Scanning any bytes stays inside them") {
    CHECK(rc::check([] {
        const auto pick = rc::gen::elementOf(std::string("\"'\\#[]{},.= \n\r\tab1\xc3"));
        const std::string text = *rc::gen::container<std::string>(pick);
        for (std::size_t at = 0; at <= text.size(); ++at) {
            const std::size_t end = value_end(text, at);
            RC_ASSERT(end <= text.size());
            RC_ASSERT(end >= at);
            RC_ASSERT(behind_blanks(text, at) <= text.size());
            RC_ASSERT(behind_blanks_and_comments(text, at) <= text.size());
        }
        find_too_much(text);
    }));
}

TEST_CASE("Offsets and places are two names of the same thing") {
    const std::string text = "\xef\xbb\xbf"
                             "a\u00e9b\r\n\n\U0001F332x";
    const Lines lines(text);
    CHECK(lines.place_at(3) == Place{1, 1, 3});
    CHECK(lines.place_at(6) == Place{1, 3, 6});
    CHECK(lines.place_at(9) == Place{2, 1, 9});
    CHECK(lines.place_at(14) == Place{3, 2, 14});
    CHECK(lines.place_at(1000).offset == text.size());
    CHECK(lines.offset_of(1, 3) == 6);
    CHECK(lines.offset_of(3, 2) == 14);
    CHECK(lines.offset_of(1, 100) == 8);
    CHECK(lines.offset_of(9, 1) == text.size());
    CHECK(lines.line_start(5) == 3);
    CHECK(lines.line_end(5) == 9);
    CHECK(lines.line_end(14) == text.size());
    CHECK(rc::check([] {
        const auto pick =
            rc::gen::elementOf(std::vector<std::string>{"a", "\n", "\u00e9", "\u2033", "\r\n", "\U0001F332"});
        std::string made;
        for (const std::string &part : *rc::gen::container<std::vector<std::string>>(pick))
            made += part;
        const Lines index(made);
        for (std::size_t at = 0; at <= made.size(); ++at) {
            if (at < made.size() && (static_cast<unsigned char>(made[at]) & 0xc0) == 0x80) continue;
            const Place place = index.place_at(at);
            RC_ASSERT(index.offset_of(static_cast<std::size_t>(place.line),
                                      static_cast<std::size_t>(place.column)) == at);
        }
    }));
}
