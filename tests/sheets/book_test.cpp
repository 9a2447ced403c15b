// Every sheet of every demo and of random shells, as one book.

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/elevation/elevation.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/svg/svg.h"
#include "kernel/document/document.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/run.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <map>
#include <regex>
#include <set>
#include <sstream>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

int count_of(const std::string &text, const std::string &part) {
    int count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

/// What the links of the index say and lead to, by the page number printed on their line.
std::string wrong_links(const Book &book) {
    std::map<std::string, std::size_t> pages;
    std::string wrong;
    for (std::size_t i = 0; i < book.sheets.size(); ++i)
        if (!pages.emplace(book.sheets[i].anchor, i + 1).second)
            wrong += "two sheets have the anchor " + book.sheets[i].anchor + "\n";
    for (const Sheet &sheet : book.sheets)
        for (const Item &item : sheet.items) {
            const Link *link = std::get_if<Link>(&item);
            if (link == nullptr) continue;
            std::string number;
            for (const Item &other : sheet.items)
                if (const Text *text = std::get_if<Text>(&other))
                    if (text->across == Across::right && link->box.holds(box_of(*text))) number = text->words;
            if (!pages.contains(link->to) || std::to_string(pages[link->to]) != number)
                wrong += link->to + " is said to be on page " + number + "\n";
        }
    return wrong;
}

std::set<std::string> words_on(const std::vector<Sheet> &sheets, const std::string &chapter) {
    std::set<std::string> words;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && sheet.chapter == chapter)
                words.insert(text->words);
    return words;
}

} // namespace

TEST_CASE("no sheet of any demo has a clash, on any paper") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        INFO(name);
        const Book book = whole_book(shell, full_options());
        CHECK(all_clashes(book.sheets) == "");
        CHECK(wrong_links(book) == "");
        CHECK(all_clashes(shell_drawings(shell.shell, shell.layout, shell.bodies, full_options(Paper::a4))) ==
              "");
    }
}

TEST_CASE("no sheet in the book of any shell has a clash") {
    test::ThrownAway thrown(test::refusals());
    const int count = shells_to_draw(6);
    int drawn = 0;
    std::size_t sheets = 0;
    CHECK(counterexample(count, [&] {
              Shell any = any_of_all_shells();
              any.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              const auto paper =
                  *rc::gen::element(Paper::a4, Paper::a3, Paper::letter, Paper::tabloid, Paper::a2);
              const LaidShell shell = laid(any);
              thrown.discard_refused(shell.layout.findings); // of the whole family some cannot be built
              const Book book = whole_book(shell, full_options(paper), 8);
              ++drawn;
              sheets += book.sheets.size();
              const std::string found = all_clashes(book.sheets) + wrong_links(book);
              if (!found.empty()) RC_FAIL(found + write_document(any));
          }) == "");
    if (count > 50) WARN(drawn << " shells, " << sheets << " sheets");
    CHECK(drawn >= count);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

/// An L in feet and inches; a partition tees into the wall before its inside corner, so far from its end.
Shell ell_with_tee(double inches) {
    Shell shell = begun_in(UnitSystem::imperial);
    shell.walls = l_plan(Length::feet(32), Length::feet(28), Length::feet(16), Length::feet(14));
    shell.thickness = Length::inches(7);
    shell.rounds.count = 6;
    shell.rounds.pitch = Length::inches(10);
    shell.rounds.gap = Length::inches(1);
    Partition partition;
    partition.name = "P";
    partition.from = "C";
    partition.from_left = Length::feet(16) - Length::inches(inches);
    partition.to = "A";
    shell.partitions = {partition};
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

TEST_CASE("a tag that is led into an opening does not read as a part of its size") {
    Shell shell = plain_shell();
    for (const double from : {900.0, 2050.0, 3200.0})
        shell.openings.push_back(window("A", from, 300, 950, 500));
    std::string found;
    for (const auto units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Paper paper : {Paper::letter, Paper::tabloid, Paper::a2}) {
            shell.units = units;
            const LaidShell made = laid(shell);
            REQUIRE_FALSE(made.layout.pieces.empty());
            found += all_clashes(wall_elevations(made.shell, made.layout, made.bodies, full_options(paper)));
        }
    CHECK(found == "");
}

// From wall A in the south, 2.5 m from its left corner, straight north: its sides face east and west.
TEST_CASE("a partition is seen from a quarter of the sky, since it has no outside") {
    Shell plain = plain_shell();
    Partition partition;
    partition.name = "P";
    partition.from = "A";
    partition.from_left = Length::mm(2500);
    partition.to = "C";
    plain.partitions = {partition};
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
    Partition partition;
    partition.name = "P";
    partition.from = "B";
    partition.from_left = Length::mm(1500);
    partition.to = "D";
    plain.partitions = {partition};
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

TEST_CASE("the plan of a floor leads the tag of a timber out that is too short for it") {
    Shell shell = plain_shell();
    Floor floor;
    floor.name = "G", floor.from = "A", floor.to = "C";
    floor.level = Length::mm(560), floor.spacing = Length::mm(600), floor.bearing = Length::mm(80);
    floor.joist = {Length::mm(100), Length::mm(180)};
    // Between wall A and the trimmer 50 mm of a trimmed joist are clear.
    floor.openings = {{"stair", Length::mm(900), Length::mm(150), Length::mm(900), Length::mm(2000)}};
    shell.floors = {floor};
    const LaidShell made = laid(shell);
    REQUIRE_FALSE(made.layout.timbers.empty());
    const auto sheets = shell_drawings(made.shell, made.layout, made.bodies, full_options());
    CHECK(all_clashes(sheets) == "");
    const auto floors = words_on(sheets, "Floors");
    for (const Timber &t : made.layout.timbers)
        CHECK(floors.contains(made.layout.pieces[t.piece].tag));
}

TEST_CASE("the plan of a floor has the tag of each trimmer at its own, inside a crossed-out opening too") {
    // As a stair stands in a house: near a wall, with one trimmer at either end of it.
    Shell shell = plain_shell();
    Floor floor;
    floor.name = "E", floor.from = "A", floor.to = "C";
    floor.level = Length::mm(560), floor.spacing = Length::mm(600), floor.bearing = Length::mm(80);
    floor.joist = {Length::mm(100), Length::mm(180)};
    floor.openings = {{"stair", Length::mm(200), Length::mm(300), Length::mm(900), Length::mm(2100)}};
    shell.floors = {floor};
    const LaidShell made = laid(shell);
    REQUIRE_FALSE(made.layout.timbers.empty());
    const auto sheets = shell_drawings(made.shell, made.layout, made.bodies, full_options());
    CHECK(all_clashes(sheets) == "");
    std::map<std::string, Text> tags; // the first time, in the drawing; then in the table
    std::vector<Path> leaders;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items) {
            if (sheet.chapter != "Floors") continue;
            if (const Text *text = std::get_if<Text>(&item); text && text->words.starts_with("E-"))
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

TEST_CASE("the drawings name every log: its wall's elevation, its round's plan, its tag") {
    const LaidShell shell = demo("ell-house");
    const Book book = whole_book(shell, full_options(), 0);
    const auto walls = words_on(book.sheets, "Walls"), rounds = words_on(book.sheets, "Rounds"),
               tags = words_on(book.sheets, "Tags"), floors = words_on(book.sheets, "Floors");
    std::string listed; // logs too small for their tag in an elevation are listed beside it
    for (const std::string &words : walls)
        listed += words + ",";
    for (const Piece &piece : shell.layout.pieces) {
        INFO(piece.tag);
        if (piece.timber) {
            CHECK(floors.contains(piece.tag));
            CHECK(tags.contains(piece.tag));
            continue;
        }
        CHECK(listed.find(piece.tag) != std::string::npos);
        CHECK((rounds.contains("\u2190 " + piece.tag) || rounds.contains(piece.tag + " \u2192")));
        CHECK(tags.contains(piece.tag));
    }
}

TEST_CASE("the book of a house is sound in the eyes of independent readers") {
    const LaidShell shell = demo("one-room");
    const Book book = whole_book(shell, full_options());
    const std::string pdf = write_pdf(book);
    CHECK(run_on(pdf, "qpdf --check %").code == 0);
    const Ran text = run_on(pdf, "pdftotext -layout % -");
    REQUIRE(text.code == 0);
    for (const Piece &piece : shell.layout.pieces)
        CHECK(text.out.find(piece.tag) != std::string::npos);
    const int pages = static_cast<int>(book.sheets.size());
    CHECK(text.out.find("1 / " + std::to_string(pages)) != std::string::npos);
    CHECK(count_of(text.out, " / " + std::to_string(pages)) >= pages);
    const Ran fonts = run_on(pdf, "pdffonts %");
    CHECK(count_of(fonts.out, "yes yes yes") == count_of(fonts.out, "DejaVu")); // embedded, subset, Unicode
    CHECK(count_of(fonts.out, "DejaVu") >= 2);
    const Ran info = run_on(pdf, "pdfinfo %");
    CHECK(info.out.find("Title:           " + shell.shell.name) != std::string::npos);
    CHECK(info.out.find("Pages:           " + std::to_string(pages)) != std::string::npos);
    const Ran objects =
        run_on(pdf, "qpdf --qdf --object-streams=disable % - | grep -a -c -E '/Lang|/Outlines'");
    CHECK(std::stoi(objects.out) >= 2);
}

TEST_CASE("every sheet is well-formed as SVG too") {
    for (const Sheet &sheet : whole_book(demo("one-room"), full_options(), 3).sheets) {
        const Ran ran = run_on(write_svg(sheet), "xmllint --noout %", ".svg");
        INFO(sheet.title + ran.out);
        REQUIRE(ran.code == 0);
    }
}

// Nothing can be told by colour alone where there is no colour: every pixel is grey.
TEST_CASE("without its picture a book has no colour at all") {
    const std::string pdf = write_pdf(whole_book(demo("one-room"), full_options(), 3));
    const Ran ran = run_on(pdf, "pdftoppm -r 30 % | tail -c +1 | python3 -c \""
                                "import sys,re\n"
                                "d=sys.stdin.buffer.read(); at=0; pages=0; bad=0\n"
                                "while at<len(d):\n"
                                "    m=re.match(rb'P6\\s+(\\d+) (\\d+)\\s+255\\s',d[at:at+40])\n"
                                "    n=3*int(m[1])*int(m[2]); p=d[at+m.end():at+m.end()+n]\n"
                                "    bad+=sum(a!=b or b!=c for a,b,c in zip(p[0::3],p[1::3],p[2::3]))\n"
                                "    at+=m.end()+n; pages+=1\n"
                                "print(pages,bad)\"");
    INFO(ran.out);
    std::smatch found;
    REQUIRE(std::regex_search(ran.out, found, std::regex(R"((\d+) (\d+))")));
    CHECK(std::stoi(found[1]) > 20);
    CHECK(found[2] == "0");
}

TEST_CASE("the cut sheets of a house of 160 pieces are small: 15 kB a sheet at the median") {
    const LaidShell shell = demo("ell-house");
    std::vector<std::size_t> sizes;
    for (const auto m : shell.layout.models.indices()) {
        if (m.at() % 5 != 0) continue;
        const auto sheets =
            cut_sheet(shell.shell, shell.layout, shell.layout.models[m], shell.bodies[m], full_options());
        Book once, twice;
        once.created = twice.created = 0;
        once.sheets = {sheets[0]};
        twice.sheets = {sheets[0], sheets[0]};
        sizes.push_back(write_pdf(twice).size() - write_pdf(once).size()); // fonts are in a book but once
    }
    std::sort(sizes.begin(), sizes.end());
    CHECK(sizes[sizes.size() / 2] < 15 * 1024);
    Book all;
    all.created = 0;
    all.sheets = cut_sheets(shell.shell, shell.layout, shell.bodies, full_options());
    CHECK(write_pdf(all).size() / all.sheets.size() < 15 * 1024);
}
