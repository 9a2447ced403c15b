#include "modeler/command_line/exit_code.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("help and version go to the standard output and end well") {
    const Ran version = run({"--version"});
    CHECK(version.code == 0);
    CHECK(version.err.empty());
    CHECK(version.out.starts_with("roundlay "));
    CHECK(std::count(version.out.begin(), version.out.end(), '\n') == 1);
    for (const Words &words : std::vector<Words>{{"--help"},
                                                 {"-h"},
                                                 {"new", "--help"},
                                                 {"check", "-h"},
                                                 {"list", "--help"},
                                                 {"export", "--help"},
                                                 {"picture", "--help"},
                                                 {"format", "--help"}}) {
        const Ran help = run(words);
        CHECK(help.code == 0);
        CHECK(help.err.empty());
        CHECK_THAT(help.out,
                   ContainsSubstring("Examples:\n  roundlay ") && ContainsSubstring("Usage: roundlay "));
        CHECK(help.out.find("Examples:") < help.out.find("Usage:"));
    }
}

TEST_CASE("the help states every exit code") {
    const std::string help = run({"--help"}).out;
    for (const ExitMeaning &exit : exit_meanings)
        CHECK_THAT(help, ContainsSubstring(std::to_string(static_cast<int>(exit.code)) + " ") &&
                             ContainsSubstring(std::string(exit.meaning)));
}

TEST_CASE("every example of the help can be typed") {
    const TemporaryFolder home;
    const std::vector<Words> examples = {
        {"new", "cabin.roundlay"},
        {"new", "cabin.roundlay", "--force", "--shape", "L", "--width", "40ft", "--depth", "30ft", "--rounds",
         "13"},
        {"new", "-", "--width", "6m", "--depth", "5m", "--height", "2.6m"},
        {"new", "other.roundlay", "--width", "24ft", "--depth", "18ft"},
        {"check", "cabin.roundlay"},
        {"check", "cabin.roundlay", "--json"},
        {"list", "cabin.roundlay"},
        {"list", "cabin.roundlay", "order"},
        {"list", "cabin.roundlay", "pieces", "--csv"},
        {"export", "cabin.roundlay", "--to", "out", "--only", "step,list"},
    };
    for (const Words &words : examples) {
        const Ran ran = run(words, {.folder = home.path().string()});
        INFO(words[0] << ": " << ran.err);
        CHECK(ran.code == 0);
        CHECK(ran.err.empty());
    }
}

TEST_CASE("what was not understood ends with 2, a sentence, and nothing on the standard output") {
    const struct {
        Words words;
        std::string says;
    } cases[] = {
        {{"exprot", "x"}, "there is no command \"exprot\"; did you mean \"export\"?"},
        {{"zebra"}, "there is no command \"zebra\"; choose from new, check, list, compare, export, makeable"},
        {{"list", "x", "--jsno"}, "there is no option --jsno; did you mean --json?"},
        {{"export", "x", "--to", "y", "--onyl=list"}, "there is no option --onyl; did you mean --only?"},
        {{"export", "x", "--to", "y", "--only", "lists"},
         "there is no exporter \"lists\"; did you mean \"list\"?"},
        {{"export", "x", "--to", "y", "--paper", "B9"}, "there is no paper \"B9\""},
        {{"export", "x", "--to", "y", "--units", "cubits"}, "there is no system of units \"cubits\""},
        {{"export", "x", "--to", "y", "--only", "list", "--without", "list"}, "leave nothing to export"},
        {{"export", "x"}, "--to is required"},
        {{"picture", "x", "--to", "y", "--view", "sout"},
         "there is no view \"sout\"; did you mean \"south\"?"},
        {{"picture", "x", "--to", "y", "--size", "huge"}, "expected width x height in pixels"},
        {{"picture", "x", "--to", "y", "--size", "99999x10"}, "1 to 8192"},
        {{"picture", "x", "--to", "-", "--json"}, "--json needs a file"},
        {{"list", "x", "ordr"}, "there is no list \"ordr\"; did you mean \"order\"?"},
        {{"list", "x", "cut", "y"}, "\"y\" is one word too many for \"list\""},
        {{"list", "x", "--csv", "--json"}, "choose either --json or --csv"},
        {{"check"}, "FILE is required"},
    };
    for (const auto &c : cases) {
        const Ran ran = run(c.words);
        INFO(c.says);
        CHECK(ran.code == 2);
        if (std::find(c.words.begin(), c.words.end(), "--json") == c.words.end()) CHECK(ran.out.empty());
        CHECK_THAT(ran.err, ContainsSubstring(c.says));
        CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 1);
    }
    const Ran nothing = run({});
    CHECK(nothing.code == 2);
    CHECK(nothing.out.empty());
    CHECK_THAT(nothing.err, ContainsSubstring("Examples:"));
}

TEST_CASE("a document that cannot be read ends with 3 for every command") {
    const TemporaryFolder home;
    put(home / "bytes", std::string("\x89PNG\r\n\0\xff\xfe garbage", 20));
    put(home / "text", "this is no document\n");
    put(home / "empty", "");
    for (const std::string &file :
         {(home / "bytes").string(), (home / "text").string(), (home / "empty").string(),
          (home / "missing").string(), home.path().string()})
        for (const Words &words : std::vector<Words>{{"check", file},
                                                     {"list", file},
                                                     {"export", file, "--to", (home / "out").string()},
                                                     {"picture", file, "--to", (home / "p.png").string()}}) {
            const Ran ran = run(words);
            INFO(words[0] << " " << file << ": " << ran.err);
            CHECK(ran.code == 3);
            const std::string &said = words[0] == "check" ? ran.out : ran.err;
            CHECK_THAT(said, ContainsSubstring(file + ":") && ContainsSubstring("error: "));
            if (words[0] != "check") CHECK(ran.out.empty());
        }
    CHECK(count_entries(home.path()) == 3);
}

TEST_CASE("with --json a failure is told on the standard output too, whatever the command") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "wrong.roundlay", wrong_document());
    put(home / "text.roundlay", "this is no document\n");
    put(home / "in the way", "mine");
    const struct {
        Words words;
        int code;
    } cases[] = {{{"list", "wrong.roundlay", "--json"}, 1},
                 {{"list", "text.roundlay", "--json"}, 3},
                 {{"export", "wrong.roundlay", "--to", "out", "--json"}, 1},
                 {{"export", "missing.roundlay", "--to", "out", "--json"}, 3},
                 {{"export", "hut.roundlay", "--to", "in the way", "--only", "list", "--json"}, 4},
                 {{"picture", "hut.roundlay", "--to", "in the way", "--size", "20x20", "--json"}, 4},
                 {{"level", "hut.roundlay", "--pile", "missing.csv", "--json"}, 3},
                 {{"record", "text.roundlay", "--logs", "missing.csv", "--json"}, 3},
                 {{"tick", "text.roundlay", "up", "A-01-1", "--json"}, 3},
                 {{"tick", "hut.roundlay", "up", "A-99-1", "--json"}, 2},
                 {{"new", "in the way", "--json"}, 4},
                 {{"new", "-", "--pitch", "60 mm", "--json"}, 1},
                 {{"check", "wrong.roundlay", "--json"}, 1},
                 {{"list", "--json"}, 2},
                 {{"list", "hut.roundlay", "ordr", "--json"}, 2}};
    for (const auto &c : cases) {
        const Ran ran = run(c.words, {.folder = home.path().string()});
        INFO(c.words[0] << " " << c.words[1] << ": " << ran.out << ran.err);
        CHECK(ran.code == c.code);
        if (c.words[0] != "check") CHECK_FALSE(ran.err.empty());
        const auto json = nlohmann::json::parse(ran.out, nullptr, false);
        REQUIRE(json.is_object());
        CHECK((json.contains("findings") || json["exit"] == c.code));
    }
}

TEST_CASE("files whose names begin with a dash stand behind --") {
    const TemporaryFolder home;
    put(home / "-v", small_document());
    put(home / "hut.roundlay", small_document());
    const RunOptions there = {.folder = home.path().string()};
    CHECK(run({"check", "--", "-v"}, there).code == 0);
    CHECK(run({"check", "--", "hut.roundlay"}, there).code == 0);
    CHECK(run({"list", "--csv", "--", "-v", "order"}, there).code == 0);
    CHECK(run({"check", "--", "-"}, {.input = small_document()}).code == 0);
    CHECK(run({"check", "--", "hut.roundlay", "-q"}, there).code == 2); // one word too many
}

TEST_CASE("--verbose says what is done, and only on the standard error") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    const RunOptions there = {.folder = home.path().string()};
    for (const Words &words :
         std::vector<Words>{{"check", "hut.roundlay"},
                            {"list", "hut.roundlay"},
                            {"export", "hut.roundlay", "--to", "out", "--only", "list"}}) {
        Words told = words;
        told.push_back("-v");
        const Ran plain = run(words, there), verbose = run(told, there);
        CHECK(plain.out == verbose.out);
        CHECK(plain.err.empty());
        CHECK_THAT(verbose.err, ContainsSubstring("read hut.roundlay: ") && ContainsSubstring("pieces in "));
        if (words[0] == "export")
            CHECK_THAT(verbose.err,
                       ContainsSubstring("cut lists") && ContainsSubstring("wrote out/totals.csv, "));
    }
}
