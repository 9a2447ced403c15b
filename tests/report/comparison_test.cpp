// Two states of a house side by side on paper.
#include "exporters/report/comparison.h"
#include "tests/report/found_house.h"

#include <algorithm>
#include <map>

using namespace roundlay;
using namespace roundlay::test;
using namespace roundlay::sheets;

namespace {

std::string words_of(const std::vector<Sheet> &sheets) {
    std::string all;
    for (const Sheet &sheet : sheets)
        for (const Item &item : sheet.items)
            if (const Text *text = std::get_if<Text>(&item)) all += text->words + "\n";
    return all;
}

} // namespace

TEST_CASE("Each log that differs stands on its wall with the letter of its change") {
    const FoundHouse before = old_house("as first built"), after = old_house("as drawn");
    const auto pieces = compared(before.laid.layout, after.laid.layout);
    for (const Language language : {Language::english, Language::french}) {
        SheetOptions options = full_options(Paper::letter);
        options.fields.language = language;
        const auto sheets =
            comparison_sheets({before.laid.shell, before.laid.layout, before.laid.bodies, options},
                              {after.laid.shell, after.laid.layout, after.laid.bodies, options}, pieces);
        CHECK(all_clashes(sheets) == "");
        const std::string words = words_of(sheets);
        std::map<PieceChange, int> told;
        for (const ComparedPiece &piece : pieces) {
            const Layout &layout = piece.after ? after.laid.layout : before.laid.layout;
            const Piece &p = layout.pieces[piece.after ? *piece.after : *piece.before];
            if (p.timber) continue;
            ++told[piece.what];
            const std::map<PieceChange, std::string> letters = {{PieceChange::added, " N"},
                                                                {PieceChange::gone, " G"},
                                                                {PieceChange::longer, " +"},
                                                                {PieceChange::shorter, " -"},
                                                                {PieceChange::recut, " C"}};
            if (const auto letter = letters.find(piece.what); letter != letters.end())
                CHECK_THAT(words, ContainsSubstring(p.tag + letter->second));
        }
        CHECK(told[PieceChange::gone] > 10);    // the partition
        CHECK(told[PieceChange::shorter] > 10); // walls that were sawn off
        CHECK(told[PieceChange::added] > 0);    // beside the late window
    }
}
