// Plans of floors, rounds and the foundation: every name at its own thing, and room for it.
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/text.h"
#include "kernel/document/document.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <algorithm>
#include <map>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

/// An L in feet and inches; a partition tees into the wall before its inside corner, so far from its end.
Shell ell_with_tee(double inches) {
    Shell shell = begun_in(UnitSystem::imperial);
    give_walls(shell, l_plan(Length::feet(32), Length::feet(28), Length::feet(16), Length::feet(14)),
               Length::inches(7), 6, Length::inches(10), Length::inches(1));
    shell.partitions = {partition("P", "C", Length::feet(16) - Length::inches(inches), "A")};
    return shell;
}

TEST_CASE("leaders do not run through one another where a tee stands close to an inside corner") {
    int built = 0, sheets = 0;
    std::string found;
    for (const double inches : {-10, -6, 6, 10, 13}) {
        const LaidShell shell = laid(ell_with_tee(inches));
        if (shell.layout.pieces.empty()) continue;
        ++built;
        for (const Model &model : shell.layout.models) {
            const Piece &piece = shell.layout.pieces[model.pieces.front()];
            if (piece.tag[0] != 'C' && piece.tag[0] != 'D') continue;
            for (const Paper paper : {Paper::letter, Paper::tabloid}) {
                const auto made = cut_sheet(shell.shell, shell.layout, model, shell.bodies[piece.model],
                                            full_options(paper));
                sheets += static_cast<int>(made.size());
                found += all_clashes(made);
            }
        }
    }
    CHECK(built >= 2);
    CHECK(sheets > 10);
    CHECK(found == "");
}

// From wall A in the south, 2.5 m from its left corner, straight north: its sides face east and west.
TEST_CASE("a partition is seen from a quarter of the sky, since it has no outside") {
    Shell plain = plain_shell();
    plain.partitions = {partition("P", "A", Length::mm(2500), "C")};
    const LaidShell shell = laid(plain);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options());
    std::string said;
    for (const std::string &words : words_on(sheets, "Walls"))
        said += words + "\n";
    CHECK(said.find("Wall P, from the east, ") != std::string::npos);
    CHECK(said.find("Wall P, from the west, ") != std::string::npos);
    CHECK(said.find("Wall P, from outside") == std::string::npos);
    CHECK(said.find("Wall A, from outside, ") != std::string::npos);
    const auto sections = words_on(sheets, "");
    CHECK(sections.contains("east"));
    CHECK(sections.contains("west"));
    CHECK(sections.contains("outside"));
}

TEST_CASE("the foundation plan names a partition where it stands") {
    Shell plain = plain_shell(); // 5 m x 4 m: from wall B, 1.5 m up from the south, across to wall D
    plain.partitions = {partition("P", "B", Length::mm(1500), "D")};
    const LaidShell shell = laid(plain);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options());
    std::map<std::string, Vec2> names;
    for (const Item &item : sheets.at(0).items)
        if (const Text *text = std::get_if<Text>(&item); text && text->words.starts_with("Wall "))
            names[text->words] = box_of(*text).centre();
    REQUIRE(names.size() == 5);
    CHECK(names["Wall P"].y > names["Wall A"].y);
    CHECK(names["Wall P"].y < names["Wall C"].y);
    CHECK(names["Wall P"].x > names["Wall D"].x);
    CHECK(names["Wall P"].x < names["Wall B"].x);
}

TEST_CASE("the foundation plan shows where a first log runs on past its corner, and no tail's overhang") {
    const auto printed = [](double overhang, const std::string &words) {
        Shell plain = plain_shell(); // 5 m x 4 m
        OwnLog sill;
        sill.wall = "A", sill.round = 1, sill.notch.overhang_right = Length::mm(overhang);
        plain.own_logs = {sill};
        const LaidShell shell = laid(plain);
        REQUIRE_FALSE(shell.layout.pieces.empty());
        const auto sheets = foundation_plan(shell.shell, shell.layout, full_options());
        return std::ranges::count_if(sheets.at(0).items, [&](const Item &item) {
            const Text *text = std::get_if<Text>(&item);
            return text && text->words == words;
        });
    };
    CHECK(printed(2600, "7600") == 2); // where it ends, and its length in the table of sills
    CHECK(printed(400, "5400") == 1);  // its length alone
}

TEST_CASE("a foundation plan is made where bores stand too close for their marks") {
    Shell plain = plain_shell();
    plain.pegs.wanted = false;
    for (int row = 1; row <= 3; ++row)
        for (int i = 0; i < 24; ++i) {
            StatedBore rod;
            rod.use = BoreUse::rod, rod.wall = "A", rod.diameter = Length::mm(20);
            rod.from_left = Length::mm(1000 + 60 * i), rod.from_outside = Length::mm(50 * row);
            plain.bores.push_back(rod);
        }
    const LaidShell shell = laid(plain);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const auto words = words_on(foundation_plan(shell.shell, shell.layout, full_options()), "");
    CHECK(words.contains("Foundation plan"));
    CHECK(words.contains("50  rod 1 to 24"));
    CHECK(words.contains("1000  rod 1, rod 25, rod 49"));
}

TEST_CASE("round plans name logs of walls that are not square too") {
    Shell bay = plain_shell();
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    const LaidShell shell = laid(bay);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options());
    CHECK(all_clashes(sheets) == "");
    const auto rounds = words_on(sheets, "Rounds");
    for (const Piece &piece : shell.layout.pieces) {
        INFO(piece.tag);
        CHECK((rounds.contains("\u2190 " + piece.tag) || rounds.contains(piece.tag + " \u2192")));
    }
}

namespace {

/// A plain room with a floor that a stair comes up through.
LaidShell with_stair(const FloorOpening &stair) {
    Shell shell = floored();
    shell.floors[0].openings = {stair};
    LaidShell made = laid(shell);
    REQUIRE_FALSE(made.layout.timbers.empty());
    return made;
}

} // namespace

TEST_CASE("the plan of a floor leads the tag of a timber out that is too short for it") {
    // Between wall A and the trimmer 50 mm of a trimmed joist are clear.
    const LaidShell made =
        with_stair({"stair", Length::mm(900), Length::mm(150), Length::mm(900), Length::mm(2000)});
    const auto sheets = shell_drawings(made.shell, made.layout, made.bodies, full_options());
    CHECK(all_clashes(sheets) == "");
    const auto floors = words_on(sheets, "Floors");
    for (const Timber &t : made.layout.timbers)
        CHECK(floors.contains(made.layout.pieces[t.piece].tag));
}

TEST_CASE("the plan of a floor has the tag of each trimmer at its own, inside a crossed-out opening too") {
    // As a stair stands in a house: near a wall, with one trimmer at either end of it.
    const LaidShell made =
        with_stair({"stair", Length::mm(200), Length::mm(300), Length::mm(900), Length::mm(2100)});
    const auto sheets = shell_drawings(made.shell, made.layout, made.bodies, full_options());
    CHECK(all_clashes(sheets) == "");
    std::map<std::string, Text> tags; // the first time, in the drawing; then in the table
    std::vector<Path> leaders;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items) {
            if (sheet.chapter != "Floors") continue;
            if (const Text *text = std::get_if<Text>(&item); text && text->words.starts_with("G-"))
                tags.emplace(text->words, *text);
            if (const Path *path = std::get_if<Path>(&item); path && path->leader) leaders.push_back(*path);
        }
    const auto named = [&](const Timber &t) { return tags.at(made.layout.pieces[t.piece].tag).at; };
    // What of a millimetre of the house is a millimetre on paper: from the tags of joists, which all stand
    // alike.
    std::vector<std::pair<double, double>> joists;
    std::vector<std::pair<Vec2, Vec2>> trimmers;
    for (const Timber &t : made.layout.timbers) {
        if (t.use == TimberUse::joist) joists.emplace_back(t.from.x, named(t).x);
        if (t.use == TimberUse::trimmer) trimmers.emplace_back(0.5 * (t.from + t.to), named(t));
    }
    const double scale =
        (joists.back().second - joists.front().second) / (joists.back().first - joists.front().first);
    REQUIRE(trimmers.size() == 2);
    const Vec2 apart = scale * (trimmers[1].first - trimmers[0].first),
               told = trimmers[1].second - trimmers[0].second;
    CHECK(std::abs(told.x - apart.x) < 12); // along it
    CHECK(std::abs(told.y - apart.y) < 8);  // on it or beside it
    for (const Path &leader : leaders)      // one that ran through words would seem to lead to them
        for (const auto &[tag, text] : tags)
            CHECK_FALSE(crosses(box_of(text).grown(-0.1), leader.points.front(), leader.points.back()));
}

namespace {

/// With a door in wall A and a window in wall C.
LaidShell with_openings() {
    Shell shell = plain_shell(); // 5 m x 4 m
    shell.rounds.count = 11;
    shell.openings = {window("A", 1500, 0, 900, 1850), window("C", 1000, 690, 800, 900)};
    shell.openings[0].kind = OpeningKind::door, shell.openings[0].name = "yard door";
    LaidShell made = laid(shell);
    REQUIRE_FALSE(made.layout.pieces.empty());
    return made;
}

/// What is written on the sheet whose title says so.
std::set<std::string> words_of_sheet(const std::vector<Sheet> &sheets, const std::string &title) {
    std::set<std::string> words;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && sheet.title.starts_with(title))
                words.insert(text->words);
    return words;
}

} // namespace

TEST_CASE("the foundation plan says where doors leave gaps, and the diagonals") {
    const LaidShell shell = with_openings();
    const auto words = words_on(foundation_plan(shell.shell, shell.layout, full_options()), "");
    for (const char *each : {"yard door", "1500", "2400", "900", "6403"}) // 5000 and 4000 at a right angle
        CHECK(words.contains(each));
    CHECK_FALSE(words.contains("Corners that are not square, measured inside"));
}

TEST_CASE("the foundation plan says the angle of every corner that is not square") {
    Shell bay = plain_shell();
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    const LaidShell shell = laid(bay);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    std::map<std::string, int> said;
    for (const Sheet &sheet : foundation_plan(shell.shell, shell.layout, full_options()))
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item)) ++said[text->words];
    CHECK(said["135\u00b0"] == 4); // two corners of the bay, each drawn and in the table
    CHECK(said["225\u00b0"] == 4); // and two where it leaves the wall
    CHECK(said["90\u00b0"] == 0);
}

TEST_CASE("a plan of a round has the clear inside lengths, and jambs only where its logs stop at them") {
    const LaidShell shell = with_openings();
    const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options(Paper::a4));
    CHECK(all_clashes(sheets) == "");
    const auto all = words_on(sheets, "Rounds");
    for (const char *each : {"5000", "4000", "4600", "3600", "1500", "2400", "1000", "1800"})
        CHECK(all.contains(each));
    Shell blind = shell.shell;
    blind.openings.clear();
    const LaidShell plain = laid(blind);
    const auto none =
        words_on(shell_drawings(plain.shell, plain.layout, plain.bodies, full_options()), "Rounds");
    for (const char *each : {"1500", "2400", "1000", "1800"})
        CHECK_FALSE(none.contains(each));
}

TEST_CASE("a measure of a round that finds no room is told beside it") {
    Shell tight = plain_shell();
    tight.rounds.count = 11;
    tight.openings = {window("A", 1000, 690, 700, 900), window("A", 1950, 690, 700, 900)};
    tight.walls = rectangle_plan(Length::feet(160), Length::feet(120)); // on A4 250 mm are no 3 mm
    const LaidShell shell = laid(tight);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    std::string said;
    for (const std::string &words :
         words_on(shell_drawings(shell.shell, shell.layout, shell.bodies, full_options(Paper::a4)), "Rounds"))
        said += words + "\n";
    CHECK_THAT(said, ContainsSubstring("wall A, jambs from its left outside corner: 1000, 1700, 1950, 2650"));
}

TEST_CASE("a section through the whole house has its floors, its walls and how far they stand apart") {
    const LaidShell shell = laid(floored());
    REQUIRE_FALSE(shell.layout.timbers.empty());
    const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options());
    const auto words = words_of_sheet(sheets, "Sections through the whole house");
    // Across wall A, 4 m to wall C, and across wall B, 5 m to wall D, each 200 thick; joists of 180 under
    // 560.
    for (const char *each : {"Section A1, through the whole house", "Section B1, through the whole house",
                             "560  floor G", "380", "200", "3800", "4000", "4800", "5000"})
        CHECK(words.contains(each));
    double top = 0; // of the logs of wall A
    for (const Piece &piece : shell.layout.pieces)
        if (!piece.timber && piece.wall == Index<WallPlace>(0))
            top = std::max(top, piece.frame.origin.z + piece.blank.height);
    CHECK(words.contains(Words(UnitSystem::metric).length(top) + "  wall A"));
}
