#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

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

TEST_CASE("new speaks one system only") {
    const Ran made = run({"new", "--shape", "T", "--width", "36ft"});
    REQUIRE(made.code == 0);
    const std::string figures = made.out.substr(made.out.find("[shell]")); // after the head's examples of both
    CHECK(figures.find(" mm") == std::string::npos);
    CHECK(figures.find("1 1/4 in") != std::string::npos);
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
        {{"--slope", "steep"}, 2, "--slope \"steep\": "},
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
