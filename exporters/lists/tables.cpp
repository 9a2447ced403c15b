#include "exporters/lists/tables.h"

#include "exporters/lists/list_cells.h"
#include "kernel/trade/log_rules.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

using Row = std::vector<Entry>;

std::string joined(const std::vector<std::string> &parts) {
    std::string text;
    for (const std::string &part : parts)
        text += (text.empty() ? "" : "; ") + part;
    return text;
}

/// What follows in every table of sticks. The units that the shell does not use stay off the terminal.
void add_stick_columns(const CutList &list, std::vector<Column> &columns) {
    const Voice &voice = list.voice;
    const bool metric = list.units == UnitSystem::metric;
    const std::vector<Column> stick = {
        {"width", voice.say("width")},
        {"height", voice.say("height")},
        {"length", voice.say("length")},
        {"width_mm", ""},
        {"height_mm", ""},
        {"length_mm", ""},
        {"finished_volume_m3", metric ? voice.say("m3") : ""},
        {"finished_volume_ft3", metric ? "" : voice.say("ft3")},
        {"estimated_weight_each_low_kg", metric ? voice.say("each kg from") : ""},
        {"estimated_weight_each_high_kg", metric ? voice.say("to") : ""},
        {"estimated_weight_each_low_lb", metric ? "" : voice.say("each lb from")},
        {"estimated_weight_each_high_lb", metric ? "" : voice.say("to")},
        {"estimated_blank_weight_each_low_kg", ""},
        {"estimated_blank_weight_each_high_kg", metric ? voice.say("blank to") : ""},
        {"estimated_blank_weight_each_low_lb", ""},
        {"estimated_blank_weight_each_high_lb", metric ? "" : voice.say("blank to")},
        {"estimated_round_log_weight_each_low_kg", ""},
        {"estimated_round_log_weight_each_high_kg", metric ? voice.say("log to") : ""},
        {"estimated_round_log_weight_each_low_lb", ""},
        {"estimated_round_log_weight_each_high_lb", metric ? "" : voice.say("log to")},
        {"weight_note", ""},
    };
    columns.insert(columns.end(), stick.begin(), stick.end());
}

void add_stick(const CutList &list, const Stick &stick, Row &row) {
    const Blank &b = stick.blank;
    const Row cells = {
        said(list, b.width),
        said(list, b.height),
        said(list, b.length),
        number(b.width, mm_decimals),
        number(b.height, mm_decimals),
        number(b.length, mm_decimals),
        number(stick.volume / mm3_per_m3, volume_decimals),
        number(stick.volume / mm3_per_ft3, volume_decimals - 1),
    };
    row.insert(row.end(), cells.begin(), cells.end());
    add_weights(list, stick.low_kg, stick.high_kg, row);
    add_weights(list, stick.blank_low_kg, stick.blank_high_kg, row);
    add_weights(list, stick.log_low_kg, stick.log_high_kg, row);
    row.emplace_back(list.weight_note);
}

std::string butt_words(const ModelRow &row, const Voice &voice) {
    const int all = static_cast<int>(row.tags.size());
    if (row.butt_left == all) return voice.say("left");
    if (row.butt_left == 0) return voice.say("right");
    return voice.say("%1 left, %2 right", row.butt_left, all - row.butt_left);
}

} // namespace

Table model_table(const CutList &list) {
    const Voice &voice = list.voice;
    Table table{{{"piece", voice.say("piece")},
                 {"quantity", voice.say("qty")},
                 {"tags", ""},
                 {"kind", voice.say("kind")}},
                {}};
    add_stick_columns(list, table.columns);
    table.columns.push_back({"butt_end", voice.say("butt")});
    table.columns.push_back({"cuts", ""});
    for (const ModelRow &model : list.models) {
        Row row = {model.tags.front(), number(static_cast<double>(model.tags.size()), 0), model.tags,
                   model.stick.kind};
        add_stick(list, model.stick, row);
        row.emplace_back(butt_words(model, voice));
        row.emplace_back(joined(model.stick.cuts));
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table piece_table(const CutList &list) {
    const Voice &voice = list.voice;
    Table table{{{"tag", voice.say("tag")},
                 {"wall", ""},
                 {"round", ""},
                 {"place", ""},
                 {"raise", voice.say("raise")},
                 {"piece", voice.say("piece")},
                 {"kind", voice.say("kind")}},
                {}};
    add_stick_columns(list, table.columns);
    for (const Column &column : std::vector<Column>{{"butt_end", voice.say("butt")},
                                                    {"finish", ""},
                                                    {"fabric", ""},
                                                    {"mark", ""},
                                                    {"bow", ""},
                                                    {"note", ""},
                                                    {"left_end", voice.say("left end")},
                                                    {"right_end", voice.say("right end")},
                                                    {"cuts", ""},
                                                    {"below", ""},
                                                    {"above", ""},
                                                    {"notched_left", ""},
                                                    {"notched_right", ""}})
        table.columns.push_back(column);
    for (const PieceRow &piece : list.pieces) {
        Row row = {piece.tag,
                   piece.wall,
                   number(piece.round, 0),
                   number(piece.number, 0),
                   number(piece.raise, 0),
                   piece.like,
                   piece.stick.kind};
        add_stick(list, piece.stick, row);
        const Row rest = {piece.butt_left ? voice.say("left") : voice.say("right"),
                          piece.finish,
                          piece.fabric,
                          piece.mark,
                          piece.bow > 0 ? said(list, piece.bow) : std::string(),
                          piece.note,
                          piece.left,
                          piece.right,
                          joined(piece.stick.cuts),
                          piece.below,
                          piece.above,
                          piece.at_left,
                          piece.at_right};
        row.insert(row.end(), rest.begin(), rest.end());
        table.rows.push_back(std::move(row));
    }
    return table;
}

std::string peg_words(const CutList &list) {
    return list.voice.say("lengths are rounded up to the next %1; each peg is cut to its own bore, which the "
                          "cut sheets say",
                          in_mm(list.peg_step));
}

Table peg_table(const CutList &list) {
    const Voice &voice = list.voice;
    Table table{{{"quantity", voice.say("qty")},
                 {"diameter", voice.say("diameter")},
                 {"length", voice.say("length")},
                 {"bores_from", voice.say("bores from")},
                 {"bores_to", voice.say("bores to")},
                 {"diameter_mm", ""},
                 {"length_mm", ""},
                 {"bores_from_mm", ""},
                 {"bores_to_mm", ""},
                 {"length_note", ""},
                 {"pegs", voice.say("pegs")}},
                {}};
    for (const PegRow &peg : list.pegs)
        table.rows.push_back({number(static_cast<double>(peg.names.size()), 0), said(list, peg.diameter),
                              said(list, peg.length), said(list, peg.shallowest), said(list, peg.deepest),
                              number(peg.diameter, mm_decimals), number(peg.length, mm_decimals),
                              number(peg.shallowest, mm_decimals), number(peg.deepest, mm_decimals),
                              peg_words(list), peg.names});
    return table;
}

Table order_table(const CutList &list) {
    const Voice &voice = list.voice;
    const bool metric = list.units == UnitSystem::metric;
    Table table{{{"quantity", voice.say("qty")},
                 {"width", voice.say("width")},
                 {"height", voice.say("height")},
                 {"length", voice.say("length")},
                 {"least_round", voice.say("least round")},
                 {"width_mm", ""},
                 {"height_mm", ""},
                 {"length_mm", ""},
                 {"least_round_mm", ""},
                 {"estimated_blank_weight_each_low_kg", ""},
                 {"estimated_blank_weight_each_high_kg", metric ? voice.say("each blank kg to") : ""},
                 {"estimated_blank_weight_each_low_lb", ""},
                 {"estimated_blank_weight_each_high_lb", metric ? "" : voice.say("each blank lb to")},
                 {"estimated_round_log_weight_each_low_kg", ""},
                 {"estimated_round_log_weight_each_high_kg", metric ? voice.say("each log kg to") : ""},
                 {"estimated_round_log_weight_each_low_lb", ""},
                 {"estimated_round_log_weight_each_high_lb", metric ? "" : voice.say("each log lb to")},
                 {"weight_note", ""},
                 {"doyle_board_feet_each", ""},
                 {"scribner_board_feet_each", ""},
                 {"international_quarter_board_feet_each", metric ? "" : voice.say("each Int. 1/4 bd ft")},
                 {"tags", voice.say("for")}},
                {}};
    for (const OrderRow &row : list.order) {
        Row cells{number(static_cast<double>(row.tags.size()), 0),
                  said(list, row.width),
                  said(list, row.height),
                  said(list, row.length),
                  said_up(list, row.least_round),
                  number(row.width, mm_decimals),
                  number(row.height, mm_decimals),
                  number(row.length, mm_decimals),
                  number(up_to(row.least_round, thousandth), mm_decimals)};
        add_weights(list, row.blank_low_kg, row.blank_high_kg, cells);
        add_weights(list, row.log_low_kg, row.log_high_kg, cells);
        cells.emplace_back(list.weight_note);
        const Length round = Length::mm(row.least_round), length = Length::mm(row.length);
        for (const double feet :
             {doyle(round, length), scribner(round, length), international_quarter(round, length)})
            cells.push_back(number(feet, 0));
        cells.emplace_back(row.tags);
        table.rows.push_back(std::move(cells));
    }
    return table;
}

} // namespace roundlay
