#include "exporters/lists/tables.h"

#include "exporters/lists/found_words.h"
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

void add_stick_weight_columns(const CutList &list, std::vector<Column> &columns) {
    const Voice &voice = list.voice;
    const std::string to = voice.say("to"), blank = voice.say("blank to"), log = voice.say("log to");
    append(columns, weight_columns(list, "estimated_weight_each",
                                   {voice.say("each kg from"), to, voice.say("each lb from"), to}));
    append(columns, weight_columns(list, "estimated_blank_weight_each", {"", blank, "", blank}));
    append(columns, weight_columns(list, "estimated_round_log_weight_each", {"", log, "", log}));
}

/// What follows in every table of sticks.
void add_stick_columns(const CutList &list, std::vector<Column> &columns) {
    const Voice &voice = list.voice;
    const bool metric = list.units == UnitSystem::metric;
    append(columns, {{"width", voice.say("width")},
                     {"height", voice.say("height")},
                     {"length", voice.say("length")},
                     {"width_mm", ""},
                     {"height_mm", ""},
                     {"length_mm", ""},
                     {"finished_volume_m3", metric ? voice.say("m3") : ""},
                     {"finished_volume_ft3", metric ? "" : voice.say("ft3")}});
    add_stick_weight_columns(list, columns);
    append(columns, {{"weight_note", ""}, species_column(list)});
}

void add_stick(const CutList &list, const Stick &stick, Row &row) {
    const Blank &b = stick.blank;
    append(row, {said(list, b.width), said(list, b.height), said(list, b.length),
                 number(b.width, mm_decimals), number(b.height, mm_decimals), number(b.length, mm_decimals),
                 number(stick.volume / mm3_per_m3, summed_decimals, volume_decimals),
                 number(stick.volume / mm3_per_ft3, summed_decimals - 1, volume_decimals - 1)});
    add_weights(list, stick.low_kg, stick.high_kg, row);
    add_weights(list, stick.blank_low_kg, stick.blank_high_kg, row);
    add_weights(list, stick.log_low_kg, stick.log_high_kg, row);
    append(row, {stick.weight_note, stick.species});
}

std::string butt_words(const ModelRow &row, const Voice &voice) {
    const int all = static_cast<int>(row.tags.size());
    if (row.butt_left == all) return voice.say("left");
    if (row.butt_left == 0) return voice.say("right");
    return voice.say("%1 left, %2 right", row.butt_left, all - row.butt_left);
}

Row model_row(const CutList &list, const ModelRow &model) {
    Row row = {model.tags.front(), number(static_cast<double>(model.tags.size()), 0), model.tags,
               model.stick.kind};
    add_stick(list, model.stick, row);
    append(row, {butt_words(model, list.voice), joined(model.stick.cuts)});
    return row;
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
    append(table.columns, {{"butt_end", voice.say("butt")}, {"cuts", ""}});
    for (const ModelRow &model : list.models)
        table.rows.push_back(model_row(list, model));
    return table;
}

namespace {

std::vector<Column> piece_columns(const CutList &list) {
    const Voice &voice = list.voice;
    std::vector<Column> columns{{"tag", voice.say("tag")},
                                {"wall", ""},
                                {"round", ""},
                                {"place", ""},
                                {"raise", voice.say("raise")},
                                {"piece", voice.say("piece")},
                                {"kind", voice.say("kind")}};
    add_stick_columns(list, columns);
    append(columns, {{"butt_end", voice.say("butt")}, {"finish", ""}, {"fabric", ""}, {"mark", ""}});
    append(columns, {{"bow", ""}, {"note", ""}});
    append(columns, {{"left_end", voice.say("left end")}, {"right_end", voice.say("right end")}});
    append(columns, {{"cuts", ""}, {"below", ""}, {"above", ""}});
    append(columns, {{"notched_left", ""}, {"notched_right", ""}});
    append(columns, found_columns(list));
    return columns;
}

Row piece_row(const CutList &list, const PieceRow &piece) {
    Row row = {
        piece.tag,  piece.wall,      number(piece.round, 0), number(piece.number, 0), number(piece.raise, 0),
        piece.like, piece.stick.kind};
    add_stick(list, piece.stick, row);
    append(row, {piece.butt_left ? list.voice.say("left") : list.voice.say("right"), piece.finish,
                 piece.fabric, piece.mark});
    append(row, {piece.bow > 0 ? said(list, piece.bow) : std::string(), piece.note});
    append(row, {piece.left, piece.right});
    append(row, {joined(piece.stick.cuts), piece.below, piece.above});
    append(row, {piece.at_left, piece.at_right});
    append(row, found_cells(piece));
    return row;
}

} // namespace

Table piece_table(const CutList &list) {
    Table table{piece_columns(list), {}};
    for (const PieceRow &piece : list.pieces)
        table.rows.push_back(piece_row(list, piece));
    return table;
}

std::string peg_words(const CutList &list) {
    if (list.pegs_in_place)
        return list.voice.say("lengths are rounded up to the next %1; each peg is cut to its own bore, which "
                              "the elevation of its wall says",
                              in_mm(list.peg_step));
    return list.voice.say("lengths are rounded up to the next %1; each peg is cut to its own bore, which the "
                          "cut sheets say",
                          in_mm(list.peg_step));
}

std::string order_words(const CutList &list) {
    return list.voice.say("rounded up to the next %1; no trim is added", in_mm(list.order_step));
}

namespace {

std::vector<Column> peg_columns(const Voice &voice) {
    return {{"quantity", voice.say("qty")},
            {"diameter", voice.say("diameter")},
            {"length", voice.say("length")},
            {"bores_from", voice.say("bores from")},
            {"bores_to", voice.say("bores to")},
            {"diameter_mm", ""},
            {"length_mm", ""},
            {"bores_from_mm", ""},
            {"bores_to_mm", ""},
            {"length_note", ""},
            {"pegs", voice.say("pegs")}};
}

Row peg_row(const CutList &list, const PegRow &peg) {
    return {number(static_cast<double>(peg.names.size()), 0),
            said(list, peg.diameter),
            said(list, peg.length),
            said(list, peg.shallowest),
            said(list, peg.deepest),
            number(peg.diameter, mm_decimals),
            number(peg.length, mm_decimals),
            number(peg.shallowest, mm_decimals),
            number(peg.deepest, mm_decimals),
            peg_words(list),
            peg.names};
}

} // namespace

Table peg_table(const CutList &list) {
    Table table{peg_columns(list.voice), {}};
    for (const PegRow &peg : list.pegs)
        table.rows.push_back(peg_row(list, peg));
    return table;
}

namespace {

std::vector<Column> order_size_columns(const Voice &voice) {
    return {{"quantity", voice.say("qty")},
            {"width", voice.say("width")},
            {"height", voice.say("height")},
            {"length", voice.say("length")},
            {"least_round", voice.say("least round")},
            {"width_mm", ""},
            {"height_mm", ""},
            {"length_mm", ""},
            {"least_round_mm", ""}};
}

std::vector<Column> order_columns(const CutList &list) {
    const Voice &voice = list.voice;
    std::vector<Column> columns = order_size_columns(voice);
    append(columns, weight_columns(list, "estimated_blank_weight_each",
                                   {"", voice.say("each blank kg to"), "", voice.say("each blank lb to")}));
    append(columns, weight_columns(list, "estimated_round_log_weight_each",
                                   {"", voice.say("each log kg to"), "", voice.say("each log lb to")}));
    append(columns, {{"weight_note", ""}, species_column(list)});
    return columns;
}

std::vector<Column> board_feet_columns(const CutList &list) {
    const bool metric = list.units == UnitSystem::metric;
    return {{"doyle_board_feet_each", ""},
            {"scribner_board_feet_each", ""},
            {"international_quarter_board_feet_each", metric ? "" : list.voice.say("each Int. 1/4 bd ft")}};
}

Row board_feet(const OrderRow &row) {
    const Length round = Length::mm(row.least_round), length = Length::mm(row.length);
    return {number(doyle(round, length), 0), number(scribner(round, length), 0),
            number(international_quarter(round, length), 0)};
}

Row order_row(const CutList &list, const OrderRow &row) {
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
    append(cells, {list.notes.at(note_key(row.species, row.green)), list.voice.word(row.species)});
    append(cells, board_feet(row));
    cells.emplace_back(row.tags);
    return cells;
}

} // namespace

Table order_table(const CutList &list) {
    Table table{order_columns(list), {}};
    append(table.columns, board_feet_columns(list));
    table.columns.push_back({"tags", list.voice.say("for")});
    for (const OrderRow &row : list.order)
        table.rows.push_back(order_row(list, row));
    return table;
}

} // namespace roundlay
