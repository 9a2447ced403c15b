// Values past what a document takes: whose they are, and what would have been taken.
#include "kernel/document/document.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"

#include <string>

using namespace roundlay;
using roundlay::test::sample;
using roundlay::test::sample_with;

namespace {

Problems problems_of(const std::string &text) {
    return read_document(text, "x.roundlay").problems;
}

} // namespace

TEST_CASE("What is out of bounds names the thing that it belongs to") {
    struct Behind {
        const char *text, *message;
    };
    const Behind rows[] = {
        {"[[opening]]\nname = \"lake window\"\nwall = \"A\"\nfrom_left = 0\nsill = 0\nwidth = 0\nheight = "
         "\"1 ft\"",
         "\"width\" of opening \"lake window\" in wall \"A\""},
        {"[[opening]]\nwall = \"C\"\nfrom_left = 0\nsill = 0\nwidth = \"1 ft\"\nheight = \"1 "
         "ft\"\nsettle_space = \"3 m\"",
         "\"settle_space\" of opening 2 in wall \"C\""},
        {"[[partition]]\nname = \"P\"\nfrom = \"A\"\nfrom_left = \"-1 m\"\nto = \"C\"",
         "\"from_left\" of partition \"P\""},
        {"[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = 0", "\"level\" of floor \"G\""},
        {"[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"1 m\"\n[[floor.beam]]\n"
         "from_wall = \"1 m\"\nwidth = 0\nheight = \"1 ft\"",
         "\"width\" of beam 1 of floor \"G\""},
        {"[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"1 m\"\n[[floor.opening]]\nname = "
         "\"stair\"\n"
         "from_left = 0\nfrom_wall = 0\nwidth = 0\nlength = \"1 ft\"",
         "\"width\" of opening \"stair\" of floor \"G\""},
        {"[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"1 m\"\nlive_load = 2000",
         "\"live_load\" of floor \"G\""},
        {"[[log]]\nwall = \"A\"\nround = 3\n[[log]]\nwall = \"A\"\nround = 4\nbow = \"3 m\"",
         "\"bow\" of round 4 of wall \"A\""},
        {"[[bore]]\nname = \"north rod\"\nuse = \"rod\"\nwall = \"A\"\nfrom_left = \"2 ft\"\ndiameter = 0",
         "\"diameter\" of bore \"north rod\" in wall \"A\""},
        {"[[corner]]\nbetween = [\"B\", \"C\"]\noverhang = \"3 m\"",
         "\"overhang\" of the corner of \"B\" and \"C\""},
    };
    for (const Behind &row : rows) {
        INFO(row.text);
        const Problems problems = problems_of(sample + row.text + "\n");
        REQUIRE(problems.size() == 1);
        CHECK(problems.front().message == std::string(row.message) + " is out of bounds");
    }
}

TEST_CASE("Bounds are told in the units of the document, and what they say is taken") {
    const auto with_units = [](std::string text, const std::string &units) {
        return text.replace(text.find("thickness"), 0, "units = \"" + units + "\"\n");
    };
    const auto expected = [&](int line, const std::string &text, const std::string &units) {
        const Problems problems = problems_of(with_units(sample_with(line, text), units));
        REQUIRE(problems.size() == 1);
        return problems.front().expected;
    };
    CHECK(expected(29, "from_left = \"-3 ft\"", "metric") == "a length from 0 to 100 m");
    CHECK(expected(29, "from_left = \"-3 ft\"", "Imperial") == "a length from 0 to 328 ft");
    CHECK(expected(32, "height = 0", "imperial") == "a length over 0 and up to 328 ft");
    CHECK(expected(24, "least_tail = \"7 ft\"", "imperial") == "a length from 0 to 6 ft 6 in");
    CHECK(expected(22, "pitch = \"7 ft\"", "imperial") == "a length over 0 and up to 6 ft 6 in");
    for (const char *most : {"328 ft", "100 m"})
        CHECK(problems_of(sample_with(29, std::string("from_left = \"") + most + "\"")).empty());
    for (const char *most : {"6 ft 6 in", "2 m"})
        CHECK(problems_of(sample_with(24, std::string("least_tail = \"") + most + "\"")).empty());
}
