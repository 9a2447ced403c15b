// What cannot be built is refused by name, with what would fit.

#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <cmath>
#include <functional>
#include <set>

using namespace roundlay;
using test::window;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

Partition partition(const std::string &name, const std::string &from, double at, const std::string &to) {
    Partition p;
    p.name = name;
    p.from = from;
    p.from_left = mm(at);
    p.to = to;
    return p;
}

StatedBore bore(const std::string &wall, double at) {
    StatedBore b;
    b.wall = wall;
    b.from_left = mm(at);
    return b;
}

struct Case {
    std::string code;
    std::string place; ///< must stand in the finding's place
    std::string fits;  ///< must stand in its message
    std::function<void(Shell &)> spoil;
};

const std::vector<Case> cases = {
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
     [](Shell &s) { s.partitions = {partition("P", "A", 305, "C")}; }},
    {"tee-too-near", "wall A", "from 350 mm to 1955 mm from the left of wall A it fits",
     [](Shell &s) {
         s.partitions = {partition("P", "A", 2000, "C"), partition("Q", "A", 2205, "C")};
     }},
    {"tee-off-wall", "wall P", "from the left of wall A it fits",
     [](Shell &s) { s.partitions = {partition("P", "A", 6000, "C")}; }},
    {"partition-without-wall", "wall P", "none of",
     [](Shell &s) { s.partitions = {partition("P", "X", 2000, "C")}; }},
    {"partition-without-wall", "wall P", "does not have",
     [](Shell &s) { s.partitions = {partition("P", "A", 2000, "X")}; }},
    {"partition-leads-away", "wall P", "lie ahead",
     [](Shell &s) {
         s.partitions = {partition("P", "A", 2000, "C")};
         s.partitions[0].heading = 270;
     }},
    {"corner-not-square", "wall P", "angle",
     [](Shell &s) {
         s.partitions = {partition("P", "A", 2000, "C")};
         s.partitions[0].heading = 10;
     }},
    {"walls-do-not-alternate", "corner",
     "even number", // from one wall to its neighbour: three walls in a loop
     [](Shell &s) {
         s.partitions = {partition("P", "A", 2000, "B")};
         s.partitions[0].heading = 45;
     }},
    {"opening-cuts-tee", "wall A", "at 1000 mm or at 2200 mm from the left it fits",
     [](Shell &s) {
         s.partitions = {partition("P", "A", 2000, "C")};
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
    {"bore-misses-log", "wall X", "no wall X", [](Shell &s) { s.bores = {bore("X", 2000)}; }},
    {"bore-misses-log", "wall A", "leaves no wood beside it",
     [](Shell &s) {
         s.bores = {bore("A", 2000)};
         s.bores[0].from_outside = mm(5);
     }},
    {"bore-misses-log", "wall A", "only 4 rounds",
     [](Shell &s) {
         s.bores = {bore("A", 2000)};
         s.bores[0].to_round = 7;
     }},
    {"bore-misses-log", "wall A", "only 4 rounds", // a rod that starts over the last log goes through none
     [](Shell &s) {
         s.bores = {bore("A", 2000)};
         s.bores[0].from_round = 5;
     }},
    {"bore-misses-log", "wall A", "through no log",
     [](Shell &s) {
         s.bores = {bore("A", 2000)};
         s.bores[0].from_round = 3;
         s.bores[0].to_round = 2;
     }},
    {"bore-misses-log", "wall A", "180 mm at most",
     [](Shell &s) {
         s.bores = {bore("A", 2000)};
         s.bores[0].diameter = mm(199);
     }},
    {"bore-misses-log", "wall A, round 1",
     "leaves no wood beside it", // of a log that is thinner than its wall
     [](Shell &s) {
         s.logs.tip_width = s.logs.butt_width = mm(160);
         s.bores = {bore("A", 2000)};
         s.bores[0].from_outside = mm(35);
     }},
    {"bore-misses-log", "wall A", "no whole log", [](Shell &s) { s.bores = {bore("A", 60)}; }},
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

bool says(const Finding &f, const Case &c) {
    const bool place = test::place(f).find(c.place) != std::string::npos ||
                       test::message(f).find(c.place) != std::string::npos;
    return f.code == c.code && place && test::message(f).find(c.fits) != std::string::npos;
}

} // namespace

TEST_CASE("Each thing that cannot be built gives its finding, and no piece") {
    for (const Case &c : cases) {
        Shell shell = test::plain_shell();
        c.spoil(shell);
        const Layout layout = lay_out(shell);
        std::string all;
        bool said = false;
        for (const Finding &f : layout.findings) {
            all += f.code + " @ " + test::place(f) + ": " + test::message(f) + " [" + f.subject + "]\n";
            said = said || (says(f, c) && f.weight == Weight::error);
        }
        INFO("expected " << c.code << " / " << c.place << " / " << c.fits << ", got:\n" << all);
        CHECK(said);
        CHECK(layout.pieces.empty());
    }
}

namespace {

/// Rules of practice that are not kept: what is stated can be cut all the same.
const std::vector<Case> practice = {
    {"tee-too-near", "corner AP", "from 350 mm to 4650 mm from the left of wall A it fits",
     [](Shell &s) { s.partitions = {partition("P", "A", 340, "C")}; }},
    {"tail-too-thin", "corner AB", "would fit", [](Shell &s) { s.rounds.pitch = mm(145); }},
    {"little-wood-beside-opening", "corner DA", "leaves 50 mm of wood",
     [](Shell &s) { s.openings = {window("A", 250, 300, 800, 400)}; }},
    {"little-wood-beside-opening", "notches at AP", "leaves 50 mm of wood",
     [](Shell &s) {
         s.partitions = {partition("P", "A", 2000, "C")};
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
         s.bores = {bore("A", 2000)};
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
    for (const Case &c : practice) {
        Shell shell = test::plain_shell();
        c.spoil(shell);
        const Layout layout = lay_out(shell);
        std::string all;
        bool said = false;
        for (const Finding &f : layout.findings) {
            all += f.code + " @ " + test::place(f) + ": " + test::message(f) + " [" + f.subject + "]\n";
            said = said || (says(f, c) && f.weight == Weight::warning && !f.subject.empty());
        }
        INFO("expected " << c.code << " / " << c.place << " / " << c.fits << ", got:\n" << all);
        CHECK(said);
        REQUIRE_FALSE(layout.pieces.empty());
        const Bodies bodies = bodies_of(layout);
        for (const Body &body : bodies)
            CHECK(is_closed(body.hewn));
        CHECK(overlaps(layout, bodies).empty());
    }
}

TEST_CASE("A finding is of the pieces that it names, not of those whose tags are part of what it names") {
    Shell shell = test::plain_shell();
    shell.walls[1].name = "BA"; // its logs are BA-01-1 and so on, wall A's A-01-1
    const Layout layout = lay_out(shell);
    const auto named = [&](const About &about) {
        std::string tags;
        for (const Index<Piece> i : pieces_of({Weight::warning, "x", about, {}, {}, ""}, shell, layout))
            tags += layout.pieces[i].tag + " ";
        return tags;
    };
    CHECK(named({about::Piece{"BA-02-1"}}) == "BA-02-1 ");
    CHECK(named({about::Piece{"A-02-1"}}) == "A-02-1 ");
    CHECK(named({about::Pieces{"A-02-1", "BA-03-1"}}) == "A-02-1 BA-03-1 ");
    CHECK(named(round_place("BA", 2)) == "BA-02-1 ");
    CHECK(named({about::Wall{"A"}, about::Opening{OpeningKind::door, 1, "BA-02-1"}})
              .starts_with("A-01-1 A-02-1 "));
}

TEST_CASE(
    "A finding about pegs is of the two logs that they should hold, whatever opening left them no place") {
    Shell shell = test::plain_shell();
    shell.openings = {window("A", 300, 300, 800, 400)}; // 100 mm from the tails: no place for two pegs
    const Layout layout = lay_out(shell);
    int told = 0;
    for (const Finding &f : layout.findings) {
        if (f.code != "pegs-do-not-fit" || f.weight != Weight::warning) continue;
        ++told;
        std::set<std::string> named, found;
        for (const Amount &amount : f.what.amounts)
            if (const auto *name = std::get_if<std::string>(&amount.value())) named.insert(*name);
        for (const Index<Piece> i : pieces_of(f, shell, layout))
            found.insert(layout.pieces[i].tag);
        CHECK(found.size() == 2);
        CHECK(found == named);
    }
    CHECK(told > 1);
}

TEST_CASE("A finding about an opening is of the logs that it cuts, also where it has no name or another's") {
    Shell shell = test::plain_shell();
    shell.openings = {window("A", 600, 460, 700, 230), window("A", 2600, 460, 700, 230),
                      window("C", 600, 460, 700, 230)};
    const auto cut_by = [&](std::size_t opening) {
        const Layout layout = lay_out(shell);
        const Finding finding{Weight::warning,
                              "x",
                              opening_place(shell, opening),
                              {},
                              {},
                              "opening[" + std::to_string(opening) + "].height"};
        std::string tags;
        for (const Index<Piece> i : pieces_of(finding, shell, layout))
            tags += layout.pieces[i].tag + " ";
        return tags;
    };
    // Rounds of 230 mm: the third is parted by each window, left and right of it.
    CHECK(cut_by(0) == "A-03-1 A-03-2 ");
    CHECK(cut_by(1) == "A-03-2 A-03-3 ");
    CHECK(cut_by(2) == "C-03-1 C-03-2 ");
    for (Opening &o : shell.openings)
        o.name = "lake window";
    CHECK(cut_by(0) == "A-03-1 A-03-2 ");
    CHECK(cut_by(1) == "A-03-2 A-03-3 ");
    CHECK(cut_by(2) == "C-03-1 C-03-2 ");
}

TEST_CASE("What can be built but deserves a look is a warning, and the pieces are there") {
    Shell shell = test::plain_shell();
    shell.openings = {window("A", 1000, 300, 800, 360)}; // leaves 10 mm of the third log over it
    Layout layout = lay_out(shell);
    REQUIRE(layout.findings.size() >= 1);
    CHECK(layout.findings[0].code == "thin-wood-at-opening");
}
