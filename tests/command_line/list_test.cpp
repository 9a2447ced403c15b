#include "tests/command_line/program.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>

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
    for (const char *what : {"cut", "pieces", "pegs", "order", "totals", "openings", "floors"}) {
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
