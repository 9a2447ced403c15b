#include "exporters/lists/list_cells.h"
#include "exporters/lists/tables.h"
#include "kernel/trade/log_rules.h"

namespace roundlay {

namespace {

struct Sums {
    double blanks = 0, blank_length = 0, finished = 0, low_kg = 0, high_kg = 0;
    double islands = 0, pegs = 0;
    const PieceRow *heaviest = nullptr;
    const PieceRow *longest = nullptr;
};

Sums sums_of(const CutList &list) {
    Sums sums;
    for (const PieceRow &piece : list.pieces) {
        const Stick &stick = piece.stick;
        sums.blanks += stick.blank.length * stick.blank.width * stick.blank.height;
        sums.blank_length += stick.blank.length;
        sums.finished += stick.volume;
        sums.low_kg += stick.low_kg;
        sums.high_kg += stick.high_kg;
        sums.islands += stick.kind == "island" ? 1 : 0;
        if (!sums.heaviest || stick.high_kg > sums.heaviest->stick.high_kg) sums.heaviest = &piece;
        if (!sums.longest || stick.blank.length > sums.longest->stick.blank.length) sums.longest = &piece;
    }
    for (const PegRow &peg : list.pegs)
        sums.pegs += static_cast<double>(peg.names.size());
    return sums;
}

void add_wood(const CutList &list, const Sums &sums, Table &table) {
    const auto row = [&](std::string what, Entry amount, std::string unit, std::string note = {}) {
        table.rows.push_back({std::move(what), std::move(amount), std::move(unit), std::move(note)});
    };
    row("rounds", number(list.rounds, 0), "");
    row("logs in the walls that have most", number(list.most_logs, 0), "", "half logs counted");
    row("height by the rounds", number(list.height, mm_decimals), "mm", said(list, list.height));
    row("height that stands, highest", number(list.highest, mm_decimals), "mm", said(list, list.highest));
    row("height that stands, lowest", number(list.lowest, mm_decimals), "mm", said(list, list.lowest));
    row("pieces", number(static_cast<double>(list.pieces.size()), 0), "");
    row("distinct pieces", number(static_cast<double>(list.models.size()), 0), "");
    row("islands", number(sums.islands, 0), "");
    row("pegs", number(sums.pegs, 0), "");
    row("length of all blanks", number(sums.blank_length / mm_per_m, 2), "m");
    row("length of all blanks", number(sums.blank_length / mm_per_foot, 1), "ft");
    row("volume of all blanks", number(sums.blanks / mm3_per_m3, 3), "m3");
    row("volume of all blanks", number(board_feet(sums.blanks), 0), "board feet");
    row("volume of all finished pieces", number(sums.finished / mm3_per_m3, 3), "m3");
    if (!sums.longest) return;
    row("longest blank", number(sums.longest->stick.blank.length, mm_decimals), "mm",
        sums.longest->tag + ", " + said(list, sums.longest->stick.blank.length));
}

void add_weight_sums(const CutList &list, const Sums &sums, Table &table) {
    const auto row = [&](std::string what, Entry amount, std::string unit, std::string note = {}) {
        table.rows.push_back({std::move(what), std::move(amount), std::move(unit), std::move(note)});
    };
    if (list.weights_known && sums.heaviest) {
        const Stick &most = sums.heaviest->stick;
        row("estimated low weight of all pieces", low_weight(list, sums.low_kg), "kg");
        row("estimated high weight of all pieces", high_weight(list, sums.high_kg), "kg");
        for (const auto &[unit, name] : {std::pair(1.0, "kg"), std::pair(kg_per_pound, "lb")}) {
            row("estimated high weight of the heaviest piece", high_weight(list, most.high_kg / unit), name,
                sums.heaviest->tag);
            if (most.blank_high_kg > 0)
                row("estimated high weight of its blank", high_weight(list, most.blank_high_kg / unit), name,
                    sums.heaviest->tag);
            row("estimated high weight of its round log", high_weight(list, most.log_high_kg / unit), name,
                sums.heaviest->tag);
        }
    }
    if (!list.shrinkage.empty()) row("shrinkage in drying to 12 %", std::string(), "", list.shrinkage);
    row("log rules", std::string(), "",
        "board feet of the order list are of one stick each, of the least round and the ordered length, by "
        "the formulas of "
        "Doyle (from "
        "memory), Scribner (seen) and International 1/4 in (seen): estimates of sawn boards, which differ by "
        "design");
    row("weight basis", std::string(), "", list.weight_basis);
    row("caution", std::string(), "", std::string(weight_caution));
    if (!list.pegs.empty()) row("peg lengths", std::string(), "", peg_words(list));
    row("order lengths", std::string(), "",
        "rounded up to the next " + said(list, list.order_step) + "; no trim is added");
}

} // namespace

Table total_table(const CutList &list) {
    Table table{{{"what", "what"}, {"amount", "amount"}, {"unit", "unit"}, {"note", "note"}}, {}};
    const Sums sums = sums_of(list);
    add_wood(list, sums, table);
    add_weight_sums(list, sums, table);
    return table;
}

} // namespace roundlay
