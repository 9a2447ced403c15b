#include "exporters/sheets/cut_sheet/tables.h"

#include "exporters/sheets/cut_sheet/mend_notes.h"
#include "exporters/sheets/cut_sheet/snap.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/font.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace roundlay::sheets {
namespace {

constexpr double notes_width = 105;

std::string joined(const std::vector<std::string> &words) {
    std::string all;
    for (const std::string &word : words)
        all += (all.empty() ? "" : ", ") + word;
    return all.empty() ? "-" : all;
}

/// Tag of the log of a wall that it lies against: timbers, openings and steps stand among the cuts in words.
std::string log_met(const Cut &cut) {
    const Neighbour met = neighbour_of(cut);
    switch (met.what) {
    case Met::crossing_log:
    case Met::log_below:
    case Met::mend:
        return std::string(met.name);
    case Met::timber:
    case Met::opening:
    case Met::step:
    case Met::nothing:
        break;
    }
    return "";
}

/// By each numbered cut.
std::vector<std::string> met_by(const Piece &piece) {
    std::vector<std::string> met;
    for (const Cut &cut : piece.cuts)
        if (is_numbered(cut)) met.push_back(log_met(cut));
    return met;
}

std::string code_words(char32_t letter) {
    std::array<char, 16> room{};
    std::snprintf(room.data(), room.size(), "U+%04X", static_cast<unsigned>(letter));
    return room.data();
}

const Piece &piece_of(const Layout &layout, const Model &model) {
    return layout.pieces[model.pieces.front()];
}

std::string all_words(const Layout &layout, const Model &model) {
    std::string all = layout.name;
    for (const Index<Piece> i : model.pieces) {
        const Piece &piece = layout.pieces[i];
        all += piece.tag;
        for (const Cut &cut : piece.cuts)
            all += neighbour_of(cut).name;
    }
    return all;
}

} // namespace

Table numbers_table(const Features &features, const Words &words) {
    Table table = table_called(
        words, words.say("Cannot be drawn legibly at any listed scale on this paper. Its dimensions:"));
    table.columns = {flush_left(words.say("Where"), 60), flush_right(words.say("From datum end"), 36),
                     flush_right(words.say("Height"), 30)};
    table.rows.push_back({words.say("far end"), words.length(features.piece->blank.length), "-"});
    for (const Level &level : log_heights(features))
        table.rows.push_back(
            {words.say("face of the log"), words.length(level.x), words.level(level.height)});
    for (const Station &s : stations_of(features))
        table.rows.push_back({words.say("end of a cut"), words.length(s.x), "-"});
    for (const Level &level : levels_of(features))
        table.rows.push_back({level.on_outside ? words.say("outside face") : words.say("inside face"),
                              words.length(level.x), words.level(level.height)});
    return table;
}

Table slant_table(const Features &features, const Words &words) {
    Table table = table_called(
        words, features.tapers() ? words.say("Not square across: from the datum end, on the faces as hewn")
                                 : words.say("Not square across: from the datum end"));
    table.columns = {flush_right(words.say("On the outside face"), 30),
                     flush_right(words.say("On the inside face"), 30)};
    for (const SawLine &line : slanting_places(features))
        if (std::vector row{words.length(line.outside), words.length(line.inside)}; row[0] != row[1])
            table.rows.push_back(std::move(row)); // less than anybody reads off a rule is square
    return table;
}

Table peg_table(const Features &features, const Words &words) {
    Table table = table_called(words, words.say("Bores"));
    table.columns = {flush_left(words.say("No."), 12),
                     flush_left(words.say("For"), 16),
                     flush_right(words.say("From datum end"), 30),
                     flush_right(words.say("From outside"), 24),
                     flush_right(words.say("Diameter"), 20),
                     flush_right(words.say("Depth"), 24),
                     flush_left(words.say("From"), 20)};
    for (const PegHole &peg : features.pegs) {
        const Bore &b = *peg.bore;
        table.rows.push_back({letter_of(b.use) + std::to_string(peg.number), words.word(name_of(b.use)),
                              words.length(b.x), words.length(b.y - features.outermost(b.x)),
                              words.length(b.diameter),
                              b.through ? words.say("through") : words.length(b.z_to - b.z_from),
                              b.from_top ? words.say("top") : words.say("under")});
    }
    return table;
}

namespace {

std::vector<Column> pocket_columns(const Words &words) {
    return {flush_left(words.say("No."), 12),           flush_right(words.say("Middle from datum end"), 32),
            flush_left(words.say("Into"), 16),          flush_right(words.say("Deep"), 20),
            flush_right(words.say("Wide at face"), 24), flush_right(words.say("Wide at back"), 24),
            flush_right(words.say("Bed at face"), 24),  flush_right(words.say("Bed at back"), 24),
            flush_right(words.say("Up to"), 22),        flush_left(words.say("Holds"), 22)};
}

} // namespace

Table pocket_table(const Features &features, const Words &words) {
    Table table = table_called(words, words.say("Pockets; their beds are heights from LL"));
    table.columns = pocket_columns(words);
    for (const Pocket &p : features.pockets) {
        const auto height = [&](double z) { return features.height(p.cut->x, z); };
        const auto bed = [&](double z) {
            return z > features.lowest(p.cut->x) + same_level ? words.level(height(z)) : words.say("through");
        };
        table.rows.push_back({"K" + std::to_string(p.number), words.length(p.cut->x),
                              words.word(side_word(*features.piece, p.inside)), words.length(p.depth),
                              words.length(p.width_at_face), words.length(2 * p.cut->half_at_back),
                              bed(p.bed_at_face), bed(p.bed_at_back),
                              p.open_top ? words.say("top") : words.level(height(p.cut->z_top)),
                              p.cut->holds});
    }
    return table;
}

namespace {

/// Whether any piece of the model meets another at that cut.
std::vector<bool> cuts_that_meet(const Layout &layout, const Model &model) {
    std::vector<bool> used(met_by(piece_of(layout, model)).size(), false);
    for (const Index<Piece> i : model.pieces) {
        const auto met = met_by(layout.pieces[i]);
        for (std::size_t c = 0; c < used.size(); ++c)
            used[c] = used[c] || !met[c].empty();
    }
    return used;
}

} // namespace

Table tag_table(const Layout &layout, const Model &model, const Features &features, const Words &words) {
    Table table = table_called(words, model.pieces.size() == 1
                                          ? words.say("Tag and neighbours")
                                          : words.say("Tags cut to this sheet, and their neighbours"));
    const std::vector<bool> used = cuts_that_meet(layout, model);
    table.columns.push_back(flush_left(words.say("Tag"), 34));
    for (std::size_t c = 0; c < used.size(); ++c)
        if (used[c]) table.columns.push_back(flush_left(words.say("Cut %1 meets", c + 1), 24));
    table.columns.push_back(flush_left(words.say("Lies on"), 30));
    table.columns.push_back(flush_left(words.say("Carries"), 30));
    table.columns.push_back(flush_right(words.say("LL on the pole"), 22));
    table.columns.push_back(flush_right(words.say("Raise"), 12));
    for (const Index<Piece> i : model.pieces) {
        const Piece &p = layout.pieces[i];
        std::vector<std::string> row{p.tag};
        const auto met = met_by(p);
        for (std::size_t c = 0; c < used.size(); ++c)
            if (used[c]) row.push_back(met[c].empty() ? "-" : met[c]);
        row.push_back(joined(p.below));
        row.push_back(joined(p.above));
        row.push_back(line_on_pole(features, p, words));
        row.push_back(std::to_string(p.raise));
        table.rows.push_back(std::move(row));
    }
    return table;
}

namespace {

/// Nobody cuts an old log out of a blank or a round log again.
void add_weights(Table &table, const Piece &piece, const WeightNote &weight, const Words &words) {
    table.rows.push_back({words.say("Weight, estimated"), words.weights(weight.low_kg, weight.high_kg)});
    if (is_old_wood(piece)) return;
    if (weight.blank_high_kg > 0)
        table.rows.push_back(
            {words.say("Blank weighs, estimated"), words.weights(weight.blank_low_kg, weight.blank_high_kg)});
    if (weight.log_high_kg > 0)
        table.rows.push_back(
            {words.say("Round log weighs, estimated"), words.weights(weight.log_low_kg, weight.log_high_kg)});
}

void add_log(Table &table, const Piece &piece, const Model &model, const Words &words) {
    const auto add = [&](const std::string &name, const std::string &value) {
        table.rows.push_back({name, value});
    };
    if (!piece.timber) add(words.say("Finish"), words.word(name_of(piece.finish)));
    if (!piece.species.empty()) add(words.say("Wood"), words.word(piece.species));
    if (piece.fabric != Fabric::newly_cut)
        add(words.say("Old wood or new"), words.word(name_of(piece.fabric)));
    if (piece.bow > 0) add(words.say("Bow, as measured"), words.length(piece.bow));
    if (!piece.mark.empty() && model.pieces.size() == 1) add(words.say("Mark on the log"), piece.mark);
    add(words.say("Butt (thick end)"),
        piece.butt_at_datum ? words.say("at the datum end") : words.say("at the far end"));
}

} // namespace

Table data_table(const Features &features, const Body &body, const Model &model, const Words &words,
                 const std::optional<WeightNote> &weight) {
    const Piece &piece = *features.piece;
    const Stock stock = stock_of(piece);
    const auto size = [&](const Blank &b) {
        return words.length(b.length) + " \u00D7 " + words.length(b.width) + " \u00D7 " +
               words.length(b.height);
    };
    Table table = table_called(words, words.say("Piece"));
    table.columns = {flush_left("", 52), flush_left("", 62)};
    const auto add = [&](const std::string &name, const std::string &value) {
        table.rows.push_back({name, value});
    };
    add(words.say("Wanted"), std::to_string(model.pieces.size()));
    add(words.say("Blank: length, width, height"), size(stock.size));
    if (stock.lean != 0) {
        const LengthAmount higher = in_mm(std::abs(stock.lean) * piece.blank.length);
        add(words.say("It lies at a slant"), stock.lean > 0
                                                 ? words.say("%1 higher at the far end", higher)
                                                 : words.say("%1 higher at the datum end", higher));
    }
    if (is_boxed(piece, stock))
        add(words.say("Level box around it: length, width, height"), size(piece.blank));
    add(words.say("Finished volume"), words.volume(body.volume));
    if (weight) add_weights(table, piece, *weight, words);
    add(words.say("Balance point"), words.say("%1 from datum end", in_mm(body.centroid.x)));
    add_log(table, piece, model, words);
    return table;
}

Table warnings_table(const std::vector<std::string> &warnings, const Words &words) {
    Table table = table_called(words, words.say("Warnings of the check"));
    table.columns = {flush_left("", notes_width)};
    for (const std::string &warning : warnings)
        table.rows.push_back({warning});
    return table;
}

Table notes_table(const Shell &shell, const Layout &layout, const Features &features, const Model &model,
                  const Words &words, const std::optional<WeightNote> &weight) {
    Table table = table_called(words, words.say("Notes"));
    table.columns = {flush_left("", notes_width)};
    const auto add = [&](const std::string &note) { table.rows.push_back({note}); };
    add(reading_words(features, words));
    for (const std::string &note : mend_notes(shell, layout, model, words))
        add(note);
    for (const std::string &note : fitted_notes(shell, layout, model, words))
        add(note);
    for (const Index<Piece> i : model.pieces)
        if (const Piece &p = layout.pieces[i]; !p.note.empty()) add(p.tag + ": " + p.note);
    if (weight)
        add(words.say("Weight: %1 What it rests on stands in the notes for all cut sheets.",
                      weight->caution));
    const auto missing = letters_missing(all_words(layout, model));
    if (!missing.empty()) {
        std::string codes;
        for (const char32_t letter : missing)
            codes += (codes.empty() ? "" : ", ") + code_words(letter);
        add("\uFFFD" + words.say(" stands for a letter that this program's font lacks: %1.", codes));
    }
    return table;
}

} // namespace roundlay::sheets
