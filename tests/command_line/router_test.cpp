// Programs for a router, as a person asks for them.
#include "modeler/command_line/export_options.h"
#include "tests/command_line/exporting.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

namespace {

struct Home : ExportingHome {
    Ran export_with(const Words &more) const {
        Words words = {"--only", "router"};
        words.insert(words.end(), more.begin(), more.end());
        return ExportingHome::export_with(words);
    }
    fs::path out() const { return folder / "out" / "router"; }
};

const Words metric = {"--board",   "2440x1220x12", "--tool",       "6", "--feed",  "1500",  "--plunge", "500",
                      "--spindle", "18000",        "--depth-step", "3", "--units", "metric"};

} // namespace

TEST_CASE("a router's program is made of what is stated, and its caution is told") {
    const Home home;
    const Ran ran = home.export_with(metric);
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    CHECK_THAT(ran.err, ContainsSubstring("CAUTION: try this program"));
    const std::string program = text_of(home.out() / "board-1.nc");
    CHECK_THAT(program, ContainsSubstring("(CAUTION: try this program") &&
                            ContainsSubstring("\nM3 S18000\n") && ContainsSubstring(" F1500.000\n") &&
                            ContainsSubstring("G0 Z20.000"));
    CHECK_THAT(text_of(home.out() / "places.csv"), ContainsSubstring("T1"));
    CHECK(fs::exists(home.out() / "corners.csv"));
    const Ran again = home.export_with(metric);
    CHECK(text_of(home.out() / "board-1.nc") == program);
}

TEST_CASE("bare numbers are in the units of the document, others in their own") {
    const Home one, other;
    const Ran inches =
        one.export_with({"--board", "96x48x0.5", "--tool", "0.25", "--feed", "60", "--plunge", "20",
                         "--spindle", "18000", "--depth-step", "0.125", "--units", "imperial"});
    INFO(inches.err);
    REQUIRE(inches.code == 0);
    const Ran spelled =
        other.export_with({"--board", "8 ftx4 ftx1/2 in", "--tool", "6.35 mm", "--feed", "60 in", "--plunge",
                           "508 mm", "--spindle", "18000", "--depth-step", "1/8 in", "--units", "imperial"});
    INFO(spelled.err);
    REQUIRE(spelled.code == 0);
    const std::string program = text_of(one.out() / "board-1.nc");
    CHECK(program == text_of(other.out() / "board-1.nc"));
    CHECK_THAT(program, ContainsSubstring("G21") && ContainsSubstring(" F1524.000\n"));
}

TEST_CASE("what a router needs and nobody states is asked for, and nothing is written") {
    const Home home;
    const Ran none = home.export_with({});
    CHECK(none.code == 1);
    CHECK_THAT(none.err, ContainsSubstring("no feed is stated") && ContainsSubstring("(--feed)"));
    CHECK_FALSE(fs::exists(home.out()));
    for (const Words &wrong : {Words{"--board", "2440x1220"}, Words{"--tool", "thick"}, Words{"--feed", ""},
                               Words{"--tabs", "2.5"}, Words{"--tab", "8"}, Words{"--spindle", "fast"}})
        CHECK(home.export_with({wrong.front(), wrong.back()}).code == (wrong.back().empty() ? 1 : 2));
    Words low = metric;
    low.push_back("--safe-height=-5");
    CHECK_THAT(home.export_with(low).err,
               ContainsSubstring("--safe-height \"-5\": expected a length of 1 mm"));
    Words comma = metric;
    comma[5] = "1,500"; // one and a half, or fifteen hundred?
    CHECK_THAT(home.export_with(comma).err, ContainsSubstring("--feed \"1,500\": a comma in a number"));
    CHECK_FALSE(fs::exists(home.out()));
}

TEST_CASE("the help tells each option of an export, its bounds and what holds otherwise") {
    const Ran help = run({"export", "--help"});
    for (const ExportOption &option : all_export_options()) {
        INFO(option.name);
        CHECK_THAT(help.out, ContainsSubstring("  --" + std::string(option.name)));
        CHECK_THAT(help.out, ContainsSubstring(help_of(option)));
    }
}
