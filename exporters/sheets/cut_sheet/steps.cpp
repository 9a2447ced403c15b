// The cuts in cutting order, each with its place in words.
#include "exporters/sheets/cut_sheet/tables.h"
#include "exporters/sheets/drawing/columns.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

using Row = std::vector<std::string>;

std::string end_words(const Notch &n) {
    if (n.cut->runs_on) return "notch at " + n.cut->corner;
    if (n.cut->end == End::datum) return n.tail ? "tail at datum end" : "notch near datum end";
    return n.tail ? "tail at far end" : "notch near far end";
}

/// A tail and a notch near an end rise toward that end; a log that runs on has two, and says which.
std::string along_words(const Notch &n) {
    const std::string slope = slope_words(n.along);
    return n.cut->runs_on && slope != "level" ? slope + " to the far end" : slope;
}

std::string rise_words(const Words &words, double rise, double run) {
    if (std::abs(rise) < same_station) return "-";
    return words.length(std::abs(rise)) + " in " + words.length(run);
}

/// Where a cut begins and ends along the log, on the outside face where it goes at a slant.
std::string stretch_words(const Words &words, double from, double to) {
    return ", from " + words.length(from) + " to " + words.length(to);
}

Row row_of(const Notch &n, const Features &features, const Words &words) {
    const double run = n.cut->x_to - n.cut->x_from;
    const double width = features.innermost(n.from.inside) - features.outermost(n.from.outside);
    const std::string side = n.cut->side == Side::top ? "Top of " : "Underside of ";
    const std::string proud =
        n.cut->proud > 0 ? ", leave " + words.length(n.cut->proud) + " proud at the shoulders" : "";
    return {std::to_string(n.number),
            side + end_words(n) + stretch_words(words, n.from.outside, n.to.outside) + proud,
            along_words(n),
            rise_words(words, n.along * run, run),
            slope_words(n.across),
            rise_words(words, n.across * width, width)};
}

/// A level as it is measured at both ends of the cut, which is one number unless the log tapers.
std::string level_words(const BoxPart &b, const Features &features, const Words &words,
                        const FloorLevel &floor_from, const FloorLevel &floor_to) {
    const auto at = [&](double x, const FloorLevel &floor) {
        const std::string outside = words.length(features.height(x, floor.outside));
        return floor.falls()
                   ? outside + " outside and " + words.length(features.height(x, floor.inside)) + " inside"
                   : outside;
    };
    const std::string from = at(b.x_from, floor_from), to = at(b.x_to, floor_to);
    if (from == to) return from;
    return from + " at " + words.length(b.x_from) + ", " + to + " at " + words.length(b.x_to);
}

std::string height_words(const BoxPart &b, const Features &features, const Words &words) {
    const FloorLevel top{b.z_to, b.z_to};
    const std::string floor = level_words(b, features, words, b.floor_from, b.floor_to);
    const std::string ceiling = level_words(b, features, words, top, top);
    if (b.opens_top) return b.opens_under ? "" : ", down to " + floor;
    return (b.opens_under ? ", up to " : ", from " + floor + " up to ") + ceiling;
}

std::string what_for(const BoxPart &b, const Features &features, const Words &words) {
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
               words.length(b.cut->box.low.y - features.outermost(b.x_from)) + " from outside, at " + name;
    case BoxUse::through:
        break;
    }
    return "Hole for " + name;
}

/// How far a sill falls over the log, at either end of the cut where the log narrows.
std::string fall_words(const BoxPart &b, const Features &features, const Words &words) {
    const auto at = [&](double x) {
        const double width = features.innermost(x) - features.outermost(x);
        return rise_words(words, -b.cut->fall * width, width);
    };
    const std::string from = at(b.x_from), to = at(b.x_to);
    return from == to ? from : from + " to " + to;
}

Row row_of(const BoxPart &b, const Features &features, const Words &words) {
    const double fall = b.cut->fall;
    return {std::to_string(b.number),
            what_for(b, features, words) + stretch_words(words, b.x_from, b.x_to) +
                height_words(b, features, words),
            "level",
            "-",
            fall > 0 ? slope_words(-fall) : "level",
            fall > 0 ? fall_words(b, features, words) : "-"};
}

Row in_words(const std::string &mark, const std::string &words) {
    return {mark, words, "-", "-", "-", "-"};
}

Row row_of(const TailedEnd &t, const Words &words) {
    return in_words("E", "Tail of the " + std::string(t.end == End::datum ? "datum" : "far") +
                             " end: " + words.length(t.length) + " long, " + words.length(t.width_at_end) +
                             " wide at the end, " + words.length(t.width_at_neck) + " at its neck");
}

Row row_of(const Scope &s, const Features &features, const Words &words) {
    const bool groove = s.cut->use == ScopeUse::groove;
    const bool slants = std::abs(s.middle.outside - s.middle.inside) > same_station;
    std::string what = groove
                           ? "Long groove"
                           : "Saddle at " + words.length(s.middle.outside) +
                                 (slants ? " outside and " + words.length(s.middle.inside) + " inside" : "");
    what += ", radius " + words.length(s.cut->radius);
    what += ", its top " + words.length(features.height(s.middle.outside, s.top)) + " up";
    if (groove && !s.whole) what += stretch_words(words, s.x_from, s.x_to);
    if (s.cut->cheeks > 0) what += ", upright cheeks " + words.length(s.cut->cheeks) + " from its middle";
    if (s.cut->scribe > 0) what += ", scribed " + words.length(s.cut->scribe) + " clear";
    return in_words(std::to_string(s.number), what);
}

/// What each face loses, while the blank's own faces are there to measure from.
std::string taper_words(const Features &f, const Words &words) {
    const Blank &blank = f.piece->blank;
    std::string all = "Hew to the tapers, off the " +
                      std::string(is_boxed(*f.piece, stock_of(*f.piece)) ? "level box" : "blank") +
                      " at its datum and far end:";
    const auto add = [&](const char *name, const HewnFace &face, double whole) {
        if (!face.tapers()) return;
        const auto off = [&](double x) { return words.length(std::abs(whole - face.at(x))); };
        all +=
            std::string(all.back() == ':' ? " " : ", ") + name + " " + off(0) + " and " + off(blank.length);
    };
    add("top", f.top, blank.height);
    add("under", f.under, 0);
    add(side_word(*f.piece, false), f.outside, 0);
    add(side_word(*f.piece, true), f.inside, blank.width);
    return all;
}

/// Where the stick's own round surface stays.
std::string wane_words(const Features &features, const Words &words) {
    const RoundCut &r = *features.round;
    const std::string datum = words.length(features.height(0, r.from.z)),
                      far = words.length(features.height(r.to.x, r.to.z));
    return "Stick " + words.length(2 * r.radius) + " round, in the middle of the width: its middle " + datum +
           (datum == far ? " up" : " up at the datum end, " + far + " at the far");
}

/// The flat faces of a round stick, as far from its middle as their lines lie on both its ends. Those that
/// taper stand among the tapers; none where the stick stays round all about.
std::string flat_words(const Features &f, const Words &words) {
    const RoundCut &r = *f.round;
    std::string all;
    const auto add = [&](const char *name, const HewnFace &face, double from, double to, double outward) {
        const double datum = outward * (face.at(0) - from), far = outward * (face.at(r.to.x) - to);
        if (face.tapers() || std::min(datum, far) > r.radius - same_level) return;
        all += (all.empty() ? "Hew flat, from the stick's middle: " : ", ") + std::string(name) + " ";
        const auto said = [&](double d) { // a half log's flat may lie on the other side of the middle
            return words.length(std::abs(d)) + (d < -same_level ? " beyond it" : "");
        };
        const std::string a = said(datum), b = said(far);
        all += a == b ? a : a + " at the datum end and " + b + " at the far";
    };
    add(side_word(*f.piece, false), f.outside, r.from.y, r.to.y, -1);
    add(side_word(*f.piece, true), f.inside, r.from.y, r.to.y, 1);
    add("top", f.top, r.from.z, r.to.z, 1);
    add("under", f.under, r.from.z, r.to.z, -1);
    return all;
}

/// One row for each use of bores.
std::vector<Row> bore_rows(const Features &features) {
    std::vector<Row> rows;
    for (const std::optional<BoreUse> &use :
         {std::optional<BoreUse>(), std::optional(BoreUse::bolt), std::optional(BoreUse::rod),
          std::optional(BoreUse::wire), std::optional(BoreUse::hole)}) {
        const auto count = std::count_if(features.pegs.begin(), features.pegs.end(),
                                         [&](const PegHole &p) { return p.bore->use == use; });
        if (count == 0) continue;
        const std::string letter = letter_of(use), first = letter + "1";
        const std::string which = count == 1 ? first : first + " to " + letter + std::to_string(count);
        rows.push_back(in_words(letter, use == BoreUse::hole
                                            ? "As found: " + which
                                            : "Bore " + which + " (" + std::string(name_of(use)) + ")"));
    }
    return rows;
}

void add_slanted_end(Table &table, const char *name, const SawLine &at, const Words &words) {
    if (std::abs(at.outside - at.inside) < same_station) return;
    table.rows.push_back(in_words("E", "Saw the " + std::string(name) +
                                           " end at a slant: " + words.length(at.outside) + " outside and " +
                                           words.length(at.inside) + " inside"));
}

std::vector<Row> numbered_rows(const Features &features, const Words &words) {
    std::vector<std::pair<int, Row>> numbered;
    for (const Scope &s : features.scopes)
        numbered.emplace_back(s.number, row_of(s, features, words));
    for (const Notch &n : features.notches)
        numbered.emplace_back(n.number, row_of(n, features, words));
    for (const BoxPart &b : features.boxes)
        numbered.emplace_back(b.number, row_of(b, features, words));
    std::sort(numbered.begin(), numbered.end());
    std::vector<Row> rows;
    for (auto &[number, row] : numbered)
        rows.push_back(std::move(row));
    return rows;
}

} // namespace

Table steps_table(const Features &features, const Words &words) {
    Table table;
    table.title = "Cuts, in cutting order";
    table.columns = {flush_right("No.", 10),
                     flush_left("Cut", 62),
                     flush_left("Along, to the end", 24),
                     flush_left("Rise", 40),
                     flush_left("Across, to the " + std::string(side_word(*features.piece, false)), 24),
                     flush_left("Rise", 40)};
    if (features.tapers()) table.rows.push_back(in_words("F", taper_words(features, words)));
    if (features.round) table.rows.push_back(in_words("S", wane_words(features, words)));
    if (const std::string flats = features.round ? flat_words(features, words) : ""; !flats.empty())
        table.rows.push_back(in_words("S", flats));
    add_slanted_end(table, "datum", features.datum_end, words);
    add_slanted_end(table, "far", features.far_end, words);
    for (Row &row : numbered_rows(features, words))
        table.rows.push_back(std::move(row));
    for (const TailedEnd &t : features.tails)
        table.rows.push_back(row_of(t, words));
    if (!features.pockets.empty())
        table.rows.push_back(
            in_words("K", "Cut the pockets K1 to K" + std::to_string(features.pockets.size())));
    for (Row &row : bore_rows(features))
        table.rows.push_back(std::move(row));
    return table;
}

} // namespace roundlay::sheets
