#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"

#include <string>

using namespace roundlay;
using roundlay::test::sample;
using roundlay::test::sample_with;

namespace {

/// One line of the sample written otherwise, and the one problem that follows.
struct Row {
    int line;
    const char *text;
    int at_line, at_column;
    const char *message;
};

Problems problems_of(const std::string &text) {
    return read_document(text, "x.roundlay").problems;
}

void check_row(const Row &row, Weight weight) {
    INFO("line " << row.line << ": " << row.text);
    const ReadResult result = read_document(sample_with(row.line, row.text), "x.roundlay");
    CHECK(result.shell.has_value() == (weight == Weight::warning));
    REQUIRE_FALSE(result.problems.empty());
    const Problem &problem = result.problems.front();
    CHECK(problem.message == row.message);
    CHECK(problem.weight == weight);
    CHECK(problem.place.line == row.at_line);
    CHECK(problem.place.column == row.at_column);
    CHECK(problem.file == "x.roundlay");
    CHECK(result.problems.size() == 1);
    if (weight == Weight::error) CHECK_FALSE(problem.expected.empty());
}

} // namespace

TEST_CASE("The sample has no problems") {
    CHECK(problems_of(sample).empty());
}

TEST_CASE("Every error of a statement is reported at its place") {
    const Row rows[] = {
        {1, "", 1, 1, "\"roundlay\" is missing"},
        {1, "roundlay = \"1\"", 1, 12, "\"roundlay\" cannot be a text"},
        {1, "roundlay = 0", 1, 12, "\"roundlay\" is out of bounds"},
        {1, "roundlay = 2", 1, 12,
         "the document is written in version 2 of the format, which is newer than this program"},
        {2, "[[shell]]", 2, 1, "\"shell\" is stated once in a document"},
        {3, "", 2, 1, "\"thickness\" is missing in [shell]"},
        {3, "thickness = 8", 3, 13, "\"thickness\" cannot be a number"},
        {3, "thickness = nan", 3, 13, "\"thickness\" cannot be a number"},
        {3, "thickness = true", 3, 13, "\"thickness\" cannot be true or false"},
        {3, "thickness = [\"8 in\"]", 3, 13, "\"thickness\" cannot be a list"},
        {3, "thickness = {a = 1}", 3, 13, "\"thickness\" cannot be a table"},
        {3, "thickness = 1979-05-27", 3, 13, "\"thickness\" cannot be a date or time"},
        {3, "thickness = 0", 3, 13, "\"thickness\" is out of bounds"},
        {3, "thickness = \"-8 in\"", 3, 13, "\"thickness\" is out of bounds"},
        {3, "thickness = \"3 m\"", 3, 13, "\"thickness\" is out of bounds"},
        {3, "thickness = \"8\"", 3, 14, "\"thickness\": the number has no unit"},
        {3, "thickness = \"8 yards\"", 3, 16, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = \"\xc2\xbd yards\"", 3, 16, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = '8 yards'", 3, 16, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = '''8 yards'''", 3, 13, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = \"\\u0038 yards\"", 3, 13, "\"thickness\": \"yards\" is not a unit of length"},
        {3, "thickness = \"nan\"", 3, 14, "\"thickness\": \"nan\" stands where a number should"},
        {3, "thickness = \"\"", 3, 14, "\"thickness\": the length is empty"},
        {3, "units = 1\nthickness = \"8 in\"", 3, 9, "\"units\" cannot be a number"},
        {3, "units = \"inches\"\nthickness = \"8 in\"", 3, 9, "\"units\" cannot be \"inches\""},
        {3, "units = \"metrik\"\nthickness = \"8 in\"", 3, 9,
         "\"units\" cannot be \"metrik\" (did you mean \"metric\"?)"},
        {3, "name = 3\nthickness = \"8 in\"", 3, 8, "\"name\" cannot be a number"},
        {3, "name = \"a\\u0000b\"\nthickness = \"8 in\"", 3, 8, "\"name\" has a control character in it"},
        {6, "", 4, 1, "\"toward\" is missing in this [[wall]]"},
        {6, "toward = 90", 6, 10, "\"toward\" cannot be a number"},
        {6, "toward = \"up\"", 6, 10, "\"toward\" cannot be \"up\""},
        {7, "length = \"10000 m\"", 7, 10, "\"length\" of wall \"A\" is out of bounds"},
        {7, "length = \"0 mm\"", 7, 10, "\"length\" of wall \"A\" is out of bounds"},
        {7, "length = \"16 ft\"\nthickness = \"0 in\"", 8, 13,
         "\"thickness\" of wall \"A\" is out of bounds"},
        {7, "length = \"16 ft\"\npitch = \"0 in\"", 8, 9, "\"pitch\" of wall \"A\" is out of bounds"},
        {7, "length = \"16 ft\"\nlog_height = \"0 in\"", 8, 14,
         "\"log_height\" of wall \"A\" is out of bounds"},
        {13, "name = \"a\"", 13, 8, "the name \"a\" is taken; the other one stands in line 5"},
        {13, "name = \"C-1\"", 13, 8, "\"name\" of a wall cannot be \"C-1\""},
        {13, "name = \"\"", 13, 8, "\"name\" of a wall cannot be \"\""},
        {13, "name = \"ABCDEFGHI\"", 13, 8, "\"name\" of a wall cannot be \"ABCDEFGHI\""},
        {13, "", 12, 1, "\"name\" is missing in this [[wall]]"},
        {36, "species = \"x\"\n[trim]\nspline_width = \"2 in\"", 37, 1,
         "a spline groove needs a width and a depth"},
        {36,
         "species = \"x\"\n[[opening]]\nwall = \"A\"\nfrom_left = \"2 ft\"\nsill = \"2 ft\"\nwidth = \"2 "
         "ft\"\n"
         "height = \"2 ft\"\nspline_width = \"2 in\"",
         43, 16, "a spline groove needs a width and a depth"},
        {36, "species = \"x\"\n[[floor]]\nname = \"A\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"", 38, 8,
         "the name \"A\" is taken; the other one stands in line 5"},
        {36, "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"A\"\nlevel = \"2 ft\"", 40, 6,
         "joists cannot lie from wall \"A\" to itself"},
        {36, "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"", 37, 1,
         "\"level\" is missing in this [[floor]]"},
        {36,
         "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"\n"
         "[[floor.beam]]\nwidth = \"8 in\"\nheight = \"8 in\"",
         42, 1, "\"from_wall\" is missing in this [[floor.beam]]"},
        {36,
         "species = \"x\"\n[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"2 ft\"\n"
         "[[floor.opening]]\nfrom_left = \"3 ft\"\nfrom_wall = \"3 ft\"\nwidth = \"3 ft\"",
         42, 1, "\"length\" is missing in this [[floor.opening]]"},
        {36,
         "species = \"x\"\n[[bore]]\nuse = \"rod\"\nwall = \"A\"\nfrom_left = \"2 ft\"\ndiameter = \"1 in\"\n"
         "from_round = 3\nto_round = 2",
         43, 12, "the bore ends below its start"},
        {36,
         "species = \"x\"\n[[bore]]\nuse = \"nail\"\nwall = \"A\"\nfrom_left = \"2 ft\"\ndiameter = \"1 in\"",
         38, 7, "\"use\" cannot be \"nail\""},
        {20, "[[rounds]]", 20, 1, "\"rounds\" is stated once in a document"},
        {21, "count = 5\nheight = \"4 ft\"", 20, 1,
         "[rounds] states count, height and pitch, which may contradict each other"},
        {21, "", 20, 1, "[rounds] states only one of count, height and pitch"},
        {21, "count = 5.0", 21, 9, "\"count\" has a decimal point"},
        {21, "count = \"5\"", 21, 9, "\"count\" cannot be a text"},
        {21, "count = 0", 21, 9, "\"count\" is out of bounds"},
        {21, "count = 501", 21, 9, "\"count\" is out of bounds"},
        {22, "pitch = \"0 in\"", 22, 9, "\"pitch\" is out of bounds"},
        {22, "height = \"101 m\"", 22, 10, "\"height\" is out of bounds"},
        {22, "pitch = \"9 in\"\ngap = \"-1 in\"", 23, 7, "\"gap\" is out of bounds"},
        {22, "pitch = \"9 in\"\nfull_first = \"E\"", 23, 14, "there is no wall \"E\""},
        {22, "pitch = \"9 in\"\nfull_first = \"a\"", 23, 14, "there is no wall \"a\" (did you mean \"A\"?)"},
        {22, "pitch = \"9 in\"\ntop = \"flat\"", 23, 7, "\"top\" cannot be \"flat\""},
        {24, "kind = \"dovetail\"", 24, 8, "\"kind\" cannot be \"dovetail\""},
        {24, "kind = \"full_dovetale\"", 24, 8,
         "\"kind\" cannot be \"full_dovetale\" (did you mean \"full dovetail\"?)"},
        {24, "kind = \"stated\"\nacross = \"-1:8\"", 23, 1, "\"along\" is missing in [notch]"},
        {24, "kind = \"stated\"\nalong = \"1:8\"", 23, 1, "\"across\" is missing in [notch]"},
        {24, "slope = \"-1:8\"", 24, 9, "\"slope\" is out of bounds"},
        {24, "slope = \"steep\"", 24, 10, "\"slope\": \"steep\" stands where a number should"},
        {24, "slope = 12.5", 24, 9, "\"slope\" cannot be read: the slope is steeper than 10:1 (84 degrees)"},
        {24, "slope = inf", 24, 9, "\"slope\" cannot be read: \"inf\" stands where a number should"},
        {24, "slope = true", 24, 9, "\"slope\" cannot be true or false"},
        {24, "overhang = \"-1 in\"", 24, 12, "\"overhang\" is out of bounds"},
        {24, "shoulder_deep = \"1 mm\"\nshoulder_proud = \"1 mm\"", 25, 18,
         "a shoulder cannot be both deep and proud"},
        {24, "shoulder_deep = \"-1 mm\"", 24, 17, "\"shoulder_deep\" is out of bounds"},
        {27, "[[log]]\nwall = \"A\"\nround = 1\nkind = \"saddle\"\n[[opening]]", 30, 8,
         "\"kind\" cannot be \"saddle\""},
        {27, "[[log]]\nwall = \"A\"\nround = 1\noverhang_left = \"3 m\"\n[[opening]]", 30, 17,
         "\"overhang_left\" of round 1 of wall \"A\" is out of bounds"},
        {27, "[logs]\ndiameter = \"0 in\"\n[[opening]]", 28, 12, "\"diameter\" is out of bounds"},
        {27, "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"X\"\n[[opening]]", 31, 6,
         "there is no wall \"X\""},
        {27, "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"A\"\n[[opening]]", 31, 6,
         "partition \"P\" cannot end in wall \"A\""},
        {27, "[[partition]]\nname = \"a\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"C\"\n[[opening]]", 28, 8,
         "the name \"a\" is taken; the other one stands in line 5"},
        {27, "[[partition]]\nname = \"P\"\nfrom = \"A\"\nto = \"C\"\n[[opening]]", 27, 1,
         "\"from_left\" is missing in this [[partition]]"},
        {27,
         "[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"1 m\"\nto = \"C\"\ntoward = "
         "\"up\"\n[[opening]]",
         32, 10, "\"toward\" cannot be \"up\""},
        {27, "[[step]]\nwall = \"A\"\nfrom_left = 0\nwidth = \"1 m\"\n[[opening]]", 27, 1,
         "\"rise\" is missing in this [[step]]"},
        {27, "[[step]]\nwall = \"A\"\nfrom_left = 0\nwidth = 0\nrise = \"9 in\"\n[[opening]]", 30, 9,
         "\"width\" of step 1 in wall \"A\" is out of bounds"},
        {24, "least_tail = \"3 m\"", 24, 14, "\"least_tail\" is out of bounds"},
        {26, "", 25, 1, "\"between\" is missing in this [[corner]]"},
        {26, "between = \"A B\"", 26, 11, "\"between\" cannot be a text"},
        {26, "between = [\"A\", 3]", 26, 11, "\"between\" cannot be a list"},
        {26, "between = [\"A\"]", 26, 11, "\"between\" does not name two walls"},
        {26, "between = [\"A\", \"C\"]", 26, 11, "walls \"A\" and \"C\" do not meet at a corner"},
        {26, "between = [\"A\", \"A\"]", 26, 11, "walls \"A\" and \"A\" do not meet at a corner"},
        {26, "between = [\"A\", \"X\"]", 26, 11, "there is no wall \"X\""},
        {26, "between = [\"A\", \"B\"]\n[[corner]]\nbetween = [\"B\", \"A\"]", 27, 1,
         "the corner of \"A\" and \"B\" is stated twice; the other one stands in line 25"},
        {26, "between = [\"A\", \"B\"]\nkind = \"stated\"\nalong = \"1:8\"", 25, 1,
         "\"across\" is missing in this [[corner]]"},
        {27, "[[logs]]\n[[opening]]", 27, 1, "\"logs\" is stated once in a document"},
        {27, "[logs]\nbutt_height = \"0 in\"\n[[opening]]", 28, 15, "\"butt_height\" is out of bounds"},
        {27, "[logs]\ntip_height = 8\n[[opening]]", 28, 14, "\"tip_height\" cannot be a number"},
        {27, "[logs]\nbutt_width = \"3 m\"\n[[opening]]", 28, 14, "\"butt_width\" is out of bounds"},
        {27, "[logs]\ntip_width = \"-1 in\"\n[[opening]]", 28, 13, "\"tip_width\" is out of bounds"},
        {27, "[logs]\nbutt = \"rigth\"\n[[opening]]", 28, 8,
         "\"butt\" cannot be \"rigth\" (did you mean \"right\"?)"},
        {27, "[log]\n[[opening]]", 27, 1, "\"log\" cannot be a table"},
        {27, "[[log]]\nround = 1\n[[opening]]", 27, 1, "\"wall\" is missing in this [[log]]"},
        {27, "[[log]]\nwall = \"A\"\n[[opening]]", 27, 1, "\"round\" is missing in this [[log]]"},
        {27, "[[log]]\nwall = \"E\"\nround = 1\n[[opening]]", 28, 8, "there is no wall \"E\""},
        {27, "[[log]]\nwall = \"A\"\nround = 0\n[[opening]]", 29, 9,
         "\"round\" of log 1 in wall \"A\" is out of bounds"},
        {27, "[opening]", 27, 1, "\"opening\" cannot be a table"},
        {28, "", 27, 1, "\"wall\" is missing in this [[opening]]"},
        {28, "wall = \"E\"", 28, 8, "there is no wall \"E\""},
        {28, "kind = \"gate\"\nwall = \"A\"", 28, 8, "\"kind\" cannot be \"gate\""},
        {29, "", 27, 1, "\"from_left\" is missing in this [[opening]]"},
        {29, "from_left = \"-3 ft\"", 29, 13, "\"from_left\" of opening 1 in wall \"A\" is out of bounds"},
        {30, "", 27, 1, "\"sill\" is missing in this [[opening]]"},
        {30, "sill = \"-1 in\"", 30, 8, "\"sill\" of opening 1 in wall \"A\" is out of bounds"},
        {31, "", 27, 1, "\"width\" is missing in this [[opening]]"},
        {31, "width = 0", 31, 9, "\"width\" of opening 1 in wall \"A\" is out of bounds"},
        {32, "", 27, 1, "\"height\" is missing in this [[opening]]"},
        {32, "height = \"101 m\"", 32, 10, "\"height\" of opening 1 in wall \"A\" is out of bounds"},
        {34, "wanted = \"yes\"", 34, 10, "\"wanted\" cannot be a text"},
        {34, "diameter = \"0 mm\"", 34, 12, "\"diameter\" is out of bounds"},
        {34, "spacing = \"0 mm\"", 34, 11, "\"spacing\" is out of bounds"},
        {34, "end_distance = \"-1 mm\"", 34, 16, "\"end_distance\" is out of bounds"},
        {34, "between = \"-1 mm\"", 34, 11, "\"between\" is out of bounds"},
        {34, "depth_below = 0", 34, 15, "\"depth_below\" is out of bounds"},
        {34, "depth_below = 1.01", 34, 15, "\"depth_below\" is out of bounds"},
        {34, "depth_below = nan", 34, 15, "\"depth_below\" is out of bounds"},
        {34, "depth_below = \"half\"", 34, 15, "\"depth_below\" cannot be a text"},
        {34, "fewest = -1", 34, 10, "\"fewest\" is out of bounds"},
        {34, "fewest = 21", 34, 10, "\"fewest\" is out of bounds"},
        {36, "species = \"\"", 36, 11, "\"species\" is empty"},
        {36, "moisture = \"19 %\"", 36, 12, "\"moisture\" cannot be a text"},
        {36, "moisture = 301", 36, 12, "\"moisture\" is out of bounds"},
        {36, "moisture = inf", 36, 12, "\"moisture\" is out of bounds"},
        {36, "moisture = -1", 36, 12, "\"moisture\" is out of bounds"},
    };
    for (const Row &row : rows)
        check_row(row, Weight::error);
}

TEST_CASE("What is not used is warned of, with what may have been meant, and never dropped in silence") {
    const Row rows[] = {
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
        {36, "species = \"x\"\n[[walls]]", 37, 3,
         "\"walls\" is not known here and is not used (did you mean \"wall\"?)"},
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
    };
    for (const Row &row : rows)
        check_row(row, Weight::warning);
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
