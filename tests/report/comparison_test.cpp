// Two states of a house side by side on paper.
#include "exporters/report/comparison.h"
#include "tests/report/found_house.h"
#include "tests/support/sheet_words.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <map>

using namespace roundlay;
using namespace roundlay::test;
using namespace roundlay::sheets;

TEST_CASE("Each log that differs stands on its wall with the letter of its change") {
    const FoundHouse before = old_house("as first built"), after = old_house("as drawn");
    const auto pieces = compared(before.laid.layout, after.laid.layout);
    for (const Language language : {Language::english, Language::french}) {
        const bool english = language == Language::english;
        SheetOptions options = full_options(Paper::letter);
        options.fields.language = language;
        const auto sheets =
            comparison_sheets({before.laid.shell, before.laid.layout, before.laid.bodies, options},
                              {after.laid.shell, after.laid.layout, after.laid.bodies, options}, pieces);
        CHECK(all_clashes(sheets) == "");
        std::string words = words_of(sheets);
        std::ranges::replace(words, '\n', ' '); // a letter may stand in the line after its tag
        std::map<PieceChange, int> told;
        for (const ComparedPiece &piece : pieces) {
            const Layout &layout = piece.after ? after.laid.layout : before.laid.layout;
            const Piece &p = layout.pieces[piece.after ? *piece.after : *piece.before];
            if (p.timber) continue;
            ++told[piece.what];
            const std::map<PieceChange, std::string> letters = {{PieceChange::added, " N"},
                                                                {PieceChange::gone, english ? " G" : " D"},
                                                                {PieceChange::longer, " +"},
                                                                {PieceChange::shorter, " -"},
                                                                {PieceChange::recut, english ? " C" : " T"}};
            if (const auto letter = letters.find(piece.what); letter != letters.end())
                CHECK_THAT(words, ContainsSubstring(p.tag + letter->second));
        }
        for (const ComparedPiece &piece : pieces) // each in the state that has it, or in both
            for (const auto &[layout, index] :
                 {std::pair(&before.laid.layout, piece.before), std::pair(&after.laid.layout, piece.after)})
                if (index && is_log(layout->pieces[*index]))
                    CHECK_THAT(words, ContainsSubstring(layout->pieces[*index].tag));
        for (const char *plan : {"as first built, ", "as drawn, "}) // the captions of both plans, with scales
            CHECK_THAT(words, ContainsSubstring(plan));
        CHECK(told[PieceChange::gone] > 10);    // the partition
        CHECK(told[PieceChange::shorter] > 10); // walls that were sawn off
        CHECK(told[PieceChange::added] > 0);    // beside the late window
    }
}

TEST_CASE(
    "Each wall stands on one page in both states, to one scale, with gone wood before and new wood after") {
    const FoundHouse before = old_house("as found"), after = old_house("as it shall stand");
    const auto pieces = compared(before.laid.layout, after.laid.layout);
    const SheetOptions options = full_options(Paper::a4);
    const auto sheets =
        comparison_sheets({before.laid.shell, before.laid.layout, before.laid.bodies, options},
                          {after.laid.shell, after.laid.layout, after.laid.bodies, options}, pieces);
    CHECK(all_clashes(sheets) == "");
    for (const WallPlace &wall : after.laid.layout.walls) {
        INFO(wall.name);
        std::vector<std::string> captions;
        std::size_t pages = 0;
        for (const Sheet &sheet : sheets) {
            const std::size_t already = captions.size();
            for (const Item &item : sheet.items)
                if (const Text *text = std::get_if<Text>(&item);
                    text && text->role == Role::caption && text->words.starts_with("Wall " + wall.name))
                    captions.push_back(text->words);
            pages += captions.size() > already ? 1 : 0;
        }
        REQUIRE(captions.size() == 2);
        CHECK(pages == 1);
        CHECK_THAT(captions[0], ContainsSubstring("before, as found"));
        CHECK_THAT(captions[1], ContainsSubstring("after, as it shall stand"));
        CHECK(captions[0].substr(0, captions[0].find(": ")) == captions[1].substr(0, captions[1].find(": ")));
    }
    const std::string words = words_of(sheets);
    std::size_t replaced = 0;
    for (const ComparedPiece &piece : pieces) {
        if (!piece.new_wood || after.laid.layout.pieces[*piece.after].timber) continue;
        ++replaced;
        CHECK_THAT(words, ContainsSubstring("G\n") && ContainsSubstring("N\n"));
    }
    CHECK(replaced >= 1); // the sill of wall A
}

TEST_CASE("A log that moved tells on its wall, before and after, where it goes to and comes from") {
    Shell first = plain_shell(), second = plain_shell();
    first.state = "once", second.state = "now";
    const LaidShell was = laid(first), is = laid(second);
    std::vector<ComparedPiece> pieces;
    const auto at = [](const Layout &layout, const char *tag) {
        for (const auto i : layout.pieces.indices())
            if (layout.pieces[i].tag == tag) return i;
        throw std::logic_error(tag);
    };
    pieces.push_back(
        {.what = PieceChange::moved, .before = at(was.layout, "A-02-1"), .after = at(is.layout, "A-04-1")});
    const SheetOptions options = full_options(Paper::a4);
    const std::string words = words_of(comparison_sheets({was.shell, was.layout, was.bodies, options},
                                                         {is.shell, is.layout, is.bodies, options}, pieces));
    CHECK_THAT(words, ContainsSubstring("\nA-02-1 V to A-04-1\n"));
    CHECK_THAT(words, ContainsSubstring("\nA-04-1 V from A-02-1\n"));
    CHECK_THAT(words, ContainsSubstring("from wall A, round 2 to wall A, round 4"));
}
