// Models for a printer, as a person asks for them.
#include "tests/command_line/exporting.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

TEST_CASE("a print is made where it is asked for, and only there") {
    const ExportingHome home;
    const Ran ran =
        home.export_with({"--only", "print,stl", "--scale", "1:40", "--nozzle", "0.2", "--clearance", "0.1"});
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    for (const char *name : {"print/plate-1.stl", "print/plate-1.3mf", "print/places.csv", "stl/A-01-1.stl"})
        CHECK(fs::exists(home.folder / "out" / name));
    CHECK(text_of(home.folder / "out" / "print/plate-1.3mf").rfind("PK", 0) == 0);
}

TEST_CASE("a print that is refused is a failure, and what else was asked for is written") {
    const ExportingHome home;
    const Ran ran = home.export_with({"--only", "print,stl", "--scale", "1:200"});
    CHECK(ran.code == 1);
    CHECK_THAT(ran.err, ContainsSubstring("error:") && ContainsSubstring("thinner than the nozzle"));
    CHECK(fs::exists(home.folder / "out" / "stl/A-01-1.stl"));
    CHECK(fs::exists(home.folder / "out" / "manifest.json"));
    CHECK_FALSE(fs::exists(home.folder / "out" / "print"));
    CHECK(home.export_with({"--only", "stl"}).code == 0);
}

TEST_CASE("what cannot be printed is refused with what is needed, and nothing is written") {
    const ExportingHome home;
    const Ran thin = home.export_with({"--only", "print", "--scale", "1:200"});
    CHECK(thin.code == 1);
    CHECK_THAT(thin.err, ContainsSubstring("thinner than the nozzle of 0.4") &&
                             ContainsSubstring("or larger is needed"));
    const Ran large = home.export_with({"--only", "print", "--scale", "1:2"});
    CHECK(large.code == 1);
    CHECK_THAT(large.err, ContainsSubstring("or smaller is needed, or a larger bed"));
    CHECK_FALSE(fs::exists(home.folder / "out" / "print"));
    for (const Words &wrong : {Words{"--scale", "2:1"}, Words{"--bed", "220"}, Words{"--nozzle", "0"},
                               Words{"--clearance", "9"}, Words{"--pegs", "nails"}})
        CHECK(home.export_with({"--only", "print", wrong.front(), wrong.back()}).code == 2);
}
