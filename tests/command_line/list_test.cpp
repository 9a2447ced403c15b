#include "tests/command_line/program.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("the cut list is a table for people with what its weights rest on") {
    const Ran ran = run({"list", "-"}, {.input = small_document()});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK(ran.out.starts_with("piece"));
    CHECK_THAT(ran.out, ContainsSubstring("A-01-1") && ContainsSubstring("Wood Handbook") &&
                            ContainsSubstring("licensed professional"));
    std::istringstream lines(ran.out.substr(0, ran.out.find("\n\n")));
    for (std::string line; std::getline(lines, line);)
        CHECK(line.back() != ' ');
}

TEST_CASE("each list comes as CSV and as JSON with as many rows") {
    for (const char *what : {"cut", "pieces", "pegs", "order", "totals", "openings", "floors", "seams"}) {
        INFO(what);
        const Ran csv = run({"list", "-", what, "--csv"}, {.input = small_document()});
        const Ran json = run({"list", "-", what, "--json"}, {.input = small_document()});
        CHECK(csv.code == 0);
        CHECK(json.code == 0);
        const auto rows = nlohmann::json::parse(json.out);
        CHECK(rows.size() > 0);
        CHECK(std::count(csv.out.begin(), csv.out.end(), '\r') ==
              static_cast<std::ptrdiff_t>(rows.size()) + 1);
    }
}

TEST_CASE("the list of openings names the rule of its settle spaces, not only that there is one") {
    const Ran ran = run({"list", "-", "openings"}, {.input = small_document()});
    CHECK(ran.code == 0);
    std::string flat = ran.out;
    std::replace(flat.begin(), flat.end(), '\n', ' ');
    CHECK_THAT(flat, ContainsSubstring("Settle space of window: 13 mm for each 300 mm of height") &&
                         ContainsSubstring("may not be your local one"));
}

TEST_CASE("units are the document's or those asked for") {
    const Ran metric = run({"list", "-", "order"}, {.input = small_document()});
    CHECK_THAT(metric.out, ContainsSubstring(" mm") && !ContainsSubstring("\""));
    const Ran imperial = run({"list", "-", "order", "--units", "imperial"}, {.input = small_document()});
    CHECK_THAT(imperial.out, ContainsSubstring("\"") && !ContainsSubstring(" mm"));
}

TEST_CASE("a shell with errors has no list: 1, findings on stderr, nothing on stdout") {
    const Ran ran = run({"list", "-"}, {.input = wrong_document()});
    CHECK(ran.code == 1);
    CHECK(ran.out.empty());
    CHECK_THAT(ran.err, ContainsSubstring("<stdin>:") && ContainsSubstring("error: "));
}

TEST_CASE("a reader that goes away is fine, a full disk is not") {
    const Ran gone =
        run({"list", "-", "pieces", "--json"}, {.input = small_document(), .close_out_at_once = true});
    CHECK(gone.code == 0);
    CHECK(gone.err.empty());
    const Ran full = run({"list", "-"}, {.input = small_document(), .out_file = "/dev/full"});
    CHECK(full.code == 4);
    CHECK_THAT(full.err, ContainsSubstring("cannot write to the standard output"));
}

TEST_CASE("the schema of a list is printed without a document, and a document without it is asked for") {
    const Ran schema = run({"list", "--schema", "pieces"});
    CHECK(schema.code == 0);
    const auto told = nlohmann::json::parse(schema.out);
    CHECK(told["allOf"][0]["$ref"] == "#/definitions/pieces");
    CHECK(told["definitions"]["pieces"]["items"]["required"][0] == "tag");
    const Ran unknown = run({"list", "--schema", "peices"});
    CHECK(unknown.code == 2);
    CHECK_THAT(unknown.err, ContainsSubstring("did you mean \"pieces\"?"));
    CHECK(run({"list", "cabin.roundlay", "--schema", "pieces"}).code == 2);
    CHECK(run({"list"}).code == 2);
}

TEST_CASE("sills and heads at the listed seams leave no sliver, and others do") {
    const std::string plain = run({"new", "-"}).out;
    const auto seams = nlohmann::json::parse(run({"list", "-", "seams", "--json"}, {.input = plain}).out);
    std::vector<nlohmann::json> logs;
    for (const auto &row : seams)
        if (row["wall"] == "B") logs.push_back(row);
    REQUIRE(logs.size() == 12); // eleven rounds, the first and the last of them half logs
    const auto window = [&](double sill, double head) {
        return plain +
               "[[opening]]\nkind = \"window\"\nwall = \"B\"\nfrom_left = \"2 m\"\nwidth = \"900 mm\"\nsill "
               "= \"" +
               std::to_string(sill) + " mm\"\nheight = \"" + std::to_string(head - sill) + " mm\"\n";
    };
    const auto slivers = [&](double sill, double head) {
        const Ran ran = run({"check", "-"}, {.input = window(sill, head)});
        INFO(ran.out);
        CHECK(ran.code == 0);
        std::string words;
        for (const char *said : {"raise its top", "lower its sill"})
            if (ran.out.find(said) != std::string::npos) words += said;
        return words;
    };
    for (const std::size_t low : {1u, 3u}) {
        const double sill = logs[low]["top_left_mm"], head = logs[low + 4]["under_left_mm"];
        CHECK(slivers(sill, head).empty());
        CHECK(slivers(sill + 25, head - 25).empty()); // the gap: to the next log's faces
        CHECK(slivers(sill + 40, head) == "lower its sill");
        CHECK(slivers(sill, logs[low + 4]["top_left_mm"].get<double>() - 15) == "raise its top");
    }
    CHECK_THAT(run({"list", "-", "seams"}, {.input = plain}).out, ContainsSubstring("leaves no sliver"));
}

TEST_CASE("seams are listed where an opening is wrong, which is said too") {
    const std::string plain = run({"new", "-"}).out;
    const std::string wrong = plain +
                              "[[opening]]\nkind = \"window\"\nwall = \"B\"\nfrom_left = \"2 m\"\nwidth = "
                              "\"900 mm\"\nsill = \"1 m\"\nheight = \"9 m\"\n";
    const Ran ran = run({"list", "-", "seams", "--csv"}, {.input = wrong});
    CHECK(ran.code == 0);
    CHECK(ran.out == run({"list", "-", "seams", "--csv"}, {.input = plain}).out);
    CHECK_THAT(ran.err, ContainsSubstring("error: wall B, window 1: it ends"));
    CHECK(run({"list", "-", "cut"}, {.input = wrong}).code == 1);
    const Ran none = run({"list", "-", "seams"}, {.input = plain + "[[wall]]\nname = \"E\"\n"});
    CHECK(none.code != 0);
    CHECK(none.out.empty());
}

TEST_CASE("a list of what a shell does not have says so; as a table for machines it is empty") {
    const Ran made = run({"new", "-", "--width", "6m", "--depth", "5m"});
    for (const std::string what : {"floors", "openings", "bores"}) {
        INFO(what);
        const Ran ran = run({"list", "-", what}, {.input = made.out});
        CHECK(ran.code == 1);
        CHECK(ran.out.empty());
        CHECK_THAT(ran.err, ContainsSubstring("there are no " + what + " in this shell"));
        const Ran csv = run({"list", "-", what, "--csv"}, {.input = made.out});
        CHECK(csv.code == 0);
        CHECK(std::count(csv.out.begin(), csv.out.end(), '\n') == 1);
    }
}
