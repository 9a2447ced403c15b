// What roundlay new cannot make, and why it says so.
#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

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

TEST_CASE("new speaks one system only") {
    const Ran made = run({"new", "--shape", "T", "--width", "36ft"});
    REQUIRE(made.code == 0);
    const std::string figures =
        made.out.substr(made.out.find("[shell]")); // after the head's examples of both
    CHECK(figures.find(" mm") == std::string::npos);
    CHECK(figures.find("1 1/4 in") != std::string::npos);
}

TEST_CASE("new refuses a whole that leaves nothing for its parts") {
    const Ran tiny = run({"new", "-", "--shape", "L", "--width", "0.4 mm"});
    CHECK(tiny.code == 2);
    CHECK_THAT(tiny.err, ContainsSubstring("leave nothing for the parts"));
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
