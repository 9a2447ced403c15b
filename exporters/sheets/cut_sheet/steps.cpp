// The cuts in cutting order, each with its place in words.
#include "exporters/sheets/cut_sheet/step_rows.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "exporters/sheets/drawing/columns.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace roundlay::sheets {
namespace {

using Row = StepRow;

/// What is to be done, and what is there already.
struct Steps {
    std::vector<Row> work, there;
    void add(bool is_work, Row row) { (is_work ? work : there).push_back(std::move(row)); }
};

/// Which cuts of a piece are work; of new wood all.
class ToCut {
  public:
    ToCut(const Piece &piece, const OldCuts &old)
        : piece_(piece), old_(old), partly_(old.old && old.known && old.make.size() == piece.cuts.size()) {}

    /// `cut`: one of the piece's, whatever its kind.
    bool is_work(const void *cut) const {
        for (std::size_t i = 0; partly_ && i < piece_.cuts.size(); ++i)
            if (holds(piece_.cuts[i], cut)) return old_.make[i];
        return true;
    }

    /// Faces, sticks and cheeks, which bear letters.
    bool is_any_work_on_faces() const {
        if (!partly_) return true;
        for (std::size_t i = 0; i < piece_.cuts.size(); ++i)
            if (const Cut &cut = piece_.cuts[i];
                old_.make[i] && !is_numbered(cut) && !bore_of(cut) && neighbour_of(cut).what == Met::nothing)
                return true;
        return false;
    }

  private:
    const Piece &piece_;
    const OldCuts &old_;
    bool partly_;
};

/// "P1 to P4", or where it is not all of them "P1, P3".
std::string which_bores(const std::vector<const PegHole *> &some, std::size_t all, const std::string &letter,
                        const Words &words) {
    const std::string first = letter + std::to_string(some.front()->number);
    if (some.size() == all && all > 1)
        return words.say("%1 to %2", first, letter + std::to_string(some.back()->number));
    std::string list;
    for (const PegHole *each : some)
        add_part(list, letter + std::to_string(each->number));
    return list;
}

/// One row for each use of bores, and of those a row for what is to be bored and what is there.
void add_bores(const Features &features, const ToCut &to_cut, const Words &words, Steps &steps) {
    for (const std::optional<BoreUse> &use :
         {std::optional<BoreUse>(), std::optional(BoreUse::bolt), std::optional(BoreUse::rod),
          std::optional(BoreUse::wire), std::optional(BoreUse::hole)}) {
        std::array<std::vector<const PegHole *>, 2> by_work;
        for (const PegHole &p : features.pegs)
            if (p.bore->use == use) by_work[to_cut.is_work(p.bore) ? 1 : 0].push_back(&p);
        const std::size_t all = by_work[0].size() + by_work[1].size();
        for (const bool work : {true, false}) {
            if (by_work[work ? 1 : 0].empty()) continue;
            const std::string which = which_bores(by_work[work ? 1 : 0], all, letter_of(use), words);
            steps.add(work, in_words(letter_of(use),
                                     use == BoreUse::hole
                                         ? words.say("As found: %1", which)
                                         : words.say("Bore %1 (%2)", which, words.word(name_of(use)))));
        }
    }
}

void add_slanted_ends(const Features &features, bool work, const Words &words, Steps &steps) {
    const auto slants = [&](const SawLine &at) {
        return std::abs(at.outside - at.inside) >= same_station &&
               words.length(at.outside) != words.length(at.inside);
    };
    const SawLine &datum = features.datum_end, &far = features.far_end;
    if (slants(datum))
        steps.add(work, in_words("E", words.say("Saw the datum end at a slant: %1 outside and %2 inside",
                                                in_mm(datum.outside), in_mm(datum.inside))));
    if (slants(far))
        steps.add(work, in_words("E", words.say("Saw the far end at a slant: %1 outside and %2 inside",
                                                in_mm(far.outside), in_mm(far.inside))));
}

/// A numbered cut.
struct NumberedStep {
    int number = 0;
    bool work = true;
    Row row;
};

std::vector<NumberedStep> numbered_steps(const Features &features, const ToCut &to_cut, const Words &words) {
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = features.parts();
    static_cast<void>(pegs), static_cast<void>(pockets), static_cast<void>(tails); // marked by letters
    std::vector<NumberedStep> numbered;
    for (const Scope &s : scopes)
        numbered.push_back({s.number, to_cut.is_work(s.cut), row_of(s, features, words)});
    for (const Notch &n : notches)
        numbered.push_back({n.number, to_cut.is_work(n.cut), row_of(n, features, words)});
    for (const BoxPart &b : boxes)
        numbered.push_back({b.number, to_cut.is_work(b.cut), row_of(b, features, words)});
    for (const MendPart &m : mends)
        numbered.push_back({m.number, to_cut.is_work(m.cut), row_of(m, features, words)});
    std::ranges::sort(numbered, {}, &NumberedStep::number);
    return numbered;
}

void add_pockets(const Features &features, const ToCut &to_cut, const Words &words, Steps &steps) {
    std::array<std::string, 2> lists;
    for (const Pocket &pocket : features.pockets)
        add_part(lists[to_cut.is_work(pocket.cut) ? 1 : 0], "K" + std::to_string(pocket.number));
    if (!lists[1].empty())
        steps.add(true, in_words("K", lists[0].empty()
                                          ? words.say("Cut the pockets K1 to K%1", features.pockets.size())
                                          : words.say("Cut the pockets %1", lists[1])));
    if (!lists[0].empty()) steps.add(false, in_words("K", words.say("Pockets: %1", lists[0])));
}

Steps all_steps(const Features &features, const ToCut &to_cut, const Words &words) {
    Steps steps;
    const bool hewing = to_cut.is_any_work_on_faces();
    if (features.tapers()) steps.add(hewing, in_words("F", taper_words(features, words)));
    if (features.round) steps.add(hewing, in_words("S", wane_words(features, words)));
    if (const std::string flats = features.round ? flat_words(features, words) : ""; !flats.empty())
        steps.add(hewing, in_words("S", flats));
    add_slanted_ends(features, hewing, words, steps);
    for (NumberedStep &step :
         numbered_steps(features, to_cut, words)) // these first, then what is marked by letters
        steps.add(step.work, std::move(step.row));
    for (const TailedEnd &t : features.tails)
        steps.add(hewing, row_of(t, words));
    add_pockets(features, to_cut, words, steps);
    add_bores(features, to_cut, words, steps);
    return steps;
}

Table headed(std::string title, const Features &features, std::vector<Row> rows, const Words &words) {
    Table table = table_called(words, std::move(title));
    const std::string rise = words.say("Rise"), across = !features.piece->timber
                                                             ? words.say("Across, to the outside")
                                                             : words.say("Across, to the right");
    table.columns = {flush_right(words.say("No."), 10),
                     flush_left(words.say("Cut"), 62),
                     flush_left(words.say("Along, to the end"), 24),
                     flush_left(rise, 40),
                     flush_left(across, 24),
                     flush_left(rise, 40)};
    table.rows = std::move(rows);
    return table;
}

/// Pegs are bored where the plan's rule has them: nobody measured those of an old house.
std::string found_title(const Piece &piece, const Words &words) {
    const bool pegged = std::ranges::any_of(piece.cuts, [](const Cut &cut) {
        const Bore *bore = bore_of(cut);
        return bore && !bore->use;
    });
    return pegged ? words.say("In it already, nothing is cut; pegs are where the plan has them: look where "
                              "its holes are")
                  : words.say("Found in it: nothing is cut there");
}

} // namespace

OldCuts old_cuts(const SheetOptions &options, const Layout &layout, const Model &model) {
    OldCuts old;
    for (const Index<Piece> i : model.pieces) {
        if (!is_old_wood(layout.pieces[i])) continue;
        old.old = true;
        const auto make = options.to_make.holds(i) ? options.to_make[i] : std::nullopt;
        old.known = old.known && make;
        if (!make) continue;
        old.make.resize(make->size());
        for (std::size_t k = 0; k < make->size(); ++k)
            old.make[k] = old.make[k] || (*make)[k];
    }
    return old;
}

std::vector<Table> steps_tables(const Features &features, const OldCuts &old, const Words &words) {
    if (features.piece->cuts.empty()) return {};
    auto [work, there] = all_steps(features, ToCut(*features.piece, old), words);
    if (!old.old) return {headed(words.say("Cuts, in cutting order"), features, std::move(work), words)};
    if (!old.known)
        return {headed(words.say("Old log, of which is not known what it has: look before anything is cut"),
                       features, std::move(work), words)};
    std::vector<Table> tables;
    if (work.empty()) work.push_back(in_words("-", words.say("Nothing: it stays as it was found")));
    tables.push_back(
        headed(words.say("To be cut in this old log, in cutting order"), features, std::move(work), words));
    if (!there.empty())
        tables.push_back(headed(found_title(*features.piece, words), features, std::move(there), words));
    return tables;
}

} // namespace roundlay::sheets
