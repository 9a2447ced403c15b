#include "exporters/lists/list_cells.h"
#include "exporters/lists/tables.h"
#include "kernel/trade/log_rules.h"

namespace roundlay {

namespace {

void add_wood(const CutList &list, Table &table) {
    const Voice &voice = list.voice;
    const Totals &sums = list.totals;
    const auto row = [&](std::string what, Entry amount, std::string unit, std::string note = {}) {
        table.rows.push_back({std::move(what), std::move(amount), std::move(unit), std::move(note)});
    };
    row(voice.say("rounds"), number(list.rounds, 0), "");
    row(voice.say("logs in the walls that have most"), number(list.most_logs, 0), "",
        voice.say("half logs counted"));
    row(voice.say("height by the rounds"), number(list.height, mm_decimals), "mm", said(list, list.height));
    row(voice.say("height that stands, highest"), number(list.highest, mm_decimals), "mm",
        said(list, list.highest));
    row(voice.say("height that stands, lowest"), number(list.lowest, mm_decimals), "mm",
        said(list, list.lowest));
    row(voice.say("pieces"), number(static_cast<double>(sums.pieces), 0), "");
    row(voice.say("distinct pieces"), number(static_cast<double>(sums.models), 0), "");
    row(voice.say("islands"), number(static_cast<double>(sums.islands), 0), "");
    row(voice.say("pegs"), number(static_cast<double>(sums.pegs), 0), "");
    row(voice.say("length of all blanks"), number(sums.blank_length / mm_per_m, 2), "m");
    row(voice.say("length of all blanks"), number(sums.blank_length / mm_per_foot, 1), "ft");
    row(voice.say("volume of all blanks"), number(sums.blanks / mm3_per_m3, 3), "m3");
    row(voice.say("volume of all blanks"), number(board_feet(sums.blanks), 0), voice.say("board feet"));
    row(voice.say("volume of all finished pieces"), number(sums.finished / mm3_per_m3, 3), "m3");
    if (!sums.longest) return;
    const PieceRow &longest = list.pieces[sums.longest->at()];
    row(voice.say("longest blank"), number(longest.stick.blank.length, mm_decimals), "mm",
        longest.tag + ", " + said(list, longest.stick.blank.length));
}

void add_weight_sums(const CutList &list, Table &table) {
    const Voice &voice = list.voice;
    const Totals &sums = list.totals;
    const auto row = [&](std::string what, Entry amount, std::string unit, std::string note = {}) {
        table.rows.push_back({std::move(what), std::move(amount), std::move(unit), std::move(note)});
    };
    if (list.weights_known && sums.heaviest) {
        const PieceRow &heaviest = list.pieces[sums.heaviest->at()];
        const Stick &most = heaviest.stick;
        row(voice.say("estimated low weight of all pieces"), low_weight(list, sums.low_kg), "kg");
        row(voice.say("estimated high weight of all pieces"), high_weight(list, sums.high_kg), "kg");
        for (const auto &[unit, name] : {std::pair(1.0, "kg"), std::pair(kg_per_pound, "lb")}) {
            row(voice.say("estimated high weight of the heaviest piece"),
                high_weight(list, most.high_kg / unit), name, heaviest.tag);
            if (most.blank_high_kg > 0)
                row(voice.say("estimated high weight of its blank"),
                    high_weight(list, most.blank_high_kg / unit), name, heaviest.tag);
            row(voice.say("estimated high weight of its round log"),
                high_weight(list, most.log_high_kg / unit), name, heaviest.tag);
        }
    }
    if (!list.shrinkage.empty())
        row(voice.say("shrinkage in drying to 12 %"), std::string(), "", list.shrinkage);
    row(voice.say("log rules"), std::string(), "",
        voice.say("board feet of the order list are of one stick each, of the least round and the ordered "
                  "length, by the formulas of Doyle (from memory), Scribner (seen) and International 1/4 in "
                  "(seen): estimates of sawn boards, which differ by design"));
    row(voice.say("weight basis"), std::string(), "", list.weight_basis);
    row(voice.say("caution"), std::string(), "", voice.word(weight_caution));
    if (!list.pegs.empty()) row(voice.say("peg lengths"), std::string(), "", peg_words(list));
    row(voice.say("order lengths"), std::string(), "",
        voice.say("rounded up to the next %1; no trim is added", in_mm(list.order_step)));
}

} // namespace

Table total_table(const CutList &list) {
    const Voice &voice = list.voice;
    Table table{{{"what", voice.say("what")},
                 {"amount", voice.say("amount")},
                 {"unit", voice.say("unit")},
                 {"note", voice.say("note")}},
                {}};
    add_wood(list, table);
    add_weight_sums(list, table);
    return table;
}

} // namespace roundlay
