#include "kernel/design/new_shell.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

using namespace roundlay;
using namespace roundlay::test;

namespace {

Shell shell_from(const Words &options) {
    Words words = {"new"};
    words.insert(words.end(), options.begin(), options.end());
    const Ran ran = run(words);
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    const ReadResult read = read_document(ran.out, "new");
    REQUIRE(read.shell);
    CHECK(read.problems.empty());
    return *read.shell;
}

} // namespace

TEST_CASE("new writes every shape, in either system, and check finds nothing wrong with it") {
    const struct {
        const char *shape;
        std::size_t walls;
    } shapes[] = {{"rectangle", 4}, {"L", 6}, {"inset", 8}, {"T", 8}, {"U", 8}, {"cross", 12}};
    for (const auto &shape : shapes)
        for (const Words &size :
             std::vector<Words>{{}, {"--width", "12 m"}, {"--width", "36ft", "--depth", "28' 6\""}}) {
            Words words = {"new", "--shape", shape.shape};
            words.insert(words.end(), size.begin(), size.end());
            const Ran made = run(words);
            INFO(shape.shape << ": " << made.err);
            REQUIRE(made.code == 0);
            CHECK(read_document(made.out, "x").shell->walls.size() == shape.walls);
            const Ran checked = run({"check", "-"}, {.input = made.out});
            CHECK(checked.code == 0);
            CHECK_THAT(checked.out, ContainsSubstring("0 errors, 0 warnings"));
        }
}

TEST_CASE("new writes every shape with every notch, without a warning") {
    for (const char *shape : {"rectangle", "L", "inset", "T", "U", "cross"})
        for (const char *notch : {"half", "square"}) { // the full one: see above
            const Ran made = run({"new", "--shape", shape, "--notch", notch});
            INFO(shape << ", " << notch << ": " << made.err);
            REQUIRE(made.code == 0);
            CHECK_THAT(run({"check", "-"}, {.input = made.out}).out,
                       ContainsSubstring("0 errors, 0 warnings"));
        }
    // The notches of inside corners are their own there: log ends lie indoors.
    const Shell half = shell_from({"--shape", "L", "--notch", "half dovetail"});
    REQUIRE(half.corners.size() == 1);
    CHECK(half.corners[0].first == "C");
    CHECK(half.corners[0].notch.kind == NotchKind::full_dovetail);
}

TEST_CASE("new states parts that nobody stated as lengths that a person could have typed") {
    const struct {
        Words options;
        std::string states;
    } cases[] = {
        {{"--shape", "T", "--width", "7 m", "--depth", "7 m"}, "length = \"2333 mm\""},
        {{"--shape", "U", "--width", "31.333ft", "--depth", "23.777ft"}, "length = \"7 ft 11 1/8 in\""},
        {{"--shape", "inset", "--width", "8 m", "--depth", "8 m"}, "length = \"2667 mm\""},
        {{"--shape", "L", "--width", "9001 mm", "--depth", "7001 mm"}, "length = \"3501 mm\""},
        {{"--slope", "7 deg"}, "slope = \"7 deg\""},
        {{"--slope", "6.5 deg"}, "slope = \"6.5 deg\""},
        {{"--slope", "1:8"}, "slope = \"1:8\""}};
    for (const auto &c : cases) {
        Words words = {"new"};
        words.insert(words.end(), c.options.begin(), c.options.end());
        const Ran made = run(words);
        INFO(c.options[1] << ": " << made.err << made.out);
        CHECK(made.code == 0);
        CHECK_THAT(made.out, ContainsSubstring(c.states));
        const Ran checked = run({"check", "-"}, {.input = made.out});
        CHECK_THAT(checked.out, ContainsSubstring("0 errors, 0 warnings"));
    }
}

TEST_CASE("new makes a shell of round logs") {
    for (const Words &size : std::vector<Words>{{}, {"--width", "28 ft", "--overhang", "14 in"}}) {
        Words words = {"new", "--notch", "saddle"};
        words.insert(words.end(), size.begin(), size.end());
        const Ran made = run(words);
        INFO(made.err);
        REQUIRE(made.code == 0);
        CHECK_THAT(made.out, ContainsSubstring("kind = \"saddle\""));
        CHECK_THAT(run({"check", "-"}, {.input = made.out}).out, ContainsSubstring("0 errors, 0 warnings"));
    }
    CHECK(shell_from({"--notch", "saddle", "--overhang", "14 in"}).notch.overhang == Length::inches(14));
    for (const char *none : {"0", "0 mm", "0mm", "0cm", "0 in", "0 ft 0 in"})
        CHECK(shell_from({"--overhang", none, "--gap", none}).notch.overhang == Length());
}

TEST_CASE("new --json prints what was made, the document with it") {
    const nlohmann::json made = nlohmann::json::parse(run({"new", "-", "--json"}).out);
    CHECK(made["text"] == run({"new"}).out);
    CHECK(made["shell"]["walls"] == 4);
    const TemporaryFolder home;
    const std::string file = (home / "x.roundlay").string();
    const nlohmann::json saved = nlohmann::json::parse(run({"new", file, "--json"}).out);
    CHECK(saved["document"] == file);
    CHECK(saved["text"] == text_of(file));
}

TEST_CASE(
    "new begins with the sizes that the window's form begins with, of every shape and in either system") {
    const struct {
        const char *word;
        Shape shape;
    } shapes[] = {{"rectangle", Shape::rectangle}, {"L", Shape::ell},
                  {"inset", Shape::inset},         {"T", Shape::tee},
                  {"U", Shape::u_shape},           {"cross", Shape::cross}};
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const auto &[word, shape] : shapes)
            for (const auto &[notch, kind] :
                 {std::pair("full", NotchKind::full_dovetail), std::pair("saddle", NotchKind::saddle)}) {
                const char *system = units == UnitSystem::metric ? "metric" : "imperial";
                const Shell made = shell_from({"--shape", word, "--units", system, "--notch", notch});
                const Shell usual = *shell_of(usual_shell(shape, units, kind));
                INFO(word << ", " << system << ", " << notch);
                CHECK(made.walls == usual.walls);
                CHECK(made.thickness == usual.thickness);
                CHECK(made.rounds == usual.rounds);
                CHECK(made.notch == usual.notch);
            }
}

TEST_CASE("new states what was typed") {
    const Shell shell = shell_from({"--width",     "24ft",      "--depth",   "18 ft",  "--rounds",
                                    "15",          "--pitch",   "8 2/3 in",  "--gap",  "1/2 in",
                                    "--thickness", "6in",       "--notch",   "half",   "--slope",
                                    "1:7",         "--species", "white oak", "--name", "Mill \"cottage\""});
    CHECK(shell.units == UnitSystem::imperial);
    CHECK(shell.walls[0].length == Length::feet(24));
    CHECK(shell.rounds.count == 15);
    // 15 rounds at 8 2/3 in are 10 ft 10 in (common practice).
    CHECK(shell.rounds.pitch->mm() * 15 == Approx(Length::inches(130).mm()).epsilon(1e-12));
    CHECK(shell.thickness == Length::inches(6));
    CHECK(shell.notch.kind == NotchKind::half_dovetail);
    CHECK(shell.notch.slope.ratio() == Approx(1.0 / 7));
    CHECK(shell.wood.species == "white oak");
    CHECK(shell.name == "Mill \"cottage\"");
    CHECK(shell_from({"--width", "8m"}).units == UnitSystem::metric);
    CHECK(shell_from({"--width", "8m", "--units", "imperial"}).units == UnitSystem::imperial);
    CHECK(shell_from({"--height", "2.6 m", "--rounds", "10"}).rounds.height == Length::metres(2.6));
}

namespace {

std::string any_size(const std::string &unit, int least, int most) {
    const int whole = *rc::gen::inRange(least, most), part = *rc::gen::inRange(0, 1000);
    const std::string decimals = std::to_string(1000 + part).substr(1);
    return *rc::gen::element(std::to_string(whole), std::to_string(whole) + "." + decimals) + " " + unit;
}

std::string any_slope() {
    const int whole = *rc::gen::inRange(4, 12), part = *rc::gen::inRange(0, 1000);
    const std::string number = std::to_string(whole) + "." + std::to_string(1000 + part).substr(1);
    return *rc::gen::element(std::to_string(whole) + " deg", number + " deg", "1:" + std::to_string(whole),
                             "1:" + number, "1 in in " + std::to_string(whole) + " in",
                             "2 mm in " + number + " mm");
}

Words any_new() {
    const bool metric = *rc::gen::arbitrary<bool>();
    const std::string unit = metric ? "m" : "ft",
                      notch = *rc::gen::element<std::string>("full", "half", "square", "saddle");
    Words words = {"new",
                   "--shape",
                   *rc::gen::element<std::string>("rectangle", "L", "inset", "T", "U", "cross"),
                   "--notch",
                   notch,
                   "--width",
                   any_size(unit, metric ? 6 : 20, metric ? 20 : 66),
                   "--depth",
                   any_size(unit, metric ? 6 : 20, metric ? 20 : 66)};
    if (notch == "full" || notch == "half")
        if (*rc::gen::arbitrary<bool>()) words.insert(words.end(), {"--slope", any_slope()});
    return words;
}

} // namespace

TEST_CASE("new writes any shape, notch, size and slope so that it reads back and is laid out") {
    int written = 0;
    CHECK(rc::check([&] {
        const Words words = any_new();
        for (const std::string &word : words)
            RC_LOG() << word << " | ";
        const Ran made = run(words);
        RC_LOG() << made.err;
        RC_ASSERT(made.code == 0 || made.code == 1); // 1: a steep slope leaves a log no wood
        if (made.code == 1) return;
        const ReadResult read = read_document(made.out, "new");
        RC_ASSERT(read.shell.has_value());
        RC_ASSERT(read.problems.empty());
        RC_ASSERT(!has_errors(lay_out(*read.shell).findings));
        ++written;
    }));
    CHECK(written >= 15);
}

TEST_CASE("new with any pitch writes what can be built, or nothing and says why") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    int written = 0, refused = 0;
    for (const char *pitch : {"1 mm", "20 mm", "60 mm", "2 1/2 in", "97 mm", "119.7 mm", "150 mm", "8 2/3 in",
                              "613 mm", "1999 mm", "3 m"})
        for (const char *notch : {"full", "half", "square", "saddle"}) {
            INFO(pitch << ", " << notch);
            const std::string file = std::string(notch) + std::to_string(written + refused) + ".roundlay";
            const Ran made = run({"new", file, "--pitch", pitch, "--notch", notch}, at);
            if (made.code != 0) {
                ++refused;
                CHECK_THAT(made.err, ContainsSubstring("error"));
                CHECK_FALSE(std::filesystem::exists(home / file));
                continue;
            }
            ++written;
            CHECK(run({"check", file}, at).code == 0);
        }
    CHECK(written > 8);
    CHECK(refused > 8);
}
