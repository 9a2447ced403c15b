#include "kernel/design/new_shell.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>
#include <rapidcheck.h>

#include <sstream>

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

/// The samples with their # taken away: each begins behind an empty line and a comment.
std::vector<std::string> samples_of(const std::string &text) {
    std::vector<std::string> samples;
    std::istringstream lines(text);
    bool inside = false;
    for (std::string line; std::getline(lines, line);) {
        const bool sample = line.size() > 1 && line[0] == '#' && line[1] != ' ';
        if (sample && !inside) samples.emplace_back();
        if (sample) samples.back() += line.substr(1) + "\n";
        inside = sample;
    }
    return samples;
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
}

TEST_CASE("each sample that new writes behind # is valid for its shell, alone and with the others") {
    for (const Words &words : std::vector<Words>{{},
                                                 {"--shape", "L", "--width", "40ft", "--depth", "30ft"},
                                                 {"--shape", "U", "--notch", "half"},
                                                 {"--shape", "T", "--notch", "square", "--rounds", "9"},
                                                 {"--notch", "saddle"},
                                                 {"--width", "3 m", "--depth", "3 m", "--rounds", "5"}}) {
        Words all = {"new", "-"};
        all.insert(all.end(), words.begin(), words.end());
        const std::string text = run(all).out;
        const std::vector<std::string> samples = samples_of(text);
        INFO(text);
        CHECK(samples.size() >= 1); // a door fits everywhere
        std::string together = text;
        for (const std::string &sample : samples) {
            const Ran alone = run({"check", "-"}, {.input = text + sample});
            CHECK_THAT(alone.out, ContainsSubstring("0 errors, 0 warnings"));
            together += sample;
        }
        CHECK_THAT(run({"check", "-"}, {.input = together}).out, ContainsSubstring("0 errors, 0 warnings"));
    }
    const std::string plain = run({"new"}).out;
    CHECK(samples_of(plain).size() == 3);
    for (const char *header : {"#[[opening]]", "#[[partition]]", "#[[floor]]"})
        CHECK_THAT(plain, ContainsSubstring(header));
}

TEST_CASE("new writes nothing that cannot be read, and names what was typed") {
    const struct {
        Words options;
        std::string says;
    } cases[] = {{{"--height", "3m", "--pitch", "7m"}, "pitch = \"7000 mm\""},
                 {{"--name", "two\nlines"}, "expected plain text on one line"},
                 {{"--name", std::string(300, 'x')}, "expected at most 200 characters"},
                 {{"--name", "bad \xff"}, "name"},
                 {{"--thickness", "3 m", "--width", "30 m", "--depth", "30 m"}, "thickness = "}};
    const TemporaryFolder home;
    for (const auto &c : cases) {
        Words words = {"new", (home / "x.roundlay").string()};
        words.insert(words.end(), c.options.begin(), c.options.end());
        const Ran ran = run(words);
        INFO(c.options[0] << ": " << ran.err);
        CHECK(ran.code == 2);
        CHECK_THAT(ran.err, ContainsSubstring(c.says));
    }
    CHECK(count_entries(home.path()) == 0);
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

TEST_CASE("new speaks one system only") {
    const Ran made = run({"new", "--shape", "T", "--width", "36ft"});
    REQUIRE(made.code == 0);
    const std::string figures =
        made.out.substr(made.out.find("[shell]")); // after the head's examples of both
    CHECK(figures.find(" mm") == std::string::npos);
    CHECK(figures.find("1 1/4 in") != std::string::npos);
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

TEST_CASE("new refuses a whole that leaves nothing for its parts") {
    const Ran tiny = run({"new", "-", "--shape", "L", "--width", "0.4 mm"});
    CHECK(tiny.code == 2);
    CHECK_THAT(tiny.err, ContainsSubstring("leave nothing for the parts"));
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

TEST_CASE("new never replaces a file unasked, and says so with 4") {
    const TemporaryFolder home;
    put(home / "mine.roundlay", "mine");
    const Ran refused = run({"new", (home / "mine.roundlay").string()});
    CHECK(refused.code == 4);
    CHECK_THAT(refused.err, ContainsSubstring("stands in the way") && ContainsSubstring("--force"));
    CHECK(text_of(home / "mine.roundlay") == "mine");
    CHECK(run({"new", (home / "mine.roundlay").string(), "--force"}).code == 0);
    CHECK_THAT(text_of(home / "mine.roundlay"), ContainsSubstring("[shell]"));
    CHECK(count_entries(home.path()) == 1);
    CHECK(run({"new", (home / "no/such/folder").string()}).code == 4);
}

TEST_CASE("new refuses with 2 what is no size and with 1 what cannot be built") {
    const struct {
        Words options;
        int code;
        std::string says;
    } cases[] = {
        {{"--width", "12"}, 2, "--width \"12\": "},
        {{"--width", "-3 m"}, 2, "must be more than 0"},
        {{"--width", "nan"}, 2, "--width \"nan\": "},
        {{"--rounds", "many"}, 2, "expected a whole number"},
        {{"--rounds", "0"}, 2, "expected a whole number"},
        {{"--shape", "octagon"}, 2, "there is no shape \"octagon\""},
        {{"--shape", "L", "--wing", "90 m"}, 2, "--wing must be smaller than --width"},
        {{"--shape", "U", "--part-depth", "90 m"}, 2, "--part-depth must be smaller than --depth"},
        {{"--shape", "T", "--from-left", "7 m"}, 2, "together must be smaller than --width"},
        {{"--rounds", "3", "--height", "2 m", "--pitch", "25 cm"}, 2, "state two of"},
        {{"--species", "easten hemlock"}, 2, "did you mean \"eastern hemlock\"?"},
        {{"--species", "white pine"}, 2, "did you mean \"eastern white pine\"?"},
        {{"--species", "hemlock"}, 2, "\"eastern hemlock\" or \"western hemlock\"?"},
        {{"--slope", "steep"}, 2, "--slope \"steep\": "},
        {{"--slope", "1:7", "--notch", "saddle"}, 2, "--slope is that of a dovetail"},
        {{"--notch", "sadle"}, 2, "did you mean \"saddle\"?"},
        {{"--pitch", "60 mm"}, 1, ""},
        {{"--width", "300 mm", "--depth", "300 mm"}, 1, ""},
    };
    const TemporaryFolder home;
    for (const auto &c : cases) {
        Words words = {"new", (home / "x.roundlay").string()};
        words.insert(words.end(), c.options.begin(), c.options.end());
        const Ran ran = run(words);
        INFO(c.options[0] << " " << c.options[1] << ": " << ran.err);
        CHECK(ran.code == c.code);
        CHECK_THAT(ran.err, ContainsSubstring(c.says) && ContainsSubstring("error: "));
        CHECK(ran.out.empty());
    }
    CHECK(count_entries(home.path()) == 0);
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

TEST_CASE("new passes over no size that the shape does not have") {
    for (const Words &typed : {Words{"--arm", "2 m"},
                               {"--wing", "3 m"},
                               {"--shape", "L", "--part-width", "1 m"},
                               {"--shape", "T", "--leg", "2 m"},
                               {"--shape", "cross", "--from-left", "1 m"}}) {
        Words words{"new", "-"};
        words.insert(words.end(), typed.begin(), typed.end());
        const Ran ran = run(words);
        INFO(ran.err);
        CHECK(ran.code == 2);
        CHECK_THAT(ran.err, ContainsSubstring(" is a size of --shape "));
    }
    CHECK(run({"new", "-", "--shape", "cross", "--arm", "2 m"}).code == 0);
}

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

TEST_CASE("a new document has its sample floor in the shell's own units, loads as well") {
    const Ran feet = run({"new", "-", "--width", "30ft", "--depth", "22ft"});
    CHECK_THAT(feet.out, ContainsSubstring("live_load = \"40 psf\"") &&
                             ContainsSubstring("dead_load = \"10 psf\"") && !ContainsSubstring("\" kPa") &&
                             !ContainsSubstring("load = 1.9"));
    const Ran metres = run({"new", "-", "--width", "9m", "--depth", "7m"});
    CHECK_THAT(metres.out, ContainsSubstring("live_load = ") && !ContainsSubstring("psf\""));
}
