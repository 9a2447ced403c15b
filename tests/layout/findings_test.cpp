// What cannot be built is refused by name, with what would fit.

#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "tests/layout/spoilt.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <cmath>

using namespace roundlay;
using namespace roundlay::test;

namespace {

const std::vector<Spoilt> cases = {
    {"too-few-walls", "plan", "at least four", [](Shell &s) { s.walls.resize(2); }},
    {"plan-not-closed", "wall D", "1000 mm", [](Shell &s) { s.walls[3].length = mm(3000); }},
    {"corner-not-square", "corner AB", "right angle", [](Shell &s) { s.walls[1].heading = 20; }},
    {"corner-not-square", "corner AB", "in one line", [](Shell &s) { s.walls[1].heading = 180; }},
    {"plan-crosses-itself", "walls", "cross",
     [](Shell &s) {
         s.walls.clear();
         const double legs[][2] = {{0, 4000},   {90, 2000}, {180, 2000}, {270, 3000},
                                   {180, 1000}, {90, 4000}, {180, 1000}, {270, 3000}};
         for (const auto &leg : legs) {
             Wall w;
             w.name = std::string(1, static_cast<char>('A' + s.walls.size()));
             w.heading = leg[0];
             w.length = mm(leg[1]);
             s.walls.push_back(w);
         }
     }},
    {"walls-run-together", "walls B and G", "by 50 mm",
     [](Shell &s) { s.walls = inset_plan(mm(9000), mm(4000), mm(3000), mm(3000), mm(3650)); }},
    {"wall-too-short", "wall B", "longer than 400 mm",
     [](Shell &s) { s.walls[1].length = s.walls[3].length = mm(380); }},
    {"overhang-hits-wall", "walls", "room for 100 mm",
     [](Shell &s) {
         s.walls = inset_plan(mm(9000), mm(4000), mm(3000), mm(3000), mm(3500));
         s.notch.overhang = mm(150);
     }},
    {"walls-do-not-alternate", "corner", "even number",
     [](Shell &s) { // one corner of the rectangle cut off: five walls
         s.walls[1].length = mm(3000);
         s.walls[2].heading = 135;
         s.walls[2].length = mm(1000 * std::sqrt(2));
         s.walls.insert(s.walls.begin() + 3, Wall{"E", 180, mm(4000), {}, {}, {}});
     }},
    {"tee-too-near", "corner AP", "from 350 mm to 4650 mm from the left of wall A it fits",
     [](Shell &s) { s.partitions = {partition_at("P", "A", 305, "C")}; }},
    {"tee-too-near", "wall A", "from 350 mm to 1955 mm from the left of wall A it fits",
     [](Shell &s) {
         s.partitions = {partition_at("P", "A", 2000, "C"), partition_at("Q", "A", 2205, "C")};
     }},
    {"tee-off-wall", "wall P", "from the left of wall A it fits",
     [](Shell &s) { s.partitions = {partition_at("P", "A", 6000, "C")}; }},
    {"partition-without-wall", "wall P", "none of",
     [](Shell &s) { s.partitions = {partition_at("P", "X", 2000, "C")}; }},
    {"partition-without-wall", "wall P", "does not have",
     [](Shell &s) { s.partitions = {partition_at("P", "A", 2000, "X")}; }},
    {"partition-leads-away", "wall P", "lie ahead",
     [](Shell &s) {
         s.partitions = {partition_at("P", "A", 2000, "C")};
         s.partitions[0].heading = 270;
     }},
    {"corner-not-square", "wall P", "angle",
     [](Shell &s) {
         s.partitions = {partition_at("P", "A", 2000, "C")};
         s.partitions[0].heading = 10;
     }},
    {"walls-do-not-alternate", "corner",
     "even number", // from one wall to its neighbour: three walls in a loop
     [](Shell &s) {
         s.partitions = {partition_at("P", "A", 2000, "B")};
         s.partitions[0].heading = 45;
     }},
    {"opening-cuts-tee", "wall A", "at 1000 mm or at 2200 mm from the left it fits",
     [](Shell &s) {
         s.partitions = {partition_at("P", "A", 2000, "C")};
         s.openings = {window("A", 1500, 300, 800, 400)};
     }},
    {"wall-too-short", "wall B", "longer than 200 mm",
     [](Shell &s) { s.walls = inset_plan(mm(9000), mm(6000), mm(3000), mm(3000), mm(150)); }},
    {"rounds-missing", "rounds", "state two", [](Shell &s) { s.rounds.pitch.reset(); }},
    {"rounds-disagree", "rounds", "two of count", [](Shell &s) { s.rounds.height = mm(5000); }},
    {"rounds-out-of-range", "rounds", "between 1 and 200", [](Shell &s) { s.rounds.count = 0; }},
    {"gap-eats-log", "rounds", "no log", [](Shell &s) { s.rounds.gap = mm(240); }},
    {"log-over-pitch", "wall B", "at most as high", [](Shell &s) { s.walls[1].log_height = mm(260); }},
    {"tail-too-thin", "corner AB", "would fit", [](Shell &s) { s.rounds.pitch = mm(110); }},
    {"tail-too-thin", "corner AB", "flatter slope", // slopes that leave no wood
     [](Shell &s) { s.notch.slope = Slope::rise_per_run(0.6); }},
    {"no-wood-left", "wall A, round 1", "a higher log", // a taper that ends below nothing
     [](Shell &s) { s.logs.tip_height = mm(0.5); }},
    {"no-wood-left", "wall A, round 1", "1 mm wide", [](Shell &s) { s.logs.tip_width = mm(0.5); }},
    {"log-too-wide", "wall A, round 1", "thickness as that of its widest log",
     [](Shell &s) { s.logs.butt_width = mm(230); }},
    {"log-nowhere", "wall A, round 9", "rounds count from 1",
     [](Shell &s) {
         s.own_logs = {{}};
         s.own_logs[0].wall = "A";
         s.own_logs[0].round = 9;
     }},
    {"bore-misses-log", "wall X", "no wall X", [](Shell &s) { s.bores = {bore_at("X", 2000)}; }},
    {"bore-misses-log", "wall A", "leaves no wood beside it",
     [](Shell &s) {
         s.bores = {bore_at("A", 2000)};
         s.bores[0].from_outside = mm(5);
     }},
    {"bore-misses-log", "wall A", "only 4 rounds",
     [](Shell &s) {
         s.bores = {bore_at("A", 2000)};
         s.bores[0].to_round = 7;
     }},
    {"bore-misses-log", "wall A", "only 4 rounds", // a rod that starts over the last log goes through none
     [](Shell &s) {
         s.bores = {bore_at("A", 2000)};
         s.bores[0].from_round = 5;
     }},
    {"bore-misses-log", "wall A", "through no log",
     [](Shell &s) {
         s.bores = {bore_at("A", 2000)};
         s.bores[0].from_round = 3;
         s.bores[0].to_round = 2;
     }},
    {"bore-misses-log", "wall A", "180 mm at most",
     [](Shell &s) {
         s.bores = {bore_at("A", 2000)};
         s.bores[0].diameter = mm(199);
     }},
    {"bore-misses-log", "wall A, round 1",
     "leaves no wood beside it", // of a log that is thinner than its wall
     [](Shell &s) {
         s.logs.tip_width = s.logs.butt_width = mm(160);
         s.bores = {bore_at("A", 2000)};
         s.bores[0].from_outside = mm(35);
     }},
    {"bore-misses-log", "wall A", "no whole log", [](Shell &s) { s.bores = {bore_at("A", 60)}; }},
    {"tails-do-not-alternate", "corner", "make them equal", [](Shell &s) { s.walls[1].pitch = mm(400); }},
    {"opening-too-wide", "wall A", "a width of 4400 mm at most fits, at 300 mm from the left",
     [](Shell &s) { s.openings = {window("A", 250, 300, 4600, 400)}; }},
    {"opening-cuts-corner", "wall A", "at 500 mm from the left it fits",
     [](Shell &s) { s.openings = {window("A", 100, 300, 800, 400)}; }},
    {"opening-cuts-corner", "corner", "at 4200 mm from the left it fits",
     [](Shell &s) { s.openings = {window("A", 4500, 300, 300, 400)}; }},
    {"opening-over-wall", "wall A", "900 mm high",
     [](Shell &s) { s.openings = {window("A", 1000, 300, 800, 900)}; }},
    {"opening-below-wall", "wall A", "under the foundation",
     [](Shell &s) { s.openings = {window("A", 1000, -50, 800, 400)}; }},
    {"opening-empty", "wall A", "above zero",
     [](Shell &s) { s.openings = {window("A", 1000, 300, 0, 400)}; }},
    {"opening-without-wall", "wall X", "no wall X",
     [](Shell &s) { s.openings = {window("X", 1000, 300, 800, 400)}; }},
    {"openings-too-close", "wall A", "overlap",
     [](Shell &s) {
         s.openings = {window("A", 1000, 300, 800, 400), window("A", 1500, 300, 800, 400)};
     }},
    {"peg-rule", "pegs", "100 mm at most", [](Shell &s) { s.pegs.diameter = mm(190); }},
    {"peg-rule", "pegs", "run into one another", [](Shell &s) { s.pegs.between = mm(30); }},
    {"peg-rule", "pegs", "breaks out", [](Shell &s) { s.pegs.end_distance = mm(10); }},
};

} // namespace

TEST_CASE("Each thing that cannot be built gives its finding, and no piece") {
    for (const Spoilt &c : cases)
        CHECK(check_told(c, Weight::error).pieces.empty());
}

TEST_CASE("What can be built but deserves a look is a warning, and the pieces are there") {
    Shell shell = plain_shell();
    shell.openings = {window("A", 1000, 300, 800, 360)}; // leaves 10 mm of the third log over it
    Layout layout = lay_out(shell);
    REQUIRE(layout.findings.size() >= 1);
    CHECK(layout.findings[0].code == "thin-wood-at-opening");
}
