#include "kernel/document/edit.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"

#include <string>

using namespace roundlay;
using roundlay::test::sample;

namespace {

std::string text_of(const Document::Edited &edited) {
    if (const auto *problem = std::get_if<Problem>(&edited)) return "refused: " + problem->message;
    return std::get<Document>(edited).text();
}

std::string with(const std::string &text, const char *path, const char *value) {
    return text_of(Document(text, "x").with(path, value));
}

std::string without(const std::string &text, const char *path) {
    return text_of(Document(text, "x").without(path));
}

const std::string commented = R"(# the hall
roundlay = 1 # version

[shell] # as ordered
  thickness  =  "8 in"   # measured twice
  # a remark

[rounds]
count=5
pitch=   '9 in'

# openings, left to right
[[opening]]
name = "one" # the first
width = """30 in"""

# about two
[[opening]]
name = "two"
list = [ # many lines
  1,
]
# nothing below
)";

} // namespace

TEST_CASE("A value gives way to another and nothing else moves") {
    struct Row {
        const char *path, *value, *old_text, *new_text;
    };
    const Row rows[] = {
        {"roundlay", "2", "roundlay = 1 # v", "roundlay = 2 # v"},
        {"shell.thickness", "\"10 in\"", "  thickness  =  \"8 in\"   #", "  thickness  =  \"10 in\"   #"},
        {"rounds.count", "6", "count=5\n", "count=6\n"},
        {"rounds.pitch", "\"230 mm\"", "pitch=   '9 in'", "pitch=   \"230 mm\""},
        {"opening[0].width", "\"3 ft\"", "\"\"\"30 in\"\"\"", "\"3 ft\""},
        {"opening[1].list", "[]", "[ # many lines\n  1,\n]", "[]"},
        {"opening[1].list[0]", "{ a = 1 }", "  1,", "  { a = 1 },"},
    };
    for (const Row &row : rows) {
        INFO(row.path);
        std::string expected = commented;
        expected.replace(expected.find(row.old_text), std::string(row.old_text).size(), row.new_text);
        CHECK(with(commented, row.path, row.value) == expected);
    }
}

TEST_CASE("A new statement stands at the end of its table, in its manner") {
    struct Row {
        const char *text, *path, *value, *expected;
    };
    const Row rows[] = {
        {"[a]\n  key    = 1 # c\n\n[b]\n", "a.x", "2", "[a]\n  key    = 1 # c\n  x      = 2\n\n[b]\n"},
        {"[a]\nkey=1\n", "a.longer", "2", "[a]\nkey=1\nlonger=2\n"},
        {"[a]\nk = [\n 1\n] # c\n# d\n", "a.x", "2", "[a]\nk = [\n 1\n] # c\nx = 2\n# d\n"},
        {"[a]\nk = 1", "a.x", "2", "[a]\nk = 1\nx = 2"},
        {"[a] # c\n[b]\n", "a.x", "2", "[a] # c\nx = 2\n[b]\n"},
        {"[a]", "a.x", "2", "[a]\nx = 2"},
        {"[a]\r\nk = 1\r\n[b]\r\n", "a.x", "2", "[a]\r\nk = 1\r\nx = 2\r\n[b]\r\n"},
        {"[a]\r\nk = 1", "a.x", "2", "[a]\r\nk = 1\r\nx = 2"},
        {"k = 1 # c\n[a]\n", "x", "2", "k = 1 # c\nx = 2\n[a]\n"},
        {"[a]\n", "x", "2", "x = 2\n[a]\n"},
        {"# c\n", "x", "2", "x = 2\n# c\n"},
        {"", "x", "2", "x = 2\n"},
        {"\xef\xbb\xbf[a]\n", "x", "2", "\xef\xbb\xbfx = 2\n[a]\n"},
        {"a.k = 1\nb = 2\n", "a.x", "3", "a.k = 1\na.x = 3\nb = 2\n"},
        {"[t]\na . k = 1\n", "t.a.x", "3", "[t]\na . k = 1\na . x = 3\n"},
        {"a = { k = 1 } # c\n", "a.x", "2", "a = { k = 1, x = 2 } # c\n"},
        {"a = {}\n", "a.x", "2", "a = { x = 2 }\n"},
        {"a = [{ k = 1 }, {}]\n", "a[0].x", "2", "a = [{ k = 1, x = 2 }, {}]\n"},
        {"[[a]]\nk = 1\n[[a]]\nk = 2\n[b]\n", "a[0].x", "3", "[[a]]\nk = 1\nx = 3\n[[a]]\nk = 2\n[b]\n"},
        {"[[a]]\nk = 1\n[[a]]\nk = 2\n[b]\n", "a[1].x", "3", "[[a]]\nk = 1\n[[a]]\nk = 2\nx = 3\n[b]\n"},
        {"[t]\n  a.b = 1\n", "t.x", "3", "[t]\n  a.b = 1\n  x   = 3\n"},
        {"[t]\nk = 1\na.b  = 1\n", "t.x", "3", "[t]\nk = 1\na.b  = 1\nx = 3\n"},
        // a new table
        {"k = 1\n", "a.x", "2", "k = 1\n\n[a]\nx = 2\n"},
        {"[a.b]\n", "a.x", "2", "[a.b]\n\n[a]\nx = 2\n"},
        {"k = 1", "a.x", "2", "k = 1\n\n[a]\nx = 2"},
        {"k = 1\r\n", "a.x", "2", "k = 1\r\n\r\n[a]\r\nx = 2\r\n"},
        {"", "a.x", "2", "[a]\nx = 2\n"},
    };
    for (const Row &row : rows) {
        INFO(row.text << " -> " << row.path);
        CHECK(with(row.text, row.path, row.value) == row.expected);
    }
}

TEST_CASE("A statement is taken out with its line, an entry with its lines") {
    struct Row {
        const char *text, *path, *expected;
    };
    const Row rows[] = {
        {"a = 1\nb = 2 # c\nd = 3\n", "b", "a = 1\nd = 3\n"},
        {"a = 1\nb = [\n 2,\n]\nd = 3\n", "b", "a = 1\nd = 3\n"},
        {"a = 1\nb = 2", "b", "a = 1\n"},
        {"a = 1\r\nb = 2\r\n", "a", "b = 2\r\n"},
        {"a.b = 1\na.c = 2\n", "a.b", "a.c = 2\n"},
        {"a.b = 1\nd = 2\n", "a.b", "d = 2\n"},
        {"a = { b = 1, c = 2, d = 3 }\n", "a.b", "a = { c = 2, d = 3 }\n"},
        {"a = { b = 1, c = 2, d = 3 }\n", "a.c", "a = { b = 1, d = 3 }\n"},
        {"a = { b = 1, c = 2, d = 3 }\n", "a.d", "a = { b = 1, c = 2 }\n"},
        {"a = { b = 1 }\n", "a.b", "a = {  }\n"},
        {"a = [1, 2, 3]\n", "a[0]", "a = [2, 3]\n"},
        {"a = [1, 2, 3]\n", "a[2]", "a = [1, 2, ]\n"},
        {"a = [\n 1, # c\n 2 # d\n]\n", "a[1]", "a = [\n 1, # c\n  # d\n]\n"},
        {"[a]\nk = 1\n\n[b]\nk = 2\n", "a", "[b]\nk = 2\n"},
        {"[a]\nk = 1\n\n# about b\n[b]\nk = 2 # c\n# below\n", "b", "[a]\nk = 1\n\n# about b\n# below\n"},
        {"[a]\nk = 1\n\n[b]\nk = 2\n", "b", "[a]\nk = 1\n"},
        {"[[a]]\nk = 1\n\n[[a]]\nk = 2\n\n[[a]]\nk = 3\n", "a[1]", "[[a]]\nk = 1\n\n[[a]]\nk = 3\n"},
        {"[[a]]\nk = 1\n[[a]]\nk = 2\n[a.sub]\nx = 1\n[b]\n", "a[1]", "[[a]]\nk = 1\n[b]\n"},
        {"[[a]]\nk = 1\n[b]\n", "a[0]", "[b]\n"},
        {"\xef\xbb\xbf[a]\nk = 1\n\n[b]\n", "a", "\xef\xbb\xbf[b]\n"},
    };
    for (const Row &row : rows) {
        INFO(row.text << " less " << row.path);
        CHECK(without(row.text, row.path) == row.expected);
    }
}

TEST_CASE("A new entry stands behind the last one of its kind") {
    const Document::Keys keys{{"name", "\"new\""}, {"width", "\"3 ft\""}};
    const auto add = [&keys](const std::string &text) {
        return text_of(Document(text, "x").with_entry("opening", keys));
    };
    CHECK(add("k = 1\n") == "k = 1\n\n[[opening]]\nname = \"new\"\nwidth = \"3 ft\"\n");
    CHECK(add("[[opening]]\na = 1 # c\n\n[b]\n") ==
          "[[opening]]\na = 1 # c\n\n[[opening]]\nname = \"new\"\nwidth = \"3 ft\"\n\n[b]\n");
    CHECK(add("[[opening]]\r\na = 1") ==
          "[[opening]]\r\na = 1\r\n\r\n[[opening]]\r\nname = \"new\"\r\nwidth = \"3 ft\"");
    CHECK(add("opening = [{ a = 1 }]\n") == "refused: \"opening\" cannot be edited: the list is not written "
                                            "with [[opening]] headers; add to it by hand");
}

TEST_CASE("What cannot be edited is refused and says why") {
    struct Row {
        const char *text, *path, *value, *why; ///< without a value: taken out
    };
    const Row rows[] = {
        {"a = 1\n", "", "1", "this is no path"},
        {"a = 1\n", "a.", "1", "this is no path"},
        {"a = 1\n", "a[x]", "1", "this is no path"},
        {"a = 1\n", "a[1", "1", "this is no path"},
        {"a = 1\n", "a b", "1", "this is no path"},
        {"a = 1\n", "[0]", "1", "this is no path"},
        {"a = 1\n", "a..b", "1", "this is no path"},
        {"a = 1\n", "a[99999999999999999999]", "1", "this is no path"},
        {"a = 1\n", "a", "", "the new text is not one TOML value"},
        {"a = 1\n", "a", "1 # c", "the new text is not one TOML value"},
        {"a = 1\n", "a", " 1", "the new text is not one TOML value"},
        {"a = 1\n", "a", "1\nb = 2", "the new text is not one TOML value"},
        {"a = 1\n", "a", "8 in", "the new text is not one TOML value"},
        {"a = 1\n", "a", "\"x", "the new text is not one TOML value"},
        {"[a]\n", "a", "1", "this is a table; edit the statements in it"},
        {"[[a]]\n", "a", "1", "this is a table; edit the statements in it"},
        {"a = [1]\n", "a[1]", "1", "there is no such entry"},
        {"a = 1\n", "a.b", "1", "what should hold it is no table"},
        {"[[a]]\n", "a[1].b", "1", "there is no table or entry to put it in"},
        {"a = 1\n", "b.c.d", "1", "there is no table or entry to put it in"},
        {"a.b.c = 1\n", "a.x", "1", "it is written in a way that only a person can edit"},
        {"a = 1\n", "b", nullptr, "there is no such statement"},
        {"[[a]]\n", "a", nullptr, "this is a list of tables; name one entry"},
        {"a.b = 1\n", "a", nullptr, "this table is written in dotted keys; name one of them"},
        {"[[a]]\n[b]\nk = 1\n[a.sub]\nk = 2\n", "a[0]", nullptr,
         "it is written in a way that only a person can edit"},
        {"a = { b.c = 1, d = 2 }\n", "a.b.c", nullptr, "it is written in a way that only a person can edit"},
    };
    for (const Row &row : rows) {
        INFO(row.text << " " << row.path);
        const std::string result =
            row.value ? with(row.text, row.path, row.value) : without(row.text, row.path);
        CHECK(result == "refused: \"" + std::string(row.path) + "\" cannot be edited: " + row.why);
    }
    CHECK(with("a = \n", "a", "1").rfind("refused: the text is not TOML: ", 0) == 0);
    CHECK(without("a = \n", "a").rfind("refused: the text is not TOML: ", 0) == 0);
    CHECK(text_of(Document("a = \n", "x").with_entry("b", {})).rfind("refused: the text is not TOML: ", 0) ==
          0);
    CHECK(text_of(Document("", "x").with_entry("b[0]", {})) ==
          "refused: \"b[0]\" cannot be edited: this is no list of tables");
    CHECK(text_of(Document("", "x").with_entry("b", {{"c d", "1"}})) ==
          "refused: \"b.c d\" cannot be edited: the new text is not one TOML value");
    CHECK(text_of(Document("", "x").with_entry("b", {{"c", "1"}, {"c", "2"}})) ==
          "refused: \"b\" cannot be edited: it is written in a way that only a person can edit");
}

TEST_CASE("A builder's afternoon: one document through a chain of edits") {
    Document document(sample, "tarnfold.roundlay");
    const auto step = [&document](const Document::Edited &edited) {
        INFO(text_of(edited));
        REQUIRE(std::holds_alternative<Document>(edited));
        document = std::get<Document>(edited);
    };
    step(document.with("rounds.count", "6"));
    step(document.with("rounds.gap", toml_text(Length::inches(1.5), UnitSystem::imperial)));
    step(document.with("wall[2].thickness", "\"10 in\""));
    step(document.with("shell.name", toml_text("Tarnfold")));
    step(document.with_entry("opening", {{"wall", "\"C\""},
                                         {"from_left", "\"1 m\""},
                                         {"sill", "0"},
                                         {"width", "\"2 ft\""},
                                         {"height", "\"1 m\""}}));
    step(document.without("corner[0]"));
    step(document.without("opening[0]"));
    const ReadResult result = document.read();
    REQUIRE(result.shell);
    CHECK(result.problems.empty());
    CHECK(result.shell->rounds.count == 6);
    CHECK(result.shell->rounds.gap == Length::mm(38.1));
    CHECK(result.shell->walls[2].thickness == Length::mm(254));
    CHECK(result.shell->name == "Tarnfold");
    CHECK(result.shell->corners.empty());
    REQUIRE(result.shell->openings.size() == 1);
    CHECK(result.shell->openings[0].wall == "C");
    CHECK(document.file() == "tarnfold.roundlay");
}
