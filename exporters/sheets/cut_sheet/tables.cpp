#include "exporters/sheets/cut_sheet/tables.h"

#include "exporters/sheets/drawing/font.h"
#include "kernel/layout/bore_marks.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace roundlay::sheets {
namespace {

constexpr double notes_width = 105;

std::string end_words(const Notch &n) {
    if (n.cut->runs_on) return "notch at " + n.cut->corner;
    if (n.cut->end == End::datum) return n.tail ? "tail at datum end" : "notch near datum end";
    return n.tail ? "tail at far end" : "notch near far end";
}

std::string rise_words(const Words &words, double rise, double run) {
    if (std::abs(rise) < same_station) return "-";
    return words.length(std::abs(rise)) + " in " + words.length(run);
}

std::vector<std::string> row_of(const Notch &n, const Features &features, const Words &words) {
    const double run = n.cut->x_to - n.cut->x_from, width = features.piece->blank.width;
    const std::string side = n.cut->side == Side::top ? "Top of " : "Underside of ";
    const std::string proud =
        n.cut->proud > 0 ? ", leave " + words.length(n.cut->proud) + " proud at the shoulders" : "";
    return {std::to_string(n.number), side + end_words(n) + proud,
            slope_words(n.along),     rise_words(words, n.along * run, run),
            slope_words(n.across),    rise_words(words, n.across * width, width)};
}

std::string what_for(const BoxPart &b, const Words &words) {
    const std::string name = b.cut->opening.empty() ? "opening" : b.cut->opening;
    switch (b.cut->use) {
    case BoxUse::sill:
        return "Sill cut for " + name;
    case BoxUse::header:
        return "Header cut for " + name;
    case BoxUse::step:
        return "Underside over " + name;
    case BoxUse::seat:
        return "Seat on " + name;
    case BoxUse::groove:
        return "Groove " + words.length(b.cut->box.high.y - b.cut->box.low.y) + " wide, " +
               words.length(b.cut->box.low.y) + " from outside, at " + name;
    case BoxUse::through:
        break;
    }
    return "Hole for " + name;
}

std::vector<std::string> row_of(const BoxPart &b, const Features &features, const Words &words) {
    const double width = features.piece->blank.width, fall = b.cut->fall;
    return {std::to_string(b.number),
            what_for(b, words),
            "level",
            "-",
            fall > 0 ? slope_words(-fall) : "level",
            fall > 0 ? rise_words(words, -fall * width, width) : "-"};
}

std::vector<std::string> row_of(const TailedEnd &t, const Words &words) {
    return {"E",
            "Tail of the " + std::string(t.end == End::datum ? "datum" : "far") +
                " end: " + words.length(t.length) + " long, " + words.length(t.width_at_end) +
                " wide at the end, " + words.length(t.width_at_neck) + " at its neck",
            "-",
            "-",
            "-",
            "-"};
}

std::vector<std::string> row_of(const Scope &s, const Words &words) {
    const bool groove = s.cut->use == ScopeUse::groove;
    std::string what = groove ? "Long groove, radius " + words.length(s.cut->radius)
                              : "Saddle at " + words.length(s.x) + ", radius " + words.length(s.cut->radius);
    what += ", its top " + words.length(s.top) + " up";
    if (s.cut->scribe > 0) what += ", scribed " + words.length(s.cut->scribe) + " clear";
    return {std::to_string(s.number), what, "-", "-", "-", "-"};
}

/// Where the stick's own round surface stays.
std::string wane_words(const Features &features, const Words &words) {
    const RoundCut &r = *features.round;
    return "Stick " + words.length(2 * r.radius) + " round: its middle " + words.length(r.from.z) +
           (std::abs(r.from.z - r.to.z) < same_level
                ? " up"
                : " up at the datum end, " + words.length(r.to.z) + " at the far");
}

/// One row for each use of bores.
std::vector<std::vector<std::string>> bore_rows(const Features &features) {
    std::vector<std::vector<std::string>> rows;
    for (const std::optional<BoreUse> &use :
         {std::optional<BoreUse>(), std::optional(BoreUse::bolt), std::optional(BoreUse::rod),
          std::optional(BoreUse::wire), std::optional(BoreUse::hole)}) {
        const auto count = std::count_if(features.pegs.begin(), features.pegs.end(),
                                         [&](const PegHole &p) { return p.bore->use == use; });
        if (count == 0) continue;
        const std::string letter = letter_of(use), first = letter + "1";
        const std::string which = count == 1 ? first : first + " to " + letter + std::to_string(count);
        rows.push_back({letter,
                        use == BoreUse::hole ? "As found: " + which
                                             : "Bore " + which + " (" + std::string(name_of(use)) + ")",
                        "-", "-", "-", "-"});
    }
    return rows;
}

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

Table steps_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Cuts, in cutting order";
    table.columns = {{"No.", Across::right, 10},
                     {"Cut", Across::left, 52},
                     {"Along, to the end", Across::left, 24},
                     {"Rise", Across::left, 40},
                     {"Across, to the outside", Across::left, 24},
                     {"Rise", Across::left, 40}};
    if (const std::string faces = tapering_faces(features); !faces.empty())
        table.rows.push_back({"F", "Hew " + faces + " to their tapers", "-", "-", "-", "-"});
    if (features.round) table.rows.push_back({"S", wane_words(features, words), "-", "-", "-", "-"});
    std::vector<std::pair<int, std::vector<std::string>>> rows;
    for (const Scope &s : features.scopes)
        rows.emplace_back(s.number, row_of(s, words));
    for (const Notch &n : features.notches)
        rows.emplace_back(n.number, row_of(n, features, words));
    for (const BoxPart &b : features.boxes)
        rows.emplace_back(b.number, row_of(b, features, words));
    std::sort(rows.begin(), rows.end());
    for (auto &[number, row] : rows)
        table.rows.push_back(std::move(row));
    for (const TailedEnd &t : features.tails)
        table.rows.push_back(row_of(t, words));
    if (!features.pockets.empty())
        table.rows.push_back(
            {"K", "Cut the pockets K1 to K" + std::to_string(features.pockets.size()), "-", "-", "-", "-"});
    for (auto &row : bore_rows(features))
        table.rows.push_back(std::move(row));
    return table;
}

Table numbers_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Cannot be drawn legibly at any listed scale on this paper. Its dimensions:";
    table.columns = {
        {"Where", Across::left, 60}, {"From datum end", Across::right, 36}, {"Height", Across::right, 30}};
    table.rows.push_back({"far end, top", words.length(features.piece->blank.length),
                          words.length(features.piece->blank.height)});
    for (const Station &s : stations_of(features))
        table.rows.push_back({"end of a cut", words.length(s.x), "-"});
    for (const Level &level : levels_of(features))
        table.rows.push_back({level.on_outside ? "outside face" : "inside face", words.length(level.x),
                              words.length(level.z)});
    return table;
}

Table slant_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Not square across: from the datum end of the blank";
    table.columns = {{"On the outside face", Across::right, 30}, {"On the inside face", Across::right, 30}};
    for (const SawLine &line : slanting_places(features))
        table.rows.push_back({words.length(line.outside), words.length(line.inside)});
    return table;
}

Table peg_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Bores";
    table.columns = {{"No.", Across::left, 12},
                     {"For", Across::left, 16},
                     {"From datum end", Across::right, 30},
                     {"From outside", Across::right, 24},
                     {"Diameter", Across::right, 20},
                     {"Depth", Across::right, 24},
                     {"From", Across::left, 20}};
    for (const PegHole &peg : features.pegs) {
        const Bore &b = *peg.bore;
        table.rows.push_back({letter_of(b.use) + std::to_string(peg.number), name_of(b.use), words.length(b.x),
                              words.length(b.y), words.length(b.diameter),
                              b.through ? "through" : words.length(b.z_to - b.z_from),
                              b.from_top ? "top" : "under"});
    }
    return table;
}

Table pocket_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Pockets; their beds are heights over the under face";
    table.columns = {{"No.", Across::left, 12},           {"Middle from datum end", Across::right, 32},
                     {"Into", Across::left, 16},          {"Deep", Across::right, 20},
                     {"Wide at face", Across::right, 24}, {"Wide at back", Across::right, 24},
                     {"Bed at face", Across::right, 24},  {"Bed at back", Across::right, 24},
                     {"Up to", Across::right, 22},        {"Holds", Across::left, 22}};
    for (const Pocket &p : features.pockets) {
        const auto bed = [&](double z) { return z > same_level ? words.length(z) : std::string("through"); };
        table.rows.push_back({"K" + std::to_string(p.number), words.length(p.cut->x),
                              side_word(*features.piece, p.inside), words.length(p.depth),
                              words.length(2 * p.cut->half_at_face), words.length(2 * p.cut->half_at_back),
                              bed(p.bed_at_face), bed(p.bed_at_back),
                              p.open_top ? "top" : words.length(p.cut->z_top), p.cut->holds});
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
    table.columns.push_back({"Tag", Across::left, 34});
    for (std::size_t c = 0; c < cuts; ++c)
        if (used[c]) table.columns.push_back({"Cut " + std::to_string(c + 1) + " meets", Across::left, 24});
    table.columns.push_back({"Lies on", Across::left, 30});
    table.columns.push_back({"Carries", Across::left, 30});
    table.columns.push_back({"Raise", Across::right, 12});
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
    const Blank &b = piece.blank;
    Table table;
    table.title = "Piece";
    table.columns = {{"", Across::left, 52}, {"", Across::left, 62}};
    const auto add = [&](const char *name, const std::string &value) { table.rows.push_back({name, value}); };
    add("Wanted", std::to_string(model.pieces.size()));
    add("Blank: length, width, height",
        words.length(b.length) + " \u00D7 " + words.length(b.width) + " \u00D7 " + words.length(b.height));
    add("Finished volume", words.volume(body.volume));
    if (weight)
        add("Weight, estimated", words.weight(weight->low_kg) + " to " + words.weight(weight->high_kg));
    if (weight && weight->log_high_kg > 0) {
        add("Blank weighs, estimated",
            words.weight(weight->blank_low_kg) + " to " + words.weight(weight->blank_high_kg));
        add("Round log weighs, estimated",
            words.weight(weight->log_low_kg) + " to " + words.weight(weight->log_high_kg));
    }
    add("Balance point", words.length(body.centroid.x) + " from datum end");
    if (piece.timber < 0) add("Finish", name_of(piece.finish));
    if (piece.fabric != Fabric::newly_cut) add("Old wood or new", name_of(piece.fabric));
    if (piece.bow > 0) add("Bow, as measured", words.length(piece.bow));
    if (!piece.mark.empty() && model.pieces.size() == 1) add("Mark on the log", piece.mark);
    add("Butt (thick end)", piece.butt_at_datum ? "at the datum end" : "at the far end");
    return table;
}

Table notes_table(const Layout &layout, const Model &model, const std::optional<WeightNote> &weight) {
    Table table;
    table.title = "Notes";
    table.columns = {{"", Across::left, notes_width}};
    const auto add = [&](const std::string &words) { table.rows.push_back({words}); };
    const bool timber = piece_of(layout, model).timber >= 0;
    add("Lengths are from the datum end, heights from the under face of the blank, across from the " +
        std::string(timber ? "right" : "outside") + " face. " +
        (timber ? "The datum end lies in the wall that the floor starts in, or to its left; right and left "
                  "are seen from it. "
                : "The datum end is the left end seen from outside. ") +
        "Each face is drawn as it shows when the " + (timber ? "timber" : "log") +
        " is rolled, the datum end always left.");
    for (const int i : model.pieces)
        if (const Piece &p = layout.pieces[static_cast<std::size_t>(i)]; !p.note.empty()) add(p.tag + ": " + p.note);
    if (weight)
        add("Weight: " + weight->basis + " An estimate, no lift plan: weigh before lifting near a limit.");
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
