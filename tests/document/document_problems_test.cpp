#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "tests/document/problem_rows.h"
#include "tests/support/catch.h"

#include <string>

using namespace roundlay;
using namespace roundlay::test;

namespace {

Problems problems_of(const std::string &text) {
    return read_document(text, "x.roundlay").problems;
}

} // namespace

TEST_CASE("The sample has no problems") {
    CHECK(problems_of(sample).empty());
}

TEST_CASE("What is not used is warned of, with what may have been meant, and never dropped in silence") {
    check_warnings({
        {3, "thickness = \"8 in\"\nthicknes = \"9 in\"", 4, 1,
         "\"thicknes\" is not known here and is not used (did you mean \"thickness\"?)"},
        {7, "log_hight = \"8 in\"\nlength = \"16 ft\"", 7, 1,
         "\"log_hight\" is not known here and is not used (did you mean \"log_height\"?)"},
        {36,
         "species = \"x\"\n[[opening]]\nkind = \"door\"\nwall = \"A\"\nfrom_left = \"2 ft\"\nsill = \"0 "
         "ft\"\n"
         "width = \"2 ft\"\nheight = \"2 ft\"\nsill_slope = \"1:8\"",
         44, 14, "the sill of a door is not sloped"},
        {36, "species = \"x\"\n[cellar]\na = 1", 37, 2, "\"cellar\" is not known here and is not used"},
        {36, "species = \"x\"\n\"a\\u0007 key\" = 1", 37, 1, "\"a  key\" is not known here and is not used"},
        {27, "[[log]]\nwall = \"A\"\nround = 2\n[[log]]\nwall = \"A\"\nround = 2\n[[opening]]", 30, 1,
         "round 2 of wall \"A\" is stated twice; where this one differs from the other in line 27, this one "
         "counts"},
        {24, "kind = \"square lap\"\nslope = \"1:8\"", 25, 9,
         "\"slope\" is not used here, only by a full or half dovetail"},
        {24, "kind = \"full dovetail\"\nalong = \"1:8\"", 25, 9,
         "\"along\" is not used here, only by kind = \"stated\""},
        {24, "kind = \"full dovetail\"\nacross = \"1:8\"", 25, 10,
         "\"across\" is not used here, only by kind = \"stated\""},
        {28,
         "name = \"w\"\nwall = \"A\"\nfrom_left = 0\nsill = 0\nwidth = \"1 ft\"\nheight = \"1 ft\"\n"
         "[[opening]]\nname = \"w\"\nwall = \"A\"",
         35, 8, "two openings are called \"w\"; the other one stands in line 28"},
    });
}

TEST_CASE("A whole table whose name has a slip in it is refused, not left out") {
    check_errors({
        {36, "species = \"x\"\n[[walls]]\nname = \"Z\"", 37, 3,
         "\"walls\" is not known here and is not used (did you mean \"wall\"?)"},
        {36, "species = \"x\"\n[[openning]]\nname = \"Z\"", 37, 3,
         "\"openning\" is not known here and is not used (did you mean \"opening\"?)"},
    });
}

TEST_CASE("A text that is not TOML is refused at the broken line, with the likely remedy") {
    struct Broken {
        int line;
        const char *text;
        int at_line;
        const char *remedy;
    };
    const Broken rows[] = {
        {1, "roundlay", 1, "key = value"},
        {1, "= 1", 1, "key = value with a key of one word"},
        {1, "round lay = 1", 1, "key = value with a key of one word"},
        {1, "roundlay =", 1, "a value behind the equals sign"},
        {1, "roundlay = # 1", 1, "a value behind the equals sign"},
        {2, "[shell", 2, "a [table] header"},
        {2, "[!]", 2, "a [table] header"},
        {3, "thickness = 8 in", 3, "lengths and slopes in quotes"},
        {3, "thickness = -8 in", 3, "lengths and slopes in quotes"},
        {3, "thickness = 8\u00bd in", 3, "lengths and slopes in quotes"},
        {3, "thickness = \u00bd in", 3, "text in quotes"},
        {3, "thickness\u00bd = 1", 3, "key = value with a key of one word"},
        {3, "thickness = \"8\" in\"", 3, "inch marks end the text"},
        {3, "thickness = \"7' 6\"\"", 3, "inch marks end the text"},
        {3, "thickness = \"8 in", 3, "a closing quote on the same line"},
        {3, "thickness = '8 in", 3, "a closing quote on the same line"},
        {3, "thickness = eight", 3, "text in quotes"},
        {3, "thickness = t", 3, "text in quotes"},
        {26, "between = [\"A\" \"B\"]", 26, "a list such as [\"A\", \"B\"]"},
        {3, "thickness = \"8 in\"\nthickness = \"9 in\"", 4, "each statement and [table] once"},
        {4, "[wall]", 8, "each statement and [table] once"},
        {36, "a = [[[[[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]]]]]", 36, "a list"},
    };
    for (const Broken &row : rows) {
        INFO(row.text);
        const ReadResult result = read_document(sample_with(row.line, row.text), "x");
        CHECK_FALSE(result.shell);
        REQUIRE(result.problems.size() == 1);
        const Problem &problem = result.problems.front();
        CHECK(problem.place.line == row.at_line);
        CHECK(problem.place.column >= 1);
        CHECK(problem.message.rfind("the text is not TOML: ", 0) == 0);
        CHECK(problem.message.find("TOML_") == std::string::npos);
        CHECK(problem.message.find('\n') == std::string::npos);
        CHECK(problem.expected.find(row.remedy) != std::string::npos);
    }
}

TEST_CASE("Bytes that are no text are refused with their offset") {
    struct Bytes {
        std::string text;
        const char *message;
        int line, column;
    };
    const Bytes rows[] = {
        {std::string("a = 1\nb = \"\0\"", 13), "this is not a text file: byte 0x00 at offset 11", 2, 6},
        {"\x7f", "this is not a text file: byte 0x7F at offset 0", 1, 1},
        {"# \x07", "this is not a text file: byte 0x07 at offset 2", 1, 3},
        {"# \xff", "this is not a text file: byte 0xFF at offset 2", 1, 3},
        {"# \u00e9\xc3", "this is not a text file: byte 0xC3 at offset 4", 1, 4},
        {"\xff\xfe"
         "r\0",
         "this is not a text file: byte 0xFF at offset 0", 1, 1}, // UTF-16
        {"a.b.c.d.e.f.g.h.i = 1", "a dotted name has more than 8 parts", 1, 17},
        {"a = [" + std::string(20'001, '['), "the file has more than 20,000 brackets and dots", 1, 20'005},
        {std::string(limits::bytes + 1, '\n'), "the file is larger than 4 MB (4,000,000 bytes)", 0, 0},
    };
    for (const Bytes &row : rows) {
        const ReadResult result = read_document(row.text, "x");
        CHECK_FALSE(result.shell);
        REQUIRE(result.problems.size() == 1);
        CHECK(result.problems.front().message == row.message);
        CHECK(result.problems.front().place.line == row.line);
        CHECK(result.problems.front().place.column == row.column);
    }
}

TEST_CASE("A load is stated in kilopascals or with its unit, and refused where it has neither or is past any "
          "floor") {
    const auto floor_with = [](const std::string &load) {
        return sample +
               "[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"26 in\"\nlive_load = " + load +
               "\n";
    };
    const auto load_of = [&](const std::string &load) {
        const ReadResult read = read_document(floor_with(load), "x.roundlay");
        REQUIRE(read.shell);
        return *read.shell->floors.at(0).live_load;
    };
    CHECK(load_of("1.9") == 1.9);
    CHECK(load_of("\"1.9 kPa\"") == 1.9);
    CHECK(load_of("\"40 psf\"") ==
          Approx(40 * 0.04788026).epsilon(1e-7)); // NIST SP 811, appendix B.8, from memory
    CHECK(load_of("10") == 10);
    CHECK(load_of("\"40 kPa\"") == 40);
    for (const char *wrong :
         {"\"40\"", "\"40 psi\"", "\"2000 psf\"", "\"-1 kPa\"", "2000", "\"51 kPa\"", "\"0 psf\"", "true"}) {
        INFO(wrong);
        const Problems problems = problems_of(floor_with(wrong));
        REQUIRE(problems.size() == 1);
        CHECK(problems.front().weight == Weight::error);
        CHECK_THAT(problems.front().expected, ContainsSubstring("\"40 psf\""));
    }
}

TEST_CASE("A load over 10 without its unit is refused, and both that it can be are told") {
    const auto problem_of = [](const std::string &load) {
        const Problems problems = problems_of(
            sample + "[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"26 in\"\n" + load + "\n");
        REQUIRE(problems.size() == 1);
        return problems.front().message + "; expected " + problems.front().expected;
    };
    CHECK(problem_of("live_load = 40") ==
          "\"live_load\" has no unit, and 40 kPa is 835.4 psf; expected the unit "
          "stated: \"40 psf\" or \"40 kPa\"");
    CHECK(problem_of("live_load = 1.9\ndead_load = 10.5") ==
          "\"dead_load\" has no unit, and 10.5 kPa is 219.3 psf; expected the unit stated: \"10.5 psf\" or "
          "\"10.5 kPa\"");
    CHECK_THAT(problem_of("live_load = 60"), ContainsSubstring("expected the unit stated: \"60 psf\""));
}

TEST_CASE("All problems come at once, in the order of the text") {
    const Problems problems =
        problems_of("roundlay = 2\n[shell]\nthick = 1\n[[wall]]\nname = 3\ntoward = \"up\"\n"
                    "[rounds]\ncount = 0\n[[opening]]\nwidth = \"x\"\n");
    const char *messages[] = {
        "the document is written in version 2 of the format, which is newer than this program",
        "\"thickness\" is missing in [shell]",
        "\"thick\" is not known here and is not used",
        "\"name\" cannot be a number",
        "\"toward\" cannot be \"up\"",
        "[rounds] states only one of count, height and pitch",
        "\"count\" is out of bounds",
        "\"wall\" is missing in this [[opening]]",
        "\"from_left\" is missing in this [[opening]]",
        "\"sill\" is missing in this [[opening]]",
        "\"height\" is missing in this [[opening]]",
        "\"width\": \"x\" stands where a number should",
    };
    REQUIRE(problems.size() == std::size(messages));
    for (std::size_t i = 0; i < problems.size(); ++i)
        CHECK(problems[i].message == messages[i]);
}

TEST_CASE("An empty document lacks what it must state, and nothing else") {
    const Problems problems = problems_of("");
    REQUIRE(problems.size() == 4);
    CHECK(problems[0].message == "\"roundlay\" is missing");
    CHECK(problems[1].message == "\"shell\" is missing");
    CHECK(problems[2].message == "\"wall\" is missing");
    CHECK(problems[3].message == "\"rounds\" is missing");
}

TEST_CASE("More than a hundred problems are counted, not listed") {
    std::string text = sample;
    for (int i = 0; i < 1000; ++i)
        text += "unknown" + std::to_string(i) + " = 1\n";
    const Problems problems = problems_of(text);
    REQUIRE(problems.size() == limits::problems + 1);
    CHECK(problems.back().message == "900 further problems are not listed");
    CHECK(problems.back().weight == Weight::warning);
    CHECK(read_document(text, "x").shell.has_value());
}

TEST_CASE("Too many walls or openings are one problem") {
    std::string openings, walls, logs;
    for (int i = 0; i < 5001; ++i)
        logs += "[[log]]\n";
    CHECK(problems_of(sample + logs).at(0).message == "\"log\" has more than 5000 entries [[log]]");
    for (int i = 0; i < 501; ++i)
        openings += "[[opening]]\n";
    for (int i = 0; i < 101; ++i)
        walls += "[[wall]]\n";
    CHECK(problems_of(sample + openings).at(0).message ==
          "\"opening\" has more than 500 entries [[opening]]");
    std::string beams = "[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"\n";
    for (int i = 0; i < 51; ++i)
        beams += "[[floor.beam]]\n";
    CHECK(problems_of(sample + beams).at(0).message == "\"beam\" has more than 50 entries [[floor.beam]]");
    CHECK(problems_of(sample + walls).at(0).message == "\"wall\" has more than 100 entries [[wall]]");
}

TEST_CASE("A long name is refused and a long word is cut in the message") {
    const std::string name(201, 'x'), good(200, 'x');
    CHECK(problems_of(sample_with(3, "name = \"" + name + "\"\nthickness = \"8 in\"")).at(0).message ==
          "\"name\" is too long");
    CHECK(problems_of(sample_with(3, "name = \"" + good + "\"\nthickness = \"8 in\"")).empty());
    CHECK(problems_of(sample_with(6, "toward = \"" + good + "\"")).at(0).message ==
          "\"toward\" cannot be \"" + std::string(40, 'x') + "...\"");
}

TEST_CASE("A problem is printed on one line, as editors can follow it") {
    CHECK(to_text({Weight::error, "a.roundlay", {3, 7, 30}, "it is wrong", "the right thing"}) ==
          "a.roundlay:3:7: error: it is wrong; expected the right thing");
    CHECK(to_text({Weight::warning, "a.roundlay", {}, "it is odd", ""}) == "a.roundlay: warning: it is odd");
    CHECK(to_text({Weight::note, "", {1, 2, 1}, "so it is", ""}) == ":1:2: note: so it is");
}
