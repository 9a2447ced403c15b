#include "tests/command_line/program.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("format lists the tables of a document, and tells of one all its keys") {
    const Ran tables = run({"format"});
    CHECK(tables.code == 0);
    CHECK(tables.err.empty());
    for (const char *header : {"[shell] ", "[[wall]] ", "[[floor.beam]] ", "[wood] "})
        CHECK_THAT(tables.out, ContainsSubstring(header));

    for (const char *value : {"\na length ", "\na slope ", "\na direction ", "\na load ", "\"north-west\""})
        CHECK_THAT(tables.out, ContainsSubstring(value));
    CHECK_THAT(run({"format", "wall"}).out, ContainsSubstring("\"north-west\""));

    const Ran pegs = run({"format", "pegs"});
    CHECK(pegs.code == 0);
    CHECK(pegs.out.starts_with("[pegs]\nA peg runs down"));
    CHECK_THAT(
        pegs.out,
        ContainsSubstring(
            "\ndepth_below\n    how deep into the lower log; of round logs a part of the pitch, from the\n"
            "    lower log's crown down\n"
            "    takes:    a part of the lower log's height, over 0 and up to 1\n"
            "    left out: 0.5\n"));
    CHECK_THAT(run({"format", "wall"}).out,
               ContainsSubstring("\ntoward\n") && ContainsSubstring("must be stated"));
    CHECK_THAT(run({"format", "corner"}).out,
               ContainsSubstring("all keys of [notch]\n    left out: as in [notch]\n"));
}

TEST_CASE("format fits a terminal of 80 columns") {
    std::string all = run({"format"}).out;
    for (const auto &table : nlohmann::json::parse(run({"format", "--json"}).out))
        all += run({"format", table["table"]}).out;
    std::istringstream lines(all);
    for (std::string line; std::getline(lines, line);) {
        INFO(line);
        CHECK(line.size() < 80);
        CHECK(line.find('`') == std::string::npos);
    }
}

TEST_CASE("a table can be named with its brackets, and a mistyped one is told") {
    CHECK(run({"format", "[[floor.beam]]"}).out == run({"format", "floor.beam"}).out);
    CHECK(run({"format", "[rounds]"}).out == run({"format", "rounds"}).out);
    const Ran mistyped = run({"format", "opning"});
    CHECK(mistyped.code == 2);
    CHECK(mistyped.out.empty());
    CHECK_THAT(mistyped.err, ContainsSubstring("there is no table \"opning\"; did you mean \"opening\"?"));
    const Ran both = run({"format", "shell", "--schema"});
    CHECK(both.code == 2);
    CHECK_THAT(both.err, ContainsSubstring("--schema is of the whole document"));
}

TEST_CASE("format --json tells the same for machines") {
    const auto table = nlohmann::json::parse(run({"format", "floor", "--json"}).out);
    CHECK(table["header"] == "[[floor]]");
    const auto &rows = table["rows"];
    const auto row =
        std::find_if(rows.begin(), rows.end(), [](const auto &r) { return r["keys"][0] == "spacing"; });
    REQUIRE(row != rows.end());
    CHECK((*row)["left_out"] == "600 mm");
    CHECK((*row)["needed"] == false);
    CHECK((*row)["takes"] == "a length over 0 and up to 100 m");
}

TEST_CASE("every example that format shows can be typed") {
    for (const Words &words : std::vector<Words>{{"format"}, {"format", "opening"}, {"format", "--schema"}}) {
        const Ran ran = run(words);
        CHECK(ran.code == 0);
        CHECK(ran.err.empty());
        CHECK(ran.out.size() > 100);
    }
}
