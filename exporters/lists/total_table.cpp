#include "exporters/lists/list_cells.h"
#include "exporters/lists/tables.h"
#include "kernel/trade/log_rules.h"

namespace roundlay {

namespace {

/// Writes rows one after the other.
class Rows {
  public:
    explicit Rows(Table &table) : table_(table) {}
    void add(std::string what, Entry amount, std::string unit, std::string note = {}) {
        table_.rows.push_back({std::move(what), std::move(amount), std::move(unit), std::move(note)});
    }

  private:
    Table &table_;
};

void add_heights(const CutList &list, Rows &rows) {
    const Voice &voice = list.voice;
    rows.add(voice.say("rounds"), number(list.rounds, 0), "");
    rows.add(voice.say("logs in the walls that have most"), number(list.most_logs, 0), "",
             voice.say("half logs counted"));
    rows.add(voice.say("height by the rounds"), number(list.height, mm_decimals), "mm",
             said(list, list.height));
    rows.add(voice.say("height that stands, highest"), number(list.highest, mm_decimals), "mm",
             said(list, list.highest));
    rows.add(voice.say("height that stands, lowest"), number(list.lowest, mm_decimals), "mm",
             said(list, list.lowest));
}

void add_figure(const Figure &figure, const Voice &voice, Rows &rows) {
    const std::string what = voice.words(figure.what);
    switch (figure.of) {
    case FigureOf::things:
        return rows.add(what, number(figure.amount, 0), "");
    case FigureOf::length:
        rows.add(what, number(figure.amount / mm_per_m, 2), "m");
        return rows.add(what, number(figure.amount / mm_per_foot, 1), "ft");
    case FigureOf::sawn_wood:
        rows.add(what, number(figure.amount / mm3_per_m3, 3), "m3");
        return rows.add(what, number(board_feet(figure.amount), 0), voice.say("board feet"));
    case FigureOf::wood:
        break;
    }
    rows.add(what, number(figure.amount / mm3_per_m3, 3), "m3");
}

void add_wood(const CutList &list, Rows &rows) {
    const Voice &voice = list.voice;
    const Totals &sums = list.totals;
    for (const Figure &figure : sums.figures)
        add_figure(figure, voice, rows);
    if (!sums.longest) return;
    const PieceRow &longest = list.pieces[sums.longest->at()];
    rows.add(voice.say("longest blank"), number(longest.stick.blank.length, mm_decimals), "mm",
             longest.tag + ", " + said(list, longest.stick.blank.length));
}

void add_heaviest(const CutList &list, const PieceRow &heaviest, Rows &rows) {
    const Voice &voice = list.voice;
    const Stick &most = heaviest.stick;
    for (const auto &[unit, name] : {std::pair(1.0, "kg"), std::pair(kg_per_pound, "lb")}) {
        rows.add(voice.say("estimated high weight of the heaviest piece"),
                 high_weight(list, most.high_kg / unit), name, heaviest.tag);
        if (most.blank_high_kg > 0)
            rows.add(voice.say("estimated high weight of its blank"),
                     high_weight(list, most.blank_high_kg / unit), name, heaviest.tag);
        rows.add(voice.say("estimated high weight of its round log"),
                 high_weight(list, most.log_high_kg / unit), name, heaviest.tag);
    }
}

void add_weight_sums(const CutList &list, Rows &rows) {
    const Totals &sums = list.totals;
    if (!sums.heaviest) return;
    rows.add(list.voice.say("estimated low weight of all pieces"), low_weight(list, sums.low_kg), "kg");
    rows.add(list.voice.say("estimated high weight of all pieces"), high_weight(list, sums.high_kg), "kg");
    add_heaviest(list, list.pieces[sums.heaviest->at()], rows);
}

/// In place of a weight that would be too low.
void add_not_weighed(const CutList &list, Rows &rows) {
    const Voice &voice = list.voice;
    if (list.totals.weights_known()) return;
    rows.add(voice.say("weight of all pieces"), std::string(), "", list.not_weighed);
    if (!list.weights_known) return;
    rows.add(voice.say("estimated low weight of those whose wood is known"),
             low_weight(list, list.totals.low_kg), "kg");
    rows.add(voice.say("estimated high weight of those whose wood is known"),
             high_weight(list, list.totals.high_kg), "kg");
}

/// What the sums rest on.
void add_notes(const CutList &list, Rows &rows) {
    const Voice &voice = list.voice;
    const auto note = [&](std::string what, std::string words) {
        rows.add(std::move(what), std::string(), "", std::move(words));
    };
    if (!list.shrinkage.empty()) note(voice.say("shrinkage in drying to 12 %"), list.shrinkage);
    note(voice.say("log rules"),
         voice.say("board feet of the order list are of one stick each, of the least round and the ordered "
                   "length, by the formulas of Doyle (from memory), Scribner (seen) and International 1/4 in "
                   "(seen): estimates of sawn boards, which differ by design"));
    note(voice.say("weight basis"), list.weight_basis);
    note(voice.say("caution"), voice.word(weight_caution));
    if (!list.pegs.empty()) note(voice.say("peg lengths"), peg_words(list));
    note(voice.say("order lengths"), order_words(list));
}

} // namespace

Table total_table(const CutList &list) {
    const Voice &voice = list.voice;
    Table table{{{"what", voice.say("what")},
                 {"amount", voice.say("amount")},
                 {"unit", voice.say("unit")},
                 {"note", voice.say("note")}},
                {}};
    Rows rows(table);
    add_heights(list, rows);
    add_wood(list, rows);
    add_weight_sums(list, rows);
    add_not_weighed(list, rows);
    add_notes(list, rows);
    return table;
}

} // namespace roundlay
