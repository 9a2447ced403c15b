#include "exporters/sheets/cut_sheet/tables.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/font.h"
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

std::vector<std::string> met_by(const Piece &piece) {
    std::vector<std::string> met;
    for (const Cut &cut : piece.cuts) {
        if (const SeamCut *seam = std::get_if<SeamCut>(&cut))
            met.push_back(seam->other);
        else if (std::holds_alternative<BoxCut>(cut))
            met.push_back("");
        else if (const ScopeCut *scope = std::get_if<ScopeCut>(&cut))
            met.push_back(scope->other);
    }
    return met;
}

/// Only what is there when the number is marked may be measured from.
std::string measured_from(const Features &features) {
    const char *const heights[] = {"the under face", "the under face as hewn",
                                   "the lowest line of the round log"};
    const Footing under = features.under_footing(), outside = features.outside_footing();
    const std::string side = side_word(*features.piece, false);
    const std::string across[] = {"the " + side + " face", "the " + side + " face as hewn",
                                  "the outermost line of its " + side};
    std::string all = "Lengths are from the datum end, level, heights from " +
                      std::string(heights[static_cast<int>(under)]) + ", across from " +
                      across[static_cast<int>(outside)];
    if (features.round != nullptr && under != Footing::touched)
        all += ", a straightedge held to it past the wane";
    all += ". ";
    if (under == Footing::touched)
        all += "Snap the lowest line over the whole log and mark every cut from it before the first cut, "
               "which takes it "
               "away. ";
    if (features.tapers())
        all += "Hew the tapers first: each number is from the hewn face at its own place along the log. "
               "Slopes are "
               "from level. ";
    return all;
}

std::string code_words(char32_t letter) {
    std::array<char, 16> room{};
    std::snprintf(room.data(), room.size(), "U+%04X", static_cast<unsigned>(letter));
    return room.data();
}

const Piece &piece_of(const Layout &layout, const Model &model) {
    return layout.pieces[static_cast<std::size_t>(model.pieces.front())];
}

std::string all_words(const Layout &layout, const Model &model) {
    std::string all = layout.name;
    for (const int i : model.pieces) {
        const Piece &piece = layout.pieces[static_cast<std::size_t>(i)];
        all += piece.tag;
        for (const Cut &cut : piece.cuts) {
            if (const SeamCut *seam = std::get_if<SeamCut>(&cut)) all += seam->other;
            if (const BoxCut *box = std::get_if<BoxCut>(&cut)) all += box->opening;
            if (const ScopeCut *scope = std::get_if<ScopeCut>(&cut)) all += scope->other;
            if (const PocketCut *pocket = std::get_if<PocketCut>(&cut)) all += pocket->holds;
        }
    }
    return all;
}

} // namespace

Table numbers_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Cannot be drawn legibly at any listed scale on this paper. Its dimensions:";
    table.columns = {flush_left("Where", 60), flush_right("From datum end", 36), flush_right("Height", 30)};
    table.rows.push_back({"far end", words.length(features.piece->blank.length), "-"});
    for (const Level &level : log_heights(features))
        table.rows.push_back({"top of the log", words.length(level.x), words.length(level.height)});
    for (const Station &s : stations_of(features))
        table.rows.push_back({"end of a cut", words.length(s.x), "-"});
    for (const Level &level : levels_of(features))
        table.rows.push_back({level.on_outside ? "outside face" : "inside face", words.length(level.x),
                              words.length(level.height)});
    return table;
}

Table slant_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Not square across: from the datum end" +
                  std::string(features.tapers() ? ", on the faces as hewn" : "");
    table.columns = {flush_right("On the outside face", 30), flush_right("On the inside face", 30)};
    for (const SawLine &line : slanting_places(features))
        table.rows.push_back({words.length(line.outside), words.length(line.inside)});
    return table;
}

Table peg_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Bores";
    table.columns = {
        flush_left("No.", 12),           flush_left("For", 16),       flush_right("From datum end", 30),
        flush_right("From outside", 24), flush_right("Diameter", 20), flush_right("Depth", 24),
        flush_left("From", 20)};
    for (const PegHole &peg : features.pegs) {
        const Bore &b = *peg.bore;
        table.rows.push_back(
            {letter_of(b.use) + std::to_string(peg.number), name_of(b.use), words.length(b.x),
             words.length(b.y - features.outermost(b.x)), words.length(b.diameter),
             b.through ? "through" : words.length(b.z_to - b.z_from), b.from_top ? "top" : "under"});
    }
    return table;
}

Table pocket_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Pockets; their beds are heights over the under face";
    table.columns = {flush_left("No.", 12),           flush_right("Middle from datum end", 32),
                     flush_left("Into", 16),          flush_right("Deep", 20),
                     flush_right("Wide at face", 24), flush_right("Wide at back", 24),
                     flush_right("Bed at face", 24),  flush_right("Bed at back", 24),
                     flush_right("Up to", 22),        flush_left("Holds", 22)};
    for (const Pocket &p : features.pockets) {
        const auto height = [&](double z) { return features.height(p.cut->x, z); };
        const auto bed = [&](double z) {
            return height(z) > same_level ? words.length(height(z)) : std::string("through");
        };
        table.rows.push_back({"K" + std::to_string(p.number), words.length(p.cut->x),
                              side_word(*features.piece, p.inside), words.length(p.depth),
                              words.length(p.width_at_face), words.length(2 * p.cut->half_at_back),
                              bed(p.bed_at_face), bed(p.bed_at_back),
                              p.open_top ? "top" : words.length(height(p.cut->z_top)), p.cut->holds});
    }
    return table;
}

Table tag_table(const Layout &layout, const Model &model) {
    Table table;
    table.title =
        model.pieces.size() == 1 ? "Tag and neighbours" : "Tags cut to this sheet, and their neighbours";
    const auto piece = [&](int i) -> const Piece & { return layout.pieces[static_cast<std::size_t>(i)]; };
    const std::size_t cuts = met_by(piece(model.pieces.front())).size();
    std::vector<bool> used(cuts, false);
    for (const int i : model.pieces) {
        const auto met = met_by(piece(i));
        for (std::size_t c = 0; c < cuts; ++c)
            used[c] = used[c] || !met[c].empty();
    }
    table.columns.push_back(flush_left("Tag", 34));
    for (std::size_t c = 0; c < cuts; ++c)
        if (used[c]) table.columns.push_back({"Cut " + std::to_string(c + 1) + " meets", Across::left, 24});
    table.columns.push_back(flush_left("Lies on", 30));
    table.columns.push_back(flush_left("Carries", 30));
    table.columns.push_back(flush_right("Raise", 12));
    for (const int i : model.pieces) {
        const Piece &p = piece(i);
        std::vector<std::string> row{p.tag};
        const auto met = met_by(p);
        for (std::size_t c = 0; c < cuts; ++c)
            if (used[c]) row.push_back(met[c].empty() ? "-" : met[c]);
        row.push_back(joined(p.below));
        row.push_back(joined(p.above));
        row.push_back(std::to_string(p.raise));
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table data_table(const Features &features, const Body &body, const Model &model, const Words &words,
                 const std::optional<WeightNote> &weight) {
    const Piece &piece = *features.piece;
    const Stock stock = stock_of(piece);
    const auto size = [&](const Blank &b) {
        return words.length(b.length) + " \u00D7 " + words.length(b.width) + " \u00D7 " +
               words.length(b.height);
    };
    Table table;
    table.title = "Piece";
    table.columns = {flush_left("", 52), flush_left("", 62)};
    const auto add = [&](const char *name, const std::string &value) { table.rows.push_back({name, value}); };
    add("Wanted", std::to_string(model.pieces.size()));
    add("Blank: length, width, height", size(stock.size));
    if (stock.lean != 0)
        add("It lies at a slant", words.length(std::abs(stock.lean) * piece.blank.length) +
                                      " higher at the " + (stock.lean > 0 ? "far end" : "datum end"));
    if (is_boxed(piece, stock)) add("Level box around it: length, width, height", size(piece.blank));
    add("Finished volume", words.volume(body.volume));
    if (weight) add("Weight, estimated", words.weights(weight->low_kg, weight->high_kg));
    if (weight && weight->blank_high_kg > 0)
        add("Blank weighs, estimated", words.weights(weight->blank_low_kg, weight->blank_high_kg));
    if (weight && weight->log_high_kg > 0)
        add("Round log weighs, estimated", words.weights(weight->log_low_kg, weight->log_high_kg));
    add("Balance point", words.length(body.centroid.x) + " from datum end");
    if (piece.timber < 0) add("Finish", name_of(piece.finish));
    if (piece.fabric != Fabric::newly_cut) add("Old wood or new", name_of(piece.fabric));
    if (piece.bow > 0) add("Bow, as measured", words.length(piece.bow));
    if (!piece.mark.empty() && model.pieces.size() == 1) add("Mark on the log", piece.mark);
    add("Butt (thick end)", piece.butt_at_datum ? "at the datum end" : "at the far end");
    return table;
}

Table warnings_table(const std::vector<std::string> &warnings) {
    Table table;
    table.title = "Warnings of the check";
    table.columns = {flush_left("", notes_width)};
    for (const std::string &warning : warnings)
        table.rows.push_back({warning});
    return table;
}

Table notes_table(const Layout &layout, const Features &features, const Model &model,
                  const std::optional<WeightNote> &weight) {
    Table table;
    table.title = "Notes";
    table.columns = {flush_left("", notes_width)};
    const auto add = [&](const std::string &words) { table.rows.push_back({words}); };
    const bool timber = piece_of(layout, model).timber >= 0;
    add(measured_from(features) +
        (timber ? "The datum end lies in the wall that the floor starts in, or to its left; right and left "
                  "are seen from it. "
                : "The datum end is the left end seen from outside. ") +
        "Each face is drawn as it shows when the " + (timber ? "timber" : "log") +
        " is rolled, the datum end always left.");
    for (const int i : model.pieces)
        if (const Piece &p = layout.pieces[static_cast<std::size_t>(i)]; !p.note.empty())
            add(p.tag + ": " + p.note);
    if (weight) add("Weight: " + weight->basis + " " + weight->caution);
    const auto missing = letters_missing(all_words(layout, model));
    if (!missing.empty()) {
        std::string codes;
        for (const char32_t letter : missing)
            codes += (codes.empty() ? "" : ", ") + code_words(letter);
        add("\uFFFD stands for a letter that this program's font lacks: " + codes + ".");
    }
    return table;
}

} // namespace roundlay::sheets
