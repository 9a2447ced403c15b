#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <cstdlib>

using namespace roundlay;
using namespace roundlay::test;
using Json = nlohmann::json;

namespace {

int line_of(const std::string &text, const std::string &part) {
    const auto at = text.find(part);
    REQUIRE(at != std::string::npos);
    return 1 +
           static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

} // namespace

TEST_CASE("a good shell is summed up in one line") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    const Ran ran = run({"check", "hut.roundlay"}, {.folder = home.path().string()});
    CHECK(ran.code == 0);
    CHECK(ran.err.empty());
    CHECK_THAT(ran.out, ContainsSubstring("hut.roundlay: 4 walls, 4 rounds (5 logs in walls B and D), ") &&
                            ContainsSubstring("975 mm high (1000 mm by its rounds); 0 errors"));
}

TEST_CASE("a finding names the file, the line of its statement, the place and what would fit") {
    const std::string document = wrong_document();
    const Ran ran = run({"check", "-"}, {.input = document});
    CHECK(ran.code == 1);
    const int line = line_of(document, "width = \"9000 mm\"");
    CHECK_THAT(ran.out, ContainsSubstring("<stdin>:" + std::to_string(line) + ":") &&
                            ContainsSubstring(": error: ") && ContainsSubstring("wall A"));
    CHECK_THAT(ran.out, ContainsSubstring("1 error, "));
}

TEST_CASE("JSON tells the same to machines, whatever is wrong") {
    const Json good = Json::parse(run({"check", "-", "--json"}, {.input = small_document()}).out);
    CHECK(good["readable"] == true);
    CHECK(good["errors"] == 0);
    CHECK(good["shell"]["walls"] == 4);
    CHECK(good["shell"]["height_mm"] == 1000.0);

    const std::string document = wrong_document();
    const Ran ran = run({"--json", "check", "-"}, {.input = document});
    CHECK(ran.code == 1);
    const Json wrong = Json::parse(ran.out);
    CHECK(wrong["shell"].is_null());
    CHECK(wrong["findings"][0]["weight"] == "error");
    CHECK(wrong["findings"][0]["line"] == line_of(document, "width = \"9000 mm\""));
    CHECK(wrong["findings"][0]["what"]["text"] == "it is %1 wide");
    CHECK(wrong["findings"][0]["what"]["amounts"][0]["length_mm"] == 9000.0);
    CHECK(wrong["findings"][0]["advice"]["amounts"][0]["length_mm"] > 1000.0);

    const Ran unread = run({"check", "-", "--json"}, {.input = "roundlay = 1\n[shell]\nname = 3\n"});
    CHECK(unread.code == 3);
    const Json none = Json::parse(unread.out);
    CHECK(none["readable"] == false);
    CHECK(none["errors"] > 0);
    CHECK(none["problems"].size() >= 1);
    CHECK(Json::accept(run({"check", "-", "--json"}, {.input = std::string("\xff\xfe\0", 3)}).out));
}

TEST_CASE("an independent reader takes the JSON") {
    if (std::system("command -v jq >/dev/null 2>&1") != 0) {
        WARN("jq is not installed: the JSON is only read by the library that wrote it");
        return;
    }
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    for (const Words &words :
         std::vector<Words>{{"check", "hut.roundlay", "--json"},
                            {"list", "hut.roundlay", "--json"},
                            {"list", "hut.roundlay", "totals", "--json"},
                            {"export", "hut.roundlay", "--to", "out", "--only", "list", "--json"}}) {
        const Ran ran = run(words, {.folder = home.path().string()});
        put(home / "data.json", ran.out);
        CHECK(std::system(("jq -e . < '" + (home / "data.json").string() + "' > /dev/null").c_str()) == 0);
    }
}

TEST_CASE("check --quiet says errors only, and nothing of a shell that has none") {
    const std::string lap = run({"new", "-", "--notch", "square"}).out; // its notes say that it does not lock
    CHECK_THAT(run({"check", "-"}, {.input = lap}).out, ContainsSubstring(": note: "));
    const Ran quiet = run({"check", "-", "-q"}, {.input = lap});
    CHECK(quiet.code == 0);
    CHECK(quiet.out.empty());
    const Ran wrong = run({"check", "-", "-q"}, {.input = wrong_document()});
    CHECK(wrong.code == 1);
    CHECK_THAT(wrong.out, ContainsSubstring(": error: ") && !ContainsSubstring("warning"));
    CHECK(std::count(wrong.out.begin(), wrong.out.end(), '\n') == 1); // no summary
}
