// What a machine makes of a shell, as a person asks for it.
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

namespace {

struct Home {
    TemporaryFolder folder;
    Home() { put(folder / "hut.roundlay", small_document()); }
    Ran ask(const std::string &machine, Words more = {}) const {
        put(folder / "m.toml", machine);
        Words words = {"makeable", "hut.roundlay", "--machine", "m.toml"};
        words.insert(words.end(), more.begin(), more.end());
        RunOptions options;
        options.folder = folder.path().string();
        return run(words, options);
    }
};

std::string machine(const std::string &length, const std::string &more = "") {
    return "name = \"bench\"\nworks_from = [\"above\", \"ends\"]\ntilt_degrees = 30\n" + more +
           "[bed]\nlength = \"" + length +
           "\"\nwidth = \"500 mm\"\nheight = \"500 mm\"\nweight_kg = 3000\n[saw]\ndepth = \"500 "
           "mm\"\n[[tool]]\nname = "
           "\"finger\"\nshape = \"flat\"\ndiameter = \"20 mm\"\nlength = \"90 mm\"\nreach = \"500 mm\"\n";
}

} // namespace

TEST_CASE("each piece gets its verdict, and the caution stands below") {
    const Home home;
    const Ran ran = home.ask(machine("20 m"));
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    CHECK_THAT(ran.out, ContainsSubstring("makeable") && ContainsSubstring("A-01-1") &&
                            ContainsSubstring("bench: of") &&
                            ContainsSubstring("nothing of it has been proved"));
    const Ran csv = home.ask(machine("20 m"), {"--operations", "--csv"});
    CHECK_THAT(csv.out, ContainsSubstring("tag,operation,what,verdict") && ContainsSubstring("finger"));
    CHECK_THAT(csv.err, ContainsSubstring("nothing of it has been proved"));
    const Ran french = home.ask(machine("20 m"), {"--language", "fr"});
    CHECK_THAT(french.out, ContainsSubstring("faisable"));
}

TEST_CASE("a change of the joints is told that was tried") {
    const Home home; // its pegs are thicker than the drill, and the cutter is thicker than its pegs
    const std::string thick = machine("20 m");
    const std::size_t at = thick.find("diameter = \"20 mm\"");
    const Ran ran =
        home.ask(std::string(thick).replace(at, 18, "diameter = \"60 mm\"") +
                     "[[tool]]\nname = \"drill\"\nshape = \"drill\"\ndiameter = \"25 mm\"\nlength = "
                     "\"400 mm\"\nreach = \"500 mm\"\n",
                 {"--csv"});
    INFO(ran.err);
    CHECK(ran.code == 0);
    CHECK_THAT(ran.out, ContainsSubstring("the drill drill is 25 mm") || ContainsSubstring("not makeable"));
    CHECK_THAT(ran.out, ContainsSubstring("pegs and bores of 25 mm"));
}

TEST_CASE("a bed shorter than every log, and a wrong key, are told with file and line") {
    const Home home;
    const Ran small = home.ask(machine("50 cm"));
    CHECK(small.code == 1);
    CHECK_THAT(small.err, ContainsSubstring("m.toml:5: ") && ContainsSubstring("shorter than every log"));
    const Ran wrong = home.ask(machine("20 m", "colour = 3\n"));
    CHECK(wrong.code != 0);
    CHECK_THAT(wrong.err,
               ContainsSubstring("m.toml:4: ") && ContainsSubstring("there is no key colour here"));
    const Ran missing = run({"makeable", "hut.roundlay"});
    CHECK(missing.code == 2);
}
