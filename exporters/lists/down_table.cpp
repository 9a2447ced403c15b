#include "exporters/lists/down_table.h"

#include "exporters/lists/list_cells.h"
#include "kernel/measure/measure.h"

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

/// The units that the shell does not use stay off the terminal.
std::vector<Column> weight_columns(const CutList &list) {
    const Voice &voice = list.voice;
    const bool metric = list.units == UnitSystem::metric;
    return {{"estimated_weight_low_kg", metric ? voice.say("kg from") : ""},
            {"estimated_weight_high_kg", metric ? voice.say("to") : ""},
            {"estimated_weight_low_lb", metric ? "" : voice.say("lb from")},
            {"estimated_weight_high_lb", metric ? "" : voice.say("to")}};
}

void append(std::vector<Column> &columns, const std::vector<Column> &more) {
    columns.insert(columns.end(), more.begin(), more.end());
}

const PieceRow &row_of(const CutList &list, const Layout &layout, Index<Piece> piece) {
    return *std::ranges::find(list.pieces, layout.pieces[piece].tag, &PieceRow::tag);
}

} // namespace

Table down_table(const CutList &list, const Layout &layout, const std::vector<DownStep> &steps) {
    const Voice &voice = list.voice;
    Table table{{{"step", voice.say("no.")},
                 {"tag", voice.say("tag")},
                 {"wall", ""},
                 {"round", ""},
                 {"pegs_to_draw", voice.say("pegs")},
                 {"pegs", ""},
                 {"free_after", voice.say("free after")},
                 {"free_after_mm", ""}},
                {}};
    append(table.columns, weight_columns(list));
    append(table.columns,
           {{"held_by_pegs_alone", voice.say("then held by pegs alone")}, {"weight_note", ""}});
    for (const DownStep &step : steps) {
        const PieceRow &piece = row_of(list, layout, step.piece);
        Row row = {number(static_cast<double>(table.rows.size() + 1), 0),
                   piece.tag,
                   piece.wall,
                   number(piece.round, 0),
                   number(static_cast<double>(step.pegs.size()), 0),
                   peg_names(layout, step.pegs),
                   said_up(list, step.rise),
                   number(step.rise, mm_decimals)};
        add_weights(list, piece.stick.low_kg, piece.stick.high_kg, row);
        row.emplace_back(tags(layout, step.loose));
        row.emplace_back(list.weight_note);
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table raising_table(const CutList &list, const Layout &layout) {
    const Voice &voice = list.voice;
    Table table{{{"raise", voice.say("raise")},
                 {"tag", voice.say("tag")},
                 {"wall", ""},
                 {"round", ""},
                 {"laid_on", voice.say("laid on")},
                 {"pegs_to_drive", voice.say("pegs")},
                 {"pegs", ""}},
                {}};
    append(table.columns, weight_columns(list));
    append(table.columns, {{"up", ""}, {"pegged", ""}, {"weight_note", ""}});
    for (const UpStep &step : raising(layout)) {
        const PieceRow &piece = row_of(list, layout, step.piece);
        Row row = {number(piece.raise, 0),      piece.tag,   piece.wall,
                   number(piece.round, 0),      piece.below, number(static_cast<double>(step.pegs.size()), 0),
                   peg_names(layout, step.pegs)};
        add_weights(list, piece.stick.low_kg, piece.stick.high_kg, row);
        row.insert(row.end(), 2, std::string()); // to be ticked
        row.emplace_back(list.weight_note);
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace roundlay
