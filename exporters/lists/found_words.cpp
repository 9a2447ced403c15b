#include "exporters/lists/found_words.h"

#include <algorithm>

namespace roundlay {

namespace {

std::string joined(const std::vector<std::string> &parts, const char *between) {
    std::string text;
    for (const std::string &part : parts)
        text += (text.empty() ? "" : between) + part;
    return text;
}

std::string peg_words(const PegCount &pegs, const Voice &voice) {
    std::vector<std::string> parts;
    if (pegs.found > 0) parts.push_back(voice.say("%1 found", pegs.found));
    if (pegs.missing > 0) parts.push_back(voice.say("%1 missing", pegs.missing));
    if (pegs.broken > 0) parts.push_back(voice.say("%1 broken", pegs.broken));
    if (pegs.sawn > 0) parts.push_back(voice.say("%1 sawn", pegs.sawn));
    return joined(parts, ", ");
}

} // namespace

Indexed<FoundWords, Piece> found_words(const Record &record, const Layout &layout, const Voice &voice) {
    Indexed<FoundWords, Piece> all(layout.pieces.size());
    const Indexed<AsFound, Piece> found = as_found(record, layout);
    for (const Index<Piece> piece : layout.pieces.indices()) {
        for (const Said &phrase : found[piece].phrases)
            all[piece].phrases.push_back(voice.words(phrase));
        all[piece].pegs = peg_words(found[piece].pegs, voice);
    }
    return all;
}

void tell_found(CutList &list, const Record &record, const Layout &layout) {
    const Indexed<FoundWords, Piece> found = found_words(record, layout, list.voice);
    for (PieceRow &row : list.pieces)
        for (const Index<Piece> piece : layout.pieces.indices())
            if (layout.pieces[piece].tag == row.tag) {
                row.as_found = joined(found[piece].phrases, "; ");
                row.pegs_found = found[piece].pegs;
            }
}

std::vector<Column> found_columns(const CutList &list) {
    const Voice &voice = list.voice;
    const bool pegs =
        std::ranges::any_of(list.pieces, [](const PieceRow &row) { return !row.pegs_found.empty(); });
    const bool wood =
        std::ranges::any_of(list.pieces, [](const PieceRow &row) { return !row.as_found.empty(); });
    return {{"pegs_found", pegs ? voice.say("pegs as found") : ""},
            {"as_found", wood ? voice.say("as found") : ""}};
}

std::vector<Entry> found_cells(const PieceRow &piece) {
    return {piece.pegs_found, piece.as_found};
}

} // namespace roundlay
