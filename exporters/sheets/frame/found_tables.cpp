#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/frame/tables.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

bool says(const SheetOptions &options, bool (*what)(const FoundNote &)) {
    return std::ranges::any_of(options.found, what);
}
bool has_pegs(const FoundNote &note) {
    return !note.pegs.empty();
}
bool has_phrases(const FoundNote &note) {
    return !note.phrases.empty();
}

constexpr double found_width = 90, pegs_width = 30;

} // namespace

Table found_table(const SheetOptions &options, const Layout &layout, std::span<const Index<Piece>> pieces,
                  const Words &words) {
    Table table = table_called(words, words.say("As found"));
    table.columns = {flush_left(words.say("Tag"), 34), flush_left("", found_width)};
    for (const Index<Piece> piece : pieces) {
        const FoundNote *note = options.found_of(piece);
        if (!note) continue;
        std::string all = note->words();
        if (!note->pegs.empty()) all += (all.empty() ? "" : "; ") + words.say("pegs: %1", note->pegs);
        table.rows.push_back({layout.pieces[piece].tag, all});
    }
    return table;
}

bool has_room_for_notes(PaperSize size) {
    constexpr double list_and_notes = 250; // mm: narrower, and a note stands there word under word
    return inner_area(size).width() >= list_and_notes;
}

void add_found_columns(const SheetOptions &options, const Words &words, bool pegs,
                       std::vector<Column> &columns) {
    if (pegs && says(options, has_pegs))
        columns.push_back(flush_left(words.say("Pegs as found"), pegs_width));
    if (says(options, has_phrases)) columns.push_back(flush_left(words.say("As found"), found_width));
}

void add_found_cells(const SheetOptions &options, Index<Piece> piece, bool pegs,
                     std::vector<std::string> &row) {
    const FoundNote *note = options.found_of(piece);
    if (pegs && says(options, has_pegs)) row.push_back(note ? note->pegs : "");
    if (says(options, has_phrases)) row.push_back(note ? note->words() : "");
}

} // namespace roundlay::sheets
