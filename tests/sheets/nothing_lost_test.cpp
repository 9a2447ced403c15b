// What is too large for a sheet goes on over the next ones: nothing that a person needs is left out.

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/elevation/section.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/tag/tags.h"
#include "kernel/layout/lay_out.h"
#include "kernel/shell/shapes.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/sets.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <set>
#include <sstream>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

/// All words of tables, one after the other as they stand on the sheets.
std::multiset<std::string> cell_words(const std::vector<Sheet> &sheets) {
    std::multiset<std::string> all;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item); text && text->role == Role::cell) {
                std::istringstream words(text->words);
                for (std::string word; words >> word;)
                    all.insert(word);
            }
    return all;
}

std::vector<Sheet> of_chapter(std::vector<Sheet> sheets, const std::string &chapter) {
    std::erase_if(sheets, [&](const Sheet &s) { return s.chapter != chapter; });
    return sheets;
}

std::string numbered(const std::string &word, int i) {
    return word + std::to_string(i);
}

/// Holes in wall A whose names stand in the table of bores only.
LaidShell with_holes(int count) {
    Shell shell = plain_shell();
    shell.pegs.wanted = false;
    for (int i = 0; i < count; ++i) {
        StatedBore hole;
        hole.use = BoreUse::rod, hole.wall = "A", hole.diameter = Length::mm(16);
        hole.name = numbered("anchor", i);
        hole.from_left = Length::mm(600 + 30 * i);
        shell.bores.push_back(hole);
    }
    return laid(shell);
}

constexpr Paper papers[] = {Paper::a4, Paper::letter, Paper::a3, Paper::tabloid, Paper::a2};

} // namespace

TEST_CASE("tables of bores that are higher than a sheet go on") {
    const LaidShell shell = with_holes(120);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options(paper));
        const auto walls = cell_words(of_chapter(sheets, "Walls")), plan = cell_words(of_chapter(sheets, ""));
        std::string lost;
        for (int i = 0; i < 120; ++i)
            for (const auto *words : {&walls, &plan})
                if (!words->contains(numbered("anchor", i))) lost += numbered(" anchor", i);
        CHECK(lost == "");
        CHECK(all_clashes(sheets) == "");
        CHECK_FALSE(cell_words(sheets).contains("fit")); // "does not fit this paper": all is drawn
    }
}

TEST_CASE("the timbers of a floor are all in its table, on any paper") {
    Shell shell = plain_shell();
    shell.floors = {joists("G", "A", "C", 540, {Length::mm(40), Length::mm(100)}, 80)};
    shell.floors[0].spacing = Length::mm(60);
    const LaidShell made = laid(shell);
    REQUIRE(made.layout.timbers.size() > 60);
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const auto sheets =
            of_chapter(shell_drawings(made.shell, made.layout, made.bodies, full_options(paper)), "Floors");
        const auto words = cell_words(sheets);
        std::string lost;
        for (const Timber &t : made.layout.timbers) {
            const std::string &tag = made.layout.pieces[t.piece].tag;
            if (!words.contains(tag)) lost += " " + tag;
        }
        CHECK(lost == "");
        CHECK(all_clashes(sheets) == "");
    }
}

TEST_CASE("a book says all its facts and cautions, however long") {
    const LaidShell shell = laid(plain_shell());
    BookWords words;
    std::string longest;
    for (int i = 0; i < 4000; ++i)
        longest += numbered("word", i) + " ";
    for (int i = 0; i < 90; ++i) {
        words.facts.emplace_back(numbered("fact", i), numbered("value", i));
        words.cautions.push_back(numbered("caution", i));
    }
    words.cautions.push_back(longest);
    for (const Paper paper : papers) {
        const Book book = bound_book(shell.shell, full_options(paper), words, {});
        const auto found = cell_words(book.sheets);
        std::string lost;
        for (int i = 0; i < 90; ++i)
            for (const char *const word : {"fact", "value", "caution"})
                if (!found.contains(numbered(word, i))) lost += numbered(std::string(" ") + word, i);
        for (int i = 0; i < 4000; ++i)
            if (!found.contains(numbered("word", i))) lost += numbered(" word", i);
        CHECK(lost == "");
        CHECK(all_clashes(book.sheets) == "");
        std::string said; // the legend is no table
        for (const Sheet &sheet : book.sheets)
            for (const Item &item : sheet.items)
                if (const Text *text = std::get_if<Text>(&item)) said += text->words + " ";
        for (const char *const meaning : {"Edge that is seen", "Foundation; emphasis", "Running dimension",
                                          "End grain", "Log cut through: it goes on toward you"})
            CHECK(said.find(meaning) != std::string::npos);
    }
}

TEST_CASE("the list of templates names every piece, however many are alike") {
    Shell tall = plain_shell();
    tall.walls = cross_plan(Length::mm(9000), Length::mm(9000), Length::mm(3000));
    tall.rounds.count = 120;
    const LaidShell shell{tall, lay_out(tall), {}};
    REQUIRE(shell.layout.pieces.size() >= 1200);
    const auto sheets = template_sheets(shell.shell, shell.layout, full_options());
    const auto words = cell_words(sheets);
    std::string lost;
    const auto has_joint = [](const Piece &piece) {
        return std::any_of(piece.cuts.begin(), piece.cuts.end(),
                           [](const Cut &cut) { return std::holds_alternative<SeamCut>(cut); });
    };
    for (const Piece &piece : shell.layout.pieces)
        if (has_joint(piece) && !words.contains(piece.tag) && !words.contains(piece.tag + ","))
            lost += " " + piece.tag;
    CHECK(lost == "");
}

TEST_CASE("an opening too small for its name and size on paper has both beside the drawing") {
    Shell shell = plain_shell();
    shell.pegs.wanted = false;
    for (int i = 0; i < 6; ++i) {
        Opening narrow = window("A", 700 + 560 * i, 300, 181 + i, 400 + i);
        narrow.name = numbered("lookout", i);
        shell.openings.push_back(narrow);
    }
    const LaidShell made = laid(shell);
    REQUIRE_FALSE(made.layout.pieces.empty());
    for (const Paper paper : papers) {
        const auto sheets =
            of_chapter(shell_drawings(made.shell, made.layout, made.bodies, full_options(paper)), "Walls");
        std::string said;
        for (const Sheet &sheet : sheets)
            for (const Item &item : sheet.items)
                if (const Text *text = std::get_if<Text>(&item)) said += text->words + " ";
        std::string lost;
        for (int i = 0; i < 6; ++i)
            for (const std::string &word :
                 {numbered("lookout", i), std::to_string(181 + i), std::to_string(400 + i)})
                if (said.find(word) == std::string::npos) lost += " " + word;
        for (const SectionPlace &place : section_places(made.shell, made.layout, Index<WallPlace>(0)))
            if (said.find(place.name) == std::string::npos) lost += " section " + place.name;
        CHECK(lost == "");
        CHECK(all_clashes(sheets) == "");
    }
}

TEST_CASE("every drawing of a very large house is there on the smallest paper") {
    Shell large = plain_shell();
    large.walls = rectangle_plan(Length::mm(160000), Length::mm(90000));
    large.rounds.count = 2;
    const LaidShell shell = laid(large);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    const auto sheets = shell_drawings(shell.shell, shell.layout, shell.bodies, full_options(Paper::a4));
    CHECK(all_clashes(sheets) == "");
    std::set<std::string> kinds;
    for (const Sheet &sheet : sheets)
        kinds.insert(sheet.title.substr(0, sheet.title.find(',')));
    for (const char *const kind :
         {"Foundation and sills", "Wall A", "Wall B", "Wall C", "Wall D", "Sections", "Story poles"}) {
        INFO(kind);
        CHECK(kinds.contains(kind));
    }
    CHECK_FALSE(of_chapter(sheets, "Rounds").empty());
}

TEST_CASE("no word of any table is lost, on any paper, and none runs off it") {
    CHECK(counterexample(60, [&] {
              const PaperSize size =
                  size_of(*rc::gen::elementOf(std::vector<Paper>(std::begin(papers), std::end(papers))));
              Table table;
              table.title = "Table";
              const int columns = *rc::gen::inRange(1, 11), rows = *rc::gen::inRange(1, 200);
              const bool headed = *rc::gen::arbitrary<bool>();
              for (int c = 0; c < columns; ++c)
                  table.columns.push_back({headed ? numbered("Head ", c) : "", Across::left, 60});
              std::multiset<std::string> wanted;
              int word = 0;
              for (int r = 0; r < rows; ++r) {
                  table.rows.emplace_back();
                  const int words = *rc::gen::weightedElement<int>({{20, 1}, {5, 12}, {1, 700}});
                  for (int c = 0; c < columns; ++c) {
                      std::string cell;
                      for (int i = 0; i < words; ++i) {
                          wanted.insert(numbered("w", ++word));
                          cell += numbered("w", word) + " ";
                      }
                      table.rows.back().push_back(cell);
                  }
              }
              std::vector<Page> pages{empty_page(size)};
              put_on(pages, size, table);
              const auto sheets = framed({pages, {}, {"Table", "table", ""}}, size, {}, "");
              RC_ASSERT(all_clashes(sheets) == "");
              auto found = cell_words(sheets);
              for (int c = 0; headed && c < columns; ++c)
                  found.erase("Head"), found.erase(std::to_string(c));
              RC_ASSERT(found == wanted);
          }) == "");
}
