// Bores of each use by their letters, in every drawing that a mason or a builder needs.
#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/elevation/section.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/lay_out.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

StatedBore bore(BoreUse use, const std::string &wall, double from_left) {
    StatedBore b;
    b.use = use;
    b.wall = wall;
    b.from_left = Length::mm(from_left);
    b.diameter = Length::mm(20);
    return b;
}

/// 5 m east and 4 m north, walls 200 thick: one bore of each use, and a second rod.
Shell bored_shell() {
    Shell shell = plain_shell();
    shell.bores = {bore(BoreUse::rod, "A", 700), bore(BoreUse::rod, "C", 900), bore(BoreUse::bolt, "B", 1500),
                   bore(BoreUse::wire, "A", 3100), bore(BoreUse::hole, "D", 2000)};
    shell.bores[2].to_round = 1;
    shell.bores[4].from_round = 2;
    shell.bores[1].from_outside = Length::mm(80);
    return shell;
}

std::vector<std::string> words_in(const std::vector<Sheet> &sheets, const std::string &anchor) {
    std::vector<std::string> all;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && sheet.anchor.starts_with(anchor))
                all.push_back(text->words);
    return all;
}

auto count(const std::vector<std::string> &all, const std::string &words) {
    return std::count(all.begin(), all.end(), words);
}

std::vector<Sheet> drawings_of(const LaidShell &s) {
    return shell_drawings(s.shell, s.layout, s.bodies, full_options());
}

} // namespace

// By hand: rod 2 is 900 mm from C's left corner, which is the north-east one: 5000 - 900 = 4100 east; 80 mm
// in from its outside face: 4000 - 80 = 3920 north.
TEST_CASE("what comes out of the foundation stands in its plan with running dimensions, found holes do not") {
    const LaidShell shell = laid(bored_shell());
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const auto sheets = drawings_of(shell);
    CHECK(all_clashes(sheets) == "");
    const auto words = words_in(sheets, "foundation");
    for (const char *dimension : {"700  rod 1", "100  rod 1, wiring 1", "4100  rod 2", "3920  rod 2",
                                  "4900  bolt 1", "1500  bolt 1", "3100  wiring 1"}) {
        INFO(dimension);
        CHECK(count(words, dimension) == 1);
    }
    for (const char *mark : {"rod 1", "rod 2", "bolt 1", "wiring 1"}) {
        INFO(mark);
        CHECK(count(words, mark) == 2); // beside its symbol, and in the table
    }
    CHECK(count(words, "hole 1") == 0);
}

TEST_CASE("a rod's disc stands on the foundation plan where the shell has it") {
    const LaidShell shell = laid(bored_shell());
    const auto sheets = drawings_of(shell);
    Rect outline = Rect::nothing();
    std::vector<Vec2> discs;
    for (const Item &item : sheets.at(0).items) {
        const Path *path = std::get_if<Path>(&item);
        if (path && path->closed && path->line == Line::visible)
            for (const Vec2 p : path->points)
                outline = joined(outline, p);
        const Fill *fill = std::get_if<Fill>(&item);
        if (fill && fill->rings[0].size() == 8) discs.push_back(bounds(item).centre());
    }
    const double scale = outline.width() / 5000;
    CHECK(outline.height() == Approx(4000 * scale));
    for (const Vec2 wood : {Vec2{700, 100}, Vec2{4100, 3920}}) {
        const Vec2 there = Vec2{outline.x0, outline.y0} + scale * wood;
        CHECK(std::any_of(discs.begin(), discs.end(), [&](Vec2 d) { return length(d - there) < 0.01; }));
    }
}

TEST_CASE(
    "stated bores stand in their walls' elevations and in the plans of the rounds that they go through") {
    const LaidShell shell = laid(bored_shell());
    const auto sheets = drawings_of(shell);
    const auto a = words_in(sheets, "wall:A"), c = words_in(sheets, "wall:C"),
               rounds = words_in(sheets, "round:");
    CHECK(count(a, "700  rod 1") == 2); // from outside and from inside
    CHECK(count(a, "rod 1") == 3);      // at both, and in the table
    CHECK(count(a, "3100  wiring 1") == 2);
    CHECK(count(a, "rod 2") == 0);
    CHECK(count(c, "900  rod 2") == 2);
    CHECK(count(words_in(sheets, "wall:D"), "2000  hole 1") == 2);
    CHECK(count(rounds, "rod 1") == 4);  // A is of four full logs
    CHECK(count(rounds, "bolt 1") == 1); // in the first round's log only
    CHECK(count(rounds, "hole 1") == 4); // D is of five logs, its first and last ones half; from round 2 on
}

TEST_CASE("a piece's sheet calls a rod by a rod's letter and counts pegs by themselves") {
    const LaidShell shell = laid(bored_shell());
    const auto piece = std::find_if(shell.layout.pieces.begin(), shell.layout.pieces.end(),
                                    [](const Piece &p) { return p.tag == "A-02-1"; });
    REQUIRE(piece != shell.layout.pieces.end());
    const Index<Model> m = piece->model;
    const auto sheets =
        cut_sheet(shell.shell, shell.layout, shell.layout.models[m], shell.bodies[m], full_options());
    const auto words = words_in(sheets, "");
    CHECK(count(words, "R1") == 2); // on the view, and in the table of bores
    CHECK(count(words, "W1") == 2);
    CHECK(count(words, "R2") == 0);
    CHECK(count(words, "Bore R1 (rod)") == 1);
    CHECK(count(words, "Bore W1 (wiring)") == 1);
    const auto pegs = std::count_if(piece->cuts.begin(), piece->cuts.end(), [](const Cut &cut) {
        const Bore *b = std::get_if<Bore>(&cut);
        return b && !b->use;
    });
    REQUIRE(pegs > 1);
    CHECK(count(words, "P" + std::to_string(pegs)) == 2);
    CHECK(count(words, "P" + std::to_string(pegs + 1)) == 0);
}

TEST_CASE("a stated bore is found again in every log that it goes through, along its drift") {
    Shell plain = plain_shell();
    plain.bores = {bore(BoreUse::rod, "A", 1000), bore(BoreUse::rod, "A", 1300)};
    plain.bores[0].drift = Length::mm(7);
    plain.bores[1].from_round = 2, plain.bores[1].to_round = 3;
    const Layout layout = lay_out(plain);
    REQUIRE_FALSE(layout.pieces.empty());
    const auto placed = placed_bores(plain, layout);
    REQUIRE(placed.size() == 2);
    REQUIRE(placed[0].logs.size() == 4);
    CHECK(placed[0].mark == "rod 1");
    CHECK(placed[0].logs[0].bedded);
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(placed[0].logs[i].foot.x == Approx(1000 + 7.0 * static_cast<double>(i)));
    REQUIRE(placed[1].logs.size() == 2);
    CHECK_FALSE(placed[1].logs[0].bedded);
}

// A step as high as two rounds, which no log is cut for: what lies on it is bedded all the same.
TEST_CASE("a rod that comes out of a step of the foundation stands in its plan, and so does the log on it") {
    Shell stepped = plain_shell();
    stepped.rounds.count = 6;
    stepped.steps = {{"A", Length::mm(3000), Length::mm(2000), Length::mm(460)},
                     {"B", Length(), Length::mm(2000), Length::mm(460)}};
    stepped.bores = {bore(BoreUse::rod, "A", 4000), bore(BoreUse::rod, "A", 1000),
                     bore(BoreUse::rod, "A", 1500)};
    stepped.bores[0].from_round = 3;
    stepped.bores[2].from_round = 2;
    const LaidShell s = laid(stepped);
    REQUIRE_FALSE(s.layout.pieces.empty());
    const auto words = words_in(drawings_of(s), "foundation");
    CHECK(count(words, "1000  rod 2") == 1);
    CHECK(count(words, "4000  rod 1") == 1);
    CHECK(count(words, "1500  rod 3") == 0); // it starts in the second round, on a log
    CHECK(count(words, "A-03-1") == 1);
    CHECK(count(words, "A-04-1") == 0);
}

TEST_CASE("no section is cut through a rod") {
    Shell plain = plain_shell();
    plain.bores = {bore(BoreUse::rod, "A", 2500)}; // the middle, where a section would be cut
    const Layout layout = lay_out(plain);
    REQUIRE_FALSE(layout.pieces.empty());
    for (const SectionPlace &place : section_places(plain, layout, Index<WallPlace>(0)))
        CHECK(std::abs(place.x - 2500) > 10 + 19);
}

TEST_CASE("bores of round logs, tapered logs and bays stand in the drawings without a clash") {
    Shell round = round_shell(), taper = plain_shell(), bay = plain_shell();
    taper.logs.butt_height = Length::mm(215), taper.logs.tip_height = Length::mm(205),
    taper.logs.tip_width = Length::mm(180);
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    for (Shell shell : {round, taper, bay}) {
        shell.bores = {bore(BoreUse::rod, "A", 1300), bore(BoreUse::bolt, "C", 1000),
                       bore(BoreUse::wire, "B", 900)};
        const LaidShell s = laid(shell);
        REQUIRE_FALSE(s.layout.pieces.empty());
        const auto sheets = drawings_of(s);
        CHECK(all_clashes(sheets) == "");
        CHECK(count(words_in(sheets, "foundation"), "1300  rod 1") == 1);
        CHECK(count(words_in(sheets, "wall:A"), "1300  rod 1") == 2);
        for (const char *mark : {"rod 1", "bolt 1", "wiring 1"})
            CHECK(count(words_in(sheets, "round:"), mark) >= 4);
    }
}
