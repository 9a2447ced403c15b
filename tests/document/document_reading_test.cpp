#include "kernel/document/document.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"

#include <string>

using namespace roundlay;
using roundlay::test::sample;
using roundlay::test::sample_with;

namespace {

Shell read(const std::string &text) {
    const ReadResult result = read_document(text, "x");
    for (const Problem &problem : result.problems)
        UNSCOPED_INFO(to_text(problem));
    REQUIRE(result.shell);
    return *result.shell;
}

const char *everything = R"(roundlay = 1
[shell]
name = "Tarnfold \u2116 1"
units = "imperial"
thickness = "8 in"

[[wall]]
name = "A"
toward = "east"
length = "16 ft"
thickness = "10 in"
pitch = "9 1/4 in"
log_height = "8 in"

[[wall]]
name = "north2"
toward = "12.5 deg north of west"
length = "3.5 m"

[[wall]]
name = "C"
toward = "South-West"
length = "2000 mm"

[rounds]
height = "10 ft 10 in"
pitch = "8 2/3 in"
gap = "1/2 in"
full_first = "C"
top = "staggered"

[notch]
kind = "half dovetail"
slope = "7 deg"
overhang = "3 in"
least_tail = "40 mm"

[[corner]]
between = ["north2", "A"]
kind = "stated"
along = "level"
across = "-1 in in 8 in"

[[corner]]
between = ["C", "A"]
overhang = 0

[logs]
butt_height = "9 in"
tip_height = "7 in"
butt_width = "10 in"
tip_width = "200 mm"
butt = "right"

[[log]]
wall = "C"
round = 3
tip_height = "6 3/4 in"
butt = "left"

[[opening]]
name = "front door"
kind = "door"
wall = "A"
from_left = "4 ft"
sill = 0
width = "36 in"
height = "80 in"

[[opening]]
wall = "C"
from_left = "600 mm"
sill = "2 ft"
width = "500 mm"
height = "400 mm"

[pegs]
wanted = false
diameter = "1 1/2 in"
spacing = "5 ft"
end_distance = "4 in"
between = "3 in"
depth_below = 1
fewest = 2

[wood]
species = "white oak"
moisture = 19.5
)";

} // namespace

TEST_CASE("Every statement of the format reaches the shell") {
    const Shell shell = read(everything);
    CHECK(shell.name == "Tarnfold \u2116 1");
    CHECK(shell.units == UnitSystem::imperial);
    CHECK(shell.thickness == Length::mm(203.2));
    REQUIRE(shell.walls.size() == 3);
    CHECK(shell.walls[0] ==
          Wall{"A", 0, Length::mm(4876.8), Length::mm(254), Length::mm(234.95), Length::mm(203.2)});
    CHECK(shell.walls[1] == Wall{"north2", 167.5, Length::mm(3500), {}, {}, {}});
    CHECK(shell.walls[2] == Wall{"C", 225, Length::mm(2000), {}, {}, {}});
    CHECK_FALSE(shell.rounds.count);
    CHECK(shell.rounds.height == Length::mm(3302));
    CHECK(shell.rounds.pitch == Length::mm(220.13333333333333));
    CHECK(shell.rounds.gap == Length::mm(12.7));
    CHECK(shell.rounds.full_first == "C");
    CHECK(shell.rounds.top == TopRule::staggered);
    const NotchRule notch{NotchKind::half_dovetail, Slope::degrees(7), {}, {},
                          Length::mm(76.2),         Length::mm(40)};
    CHECK(shell.notch == notch);
    REQUIRE(shell.corners.size() == 2);
    NotchRule own = notch; // what a corner leaves out is as in [notch]
    own.kind = NotchKind::stated;
    own.across = Slope::rise_per_run(-0.125);
    CHECK(shell.corners[0] == CornerNotch{"A", "north2", own}); // in the order of the walk
    NotchRule flush = notch;
    flush.overhang = {};
    CHECK(shell.corners[1] == CornerNotch{"C", "A", flush});
    CHECK(shell.logs ==
          LogSizes{Length::mm(228.6), Length::mm(177.8), Length::mm(254), Length::mm(200), LogEnd::right});
    REQUIRE(shell.own_logs.size() == 1);
    CHECK(shell.own_logs[0] == OwnLog{"C", 3, "", LogSizes{{}, Length::mm(171.45), {}, {}, LogEnd::left}});
    REQUIRE(shell.openings.size() == 2);
    CHECK(shell.openings[0] == Opening{"front door",
                                       OpeningKind::door,
                                       "A",
                                       Length::mm(1219.2),
                                       {},
                                       Length::mm(914.4),
                                       Length::mm(2032)});
    CHECK(shell.openings[1] == Opening{"", OpeningKind::window, "C", Length::mm(600), Length::mm(609.6),
                                       Length::mm(500), Length::mm(400)});
    CHECK(shell.pegs == PegRule{false, PegBoring::at_the_bench, Length::mm(38.1), Length::mm(1524),
                                Length::mm(101.6), Length::mm(76.2), 1, 2});
    CHECK(shell.wood == Wood{"white oak", 19.5});
}

TEST_CASE("What is left out is as in a fresh shell") {
    const Shell shell = read(sample_with(1, "roundlay = 1"));
    const Shell fresh;
    CHECK(shell.name == fresh.name);
    CHECK(shell.units == fresh.units);
    CHECK(shell.notch == fresh.notch);
    CHECK(shell.pegs == fresh.pegs);
    CHECK(shell.wood == Wood{"eastern hemlock", std::nullopt}); // stated in the sample
    CHECK(shell.rounds.gap == fresh.rounds.gap);
    CHECK(shell.logs == fresh.logs);
    CHECK(shell.own_logs.empty());
    CHECK(shell.rounds.top == fresh.rounds.top);
    CHECK(shell.rounds.full_first.empty());
    REQUIRE(shell.openings.size() == 1);
    CHECK(shell.openings[0].kind == OpeningKind::window);
    CHECK(shell.openings[0].name.empty());
}

TEST_CASE("The same statements in any form of TOML give the same shell") {
    const Shell expected = read(sample);
    CHECK(read("\xef\xbb\xbf" + sample) == expected); // a byte order mark
    std::string windows = sample;
    for (std::size_t at = 0; (at = windows.find('\n', at)) != std::string::npos; at += 2)
        windows.replace(at, 1, "\r\n");
    CHECK(read(windows) == expected);
    CHECK(read(R"(
        roundlay = 1
        shell.thickness = '8"'
        rounds = { pitch = """9 in""", count = 0x5 }
        notch."kind" = 'Full-Dovetail'
        wall = [
          { name = "A", toward = "east", length = "16'" }, # one line each
          { name = "B", toward = "NORTH", length = "12 ft." },
          { name = "C", toward = "west", length = "16' 0\"" },
          { name = "D", toward = "south", length = "3657.6 mm" },
        ]
        corner = [{ between = ['A', 'B'] }]
        pegs.wanted = true
        wood.species = """eastern \
            hemlock"""
        [[opening]]
        height = "36 in"
        sill = "0"
        width = "2 1/2 ft"
        from_left = "3′"
        wall = "A"
    )") == expected);
}

TEST_CASE("A text that goes on over a line end may go on with any letter") {
    const Shell shell = read(sample_with(36, "species = \"\"\"eastern \\\n  \u00e9pinette\"\"\""));
    CHECK(shell.wood.species == "eastern \u00e9pinette");
}

TEST_CASE("Where a statement stands is known by its path") {
    const SourceMap places = read_document(everything, "x").places;
    struct Row {
        const char *path;
        int line, column;
    };
    const Row rows[] = {
        {"shell.thickness", 5, 13},
        {"wall[0].length", 10, 10},
        {"wall[2]", 20, 1},
        {"rounds.pitch", 27, 9},
        {"corner[0].across", 42, 10},
        {"logs.tip_width", 52, 13},
        {"log[0].round", 57, 9},
        {"logs", 48, 1},
        {"opening[0].width", 67, 9},
        {"opening[1]", 70, 1},
        {"wood.moisture", 88, 12},
        {"roundlay", 1, 12},
        // not stated: the nearest statement around it
        {"wall[1].pitch", 15, 1},
        {"rounds.count", 25, 1},
        {"opening[1].name", 70, 1},
        {"wall", 7, 1},
        {"wall[9].length", 7, 1},
    };
    for (const Row &row : rows) {
        INFO(row.path);
        const auto place = places.locate(row.path);
        REQUIRE(place);
        CHECK(place->line == row.line);
        CHECK(place->column == row.column);
    }
    CHECK_FALSE(places.locate("floor.joist"));
    CHECK_FALSE(places.locate(""));
    CHECK(places.states("rounds.pitch"));
    CHECK_FALSE(places.states("rounds.count"));
}

TEST_CASE("Places are known even where the document has errors") {
    const ReadResult result = read_document(sample_with(31, "width = \"wide\""), "x");
    CHECK_FALSE(result.shell);
    CHECK(result.places.locate("opening[0].width")->line == 31);
}
