#include "exporters/sheets/bench/piece_rows.h"

#include "exporters/sheets/cut_sheet/snap.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/tag/tags.h"

#include <algorithm>
#include <functional>
#include <sstream>

namespace roundlay::sheets {
namespace {

constexpr double number_wide = 30, places_wide = 44, words_wide = 70;

/// A column and its cell for each piece; it is left out where all cells are empty.
struct Cells {
    Column column;
    std::vector<std::string> by_piece;
};

void add(Table &table, Cells cells) {
    if (std::ranges::all_of(cells.by_piece, [](const std::string &cell) { return cell.empty(); })) return;
    table.columns.push_back(std::move(cells.column));
    for (std::size_t i = 0; i < table.rows.size(); ++i)
        table.rows[i].push_back(cells.by_piece[i].empty() ? "-" : cells.by_piece[i]);
}

std::vector<std::string> for_each_piece(const Draft &draft, const Family &family,
                                        const std::function<std::string(const Piece &, Index<Piece>)> &cell) {
    std::vector<std::string> all;
    for (const Index<Piece> i : family.pieces)
        all.push_back(cell(draft.layout.pieces[i], i));
    return all;
}

std::string weight_cell(const Draft &draft, const Piece &piece, const Words &words) {
    const auto weight =
        draft.options.weight ? draft.options.weight(piece, draft.bodies[piece.model]) : std::nullopt;
    return weight ? words.weights(weight->low_kg, weight->high_kg) : "";
}

/// What must not be lost for being on a row: a note of the person's, warnings, what was found.
std::string told_of(const Draft &draft, const Piece &piece, Index<Piece> index) {
    std::string all = piece.note;
    const auto add = [&](const std::string &words) {
        if (!words.empty()) all += (all.empty() ? "" : "; ") + words;
    };
    if (draft.options.warnings.holds(piece.model))
        for (const std::string &warning : draft.options.warnings[piece.model])
            add(warning);
    if (const FoundNote *found = draft.options.found_of(index)) add(found->words());
    return all;
}

/// Of the longest word in each column: narrower, words would be broken.
double least_width(const Table &table) {
    constexpr double beside = 2.5;
    double all = 0;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        double longest = 0;
        const auto measure = [&](const std::string &words, bool bold) {
            std::istringstream each(words);
            for (std::string word; each >> word;)
                longest = std::max(longest, text_width(word, table.height, bold));
        };
        measure(table.columns[c].heading, true);
        for (const auto &row : table.rows)
            measure(row.at(c), false);
        all += longest + beside;
    }
    return all;
}

std::string butt_cell(const Piece &piece, const Words &words) {
    return piece.butt_at_datum ? words.say("datum") : words.say("far");
}

} // namespace

Table piece_rows(const Draft &draft, const Family &family, const Words &words) {
    Table table = table_called(words, words.say("Pieces"));
    table.columns = {flush_left(words.say("Tag"), 34)};
    for (const Index<Piece> i : family.pieces)
        table.rows.push_back({draft.layout.pieces[i].tag});
    for (std::size_t l = 0; l < family.letters.letters.size(); ++l)
        add(table, {flush_right(family.letters.letters[l], number_wide), family.letters.columns[l]});
    add(table, {flush_left(words.say("Opening"), number_wide), family.openings});
    add(table, {flush_left(words.say("Pockets hold"), places_wide), family.holds});
    for (const auto &[kind, places] : family.bores)
        add(table, {flush_left(words.say("Bore at: %1", kind), places_wide), places});
    const auto cells = [&](const std::function<std::string(const Piece &, Index<Piece>)> &cell) {
        return for_each_piece(draft, family, cell);
    };
    add(table, {flush_left(words.say("Butt"), 14),
                cells([&](const Piece &p, Index<Piece>) { return butt_cell(p, words); })});
    add(table, {flush_right(words.say("LL on the pole"), 24), cells([&](const Piece &p, Index<Piece>) {
                    return line_on_pole(features_of(p, words.system()), p, words);
                })});
    add(table, {flush_right(words.say("Raise"), 14),
                cells([&](const Piece &p, Index<Piece>) { return std::to_string(p.raise); })});
    add(table, {flush_left(words.say("Code"), 20),
                cells([&](const Piece &p, Index<Piece>) { return piece_hash(p); })});
    add(table, {flush_left(words.say("Weight, estimated: no lift plan, see the notes"), 34),
                cells([&](const Piece &p, Index<Piece>) { return weight_cell(draft, p, words); })});
    add(table, {flush_left(words.say("Note"), words_wide),
                cells([&](const Piece &p, Index<Piece> i) { return told_of(draft, p, i); })});
    return table;
}

std::vector<Table> in_parts(const Table &table, double width) {
    if (table.columns.size() <= 2 || least_width(table) <= width) return {table};
    const std::size_t middle = (table.columns.size() + 1) / 2;
    std::vector<Table> all;
    const auto add_columns = [&](std::size_t from, std::size_t to) {
        Table part = table;
        const auto keep = [&](auto &cells) {
            std::size_t i = 0;
            std::erase_if(cells, [&](const auto &) { return i++ > 0 && (i - 1 < from || i - 1 >= to); });
        };
        keep(part.columns);
        for (auto &row : part.rows)
            keep(row);
        for (Table &each : in_parts(part, width))
            all.push_back(std::move(each));
    };
    add_columns(1, middle);
    add_columns(middle, table.columns.size());
    return all;
}

Table work_rows(const Family &family, const Words &words) {
    Table table = table_called(words, words.say("Snap, then cut, in this order"));
    table.columns = {flush_left(words.say("No."), 10), flush_left(words.say("What"), 110)};
    for (const BenchRow &row : family.rows)
        table.rows.push_back({row.mark, row.words});
    return table;
}

} // namespace roundlay::sheets
