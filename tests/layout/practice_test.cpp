// Rules of practice that are not kept are warnings: what is stated can be cut all the same.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/layout/spoilt.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;
using namespace roundlay::test;

namespace {

const std::vector<Spoilt> practice = {
    {"tee-too-near", "corner AP", "from 350 mm to 4650 mm from the left of wall A it fits",
     [](Shell &s) { s.partitions = {partition_at("P", "A", 340, "C")}; }},
    {"tail-too-thin", "corner AB", "would fit", [](Shell &s) { s.rounds.pitch = mm(145); }},
    {"little-wood-beside-opening", "corner DA", "leaves 50 mm of wood",
     [](Shell &s) { s.openings = {window("A", 250, 300, 800, 400)}; }},
    {"little-wood-beside-opening", "notches at AP", "leaves 50 mm of wood",
     [](Shell &s) {
         s.partitions = {partition_at("P", "A", 2000, "C")};
         s.openings = {window("A", 2150, 300, 800, 400)};
     }},
    {"little-wood-beside-opening", "window 1", "leaves 60 mm of wood",
     [](Shell &s) {
         s.openings = {window("A", 1000, 300, 800, 400), window("A", 1860, 300, 800, 400)};
     }},
    {"pegs-do-not-fit", "wall A, round", "needs 3 pegs",
     [](Shell &s) {
         s.openings = {window("A", 1000, 50, 800, 800), window("A", 2000, 50, 800, 800)};
     }},
    {"peg-rule", "pegs", "more than half",
     [](Shell &s) {
         s.pegs.diameter = mm(120);
         s.pegs.between = mm(150);
     }},
    {"peg-rule", "pegs", "would break", [](Shell &s) { s.pegs.draw = mm(12); }},
    {"peg-rule", "pegs", "do not hold", [](Shell &s) { s.pegs.square = mm(20); }},
    {"bore-takes-half", "wall A", "more than half",
     [](Shell &s) {
         s.bores = {bore_at("A", 2000)};
         s.bores[0].diameter = mm(110);
     }},
    {"trim-does-not-fit", "openings", "less than half",
     [](Shell &s) {
         s.openings = {window("A", 1000, 300, 800, 400)};
         s.trim.spline_width = mm(120);
         s.trim.spline_depth = mm(30);
     }},
    {"step-cuts-corner", "wall A, step 1", "too near the notches",
     [](Shell &s) {
         s.steps = {{"A", mm(260), mm(1500), mm(230)}};
     }},
    {"steps-too-close", "wall A, step 2", "too little wall",
     [](Shell &s) {
         s.steps = {{"A", mm(600), mm(800), mm(230)}, {"A", mm(1450), mm(800), mm(230)}};
     }},
    {"opening-meets-step", "wall A", "too little wood beside it",
     [](Shell &s) {
         s.steps = {{"A", mm(600), mm(800), mm(230)}};
         s.openings = {window("A", 1450, 100, 800, 500)};
     }},
};

} // namespace

TEST_CASE(
    "A rule of practice that is not kept is a warning with a line, and every piece is there and sound") {
    for (const Spoilt &c : practice) {
        const Layout layout = check_told(c, Weight::warning);
        REQUIRE_FALSE(layout.pieces.empty());
        const Bodies bodies = bodies_of(layout);
        for (const Body &body : bodies)
            CHECK(is_closed(body.hewn));
        CHECK(overlaps(layout, bodies).empty());
    }
}
