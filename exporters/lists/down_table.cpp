#include "exporters/lists/down_table.h"

#include "exporters/lists/found_words.h"
#include "exporters/lists/list_cells.h"
#include "exporters/lists/progress_words.h"
#include "kernel/layout/piece_places.h"

#include <algorithm>

namespace roundlay {

namespace {

using Row = std::vector<Entry>;

std::vector<std::string> peg_names(const Layout &layout, const std::vector<Index<Peg>> &pegs) {
    std::vector<std::string> names;
    for (const Index<Peg> peg : pegs)
        names.push_back(layout.pegs[peg].name);
    return names;
}

std::vector<std::string> tags(const Layout &layout, const std::vector<Index<Piece>> &pieces) {
    std::vector<std::string> all;
    for (const Index<Piece> piece : pieces)
        all.push_back(layout.pieces[piece].tag);
    return all;
}

std::vector<Column> piece_weight_columns(const CutList &list) {
    const Voice &voice = list.voice;
    const std::string to = voice.say("to");
    return weight_columns(list, "estimated_weight", {voice.say("kg from"), to, voice.say("lb from"), to});
}

const PieceRow &row_of(const CutList &list, const Layout &layout, Index<Piece> piece) {
    return *std::ranges::find(list.pieces, layout.pieces[piece].tag, &PieceRow::tag);
}

/// A mended log hangs in its slings with the new wood that was put into it: no figure where one is not known,
/// nor of the new wood by itself.
void add_lift(const CutList &list, const Layout &layout, Index<Piece> log, Row &row) {
    if (layout.pieces[log].mends) return add_weights(list, 0, 0, row);
    double low = 0, high = 0;
    bool known = true;
    const auto add = [&](Index<Piece> piece) {
        const Stick &stick = row_of(list, layout, piece).stick;
        known = known && stick.high_kg > 0;
        low += stick.low_kg, high += stick.high_kg;
    };
    add(log);
    for (const Index<Piece> comes : new_wood_in(layout.pieces, log))
        add(comes);
    add_weights(list, known ? low : 0, known ? high : 0, row);
}

std::string weight_note(const CutList &list, const Layout &layout, Index<Piece> piece) {
    if (const auto log = layout.pieces[piece].mends)
        return list.voice.say("lifted with %1, whose weight here is that of both", layout.pieces[*log].tag);
    return row_of(list, layout, piece).stick.weight_note;
}

void add_row(Table &table, const Layout &layout, Index<Piece> piece, Row row) {
    if (layout.pieces[piece].mends) table.in_others.push_back(table.rows.size());
    table.rows.push_back(std::move(row));
}

std::vector<Column> down_columns(const CutList &list) {
    const Voice &voice = list.voice;
    std::vector<Column> columns{{"step", voice.say("no.")},
                                {"tag", voice.say("tag")},
                                {"wall", ""},
                                {"round", ""},
                                {"pegs_to_draw", voice.say("pegs")},
                                {"pegs", ""},
                                {"free_after", voice.say("free after")},
                                {"free_after_mm", ""}};
    append(columns, piece_weight_columns(list));
    append(columns, {{"held_by_pegs_alone", voice.say("then held by pegs alone")}});
    append(columns, turn_columns(list, Deed::down));
    append(columns, {{"down", ""}});
    append(columns, found_columns(list));
    append(columns, {{"weight_note", ""}});
    return columns;
}

Row down_row(const CutList &list, const Layout &layout, const Site &site, const DownStep &step,
             std::size_t number_of_step) {
    const PieceRow &piece = row_of(list, layout, step.piece);
    Row row = {number(static_cast<double>(number_of_step), 0),
               piece.tag,
               piece.wall,
               number(piece.round, 0),
               number(static_cast<double>(step.pegs.size()), 0),
               peg_names(layout, step.pegs),
               said_up(list, step.rise),
               number(step.rise, mm_decimals)};
    add_lift(list, layout, step.piece, row);
    append(row, {tags(layout, step.loose)});
    append(row, turn_cells(list, layout, site, Deed::down, step.piece));
    append(row, {tick_words(site.ticked.tick(step.piece, Deed::down), list.voice)});
    append(row, found_cells(piece));
    append(row, {weight_note(list, layout, step.piece)});
    return row;
}

std::vector<Column> raising_columns(const CutList &list) {
    const Voice &voice = list.voice;
    std::vector<Column> columns{{"raise", voice.say("raise")},
                                {"tag", voice.say("tag")},
                                {"wall", ""},
                                {"round", ""},
                                {"laid_on", voice.say("laid on")},
                                {"pegs_to_drive", voice.say("pegs")},
                                {"pegs", ""}};
    append(columns, piece_weight_columns(list));
    append(columns, turn_columns(list, Deed::up));
    append(columns, {{"cut", ""}, {"checked", ""}, {"up", ""}, {"pegged", voice.say("pegged")}});
    append(columns, found_columns(list));
    append(columns, {{"weight_note", ""}});
    return columns;
}

Row raising_row(const CutList &list, const Layout &layout, const Site &site, const UpStep &step) {
    const PieceRow &piece = row_of(list, layout, step.piece);
    Row row = {number(piece.raise, 0),      piece.tag,   piece.wall,
               number(piece.round, 0),      piece.below, number(static_cast<double>(step.pegs.size()), 0),
               peg_names(layout, step.pegs)};
    add_lift(list, layout, step.piece, row);
    append(row, turn_cells(list, layout, site, Deed::up, step.piece));
    for (const Deed deed : {Deed::cut, Deed::checked, Deed::up, Deed::pegged})
        append(row, {tick_words(site.ticked.tick(step.piece, deed), list.voice)});
    append(row, found_cells(piece));
    append(row, {weight_note(list, layout, step.piece)});
    return row;
}

} // namespace

Table down_table(const CutList &list, const Layout &layout, const Site &site,
                 const std::vector<DownStep> &steps) {
    Table table{down_columns(list), {}};
    for (const DownStep &step : steps)
        if (!site.ticked.is_gone(step.piece))
            add_row(table, layout, step.piece, down_row(list, layout, site, step, table.rows.size() + 1));
    return table;
}

Table raising_table(const CutList &list, const Layout &layout, const Site &site) {
    Table table{raising_columns(list), {}};
    for (const UpStep &step : raising(layout))
        add_row(table, layout, step.piece, raising_row(list, layout, site, step));
    return table;
}

} // namespace roundlay
