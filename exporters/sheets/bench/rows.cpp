#include "exporters/sheets/bench/rows.h"

#include "exporters/sheets/cut_sheet/snap.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "kernel/layout/fastenings/bore_marks.h"

#include <algorithm>
#include <set>

namespace roundlay::sheets {
namespace {

void add_lines(std::vector<BenchRow> &rows, const Features &f, const Words &words) {
    const Blank &blank = f.piece->blank;
    rows.push_back({"-", words.say("Blank %1 long, %2 wide, %3 high", in_mm(blank.length), in_mm(blank.width),
                                   in_mm(blank.height))});
    for (const auto &row : snap_table(f, words).rows)
        rows.push_back({row.at(0), row.at(1)});
}

/// An opening's name differs from piece to piece: it stands in a column of its own.
std::string without(std::string words, const std::string &name, const std::string &instead) {
    if (const std::size_t at = words.find(name); !name.empty() && at != std::string::npos)
        words.replace(at, name.size(), instead);
    return words;
}

/// Cuts by the number that the cut sheet gives them.
class Numbered {
  public:
    Numbered(const Features &features, const JointNames &names, const Words &words)
        : f_(features), names_(names), words_(words) {}

    /// The row of such a cut: of the first of a joint the joint's, of its others none.
    void add(std::vector<BenchRow> &rows, const std::vector<std::string> &row, std::string &openings) {
        const std::string &mark = row.at(0);
        for (const Notch &n : f_.notches)
            if (std::to_string(n.number) == mark) return add_joint(rows, n);
        std::string words = row.at(1);
        for (const BoxPart &b : f_.boxes)
            if (std::to_string(b.number) == mark) {
                const std::string name = words_.name(b.cut->opening);
                words = without(words, name, words_.say("its opening"));
                if (!name.empty() && openings.find(name) == std::string::npos)
                    openings += (openings.empty() ? "" : ", ") + name;
            }
        if (row.at(4) != "-" && row.at(4) != words_.say("level"))
            words += words_.say("; across, to the outside, %1: %2", row.at(4), row.at(5));
        rows.push_back({mark, words});
    }

  private:
    void add_joint(std::vector<BenchRow> &rows, const Notch &n) {
        const std::string place = n.cut->runs_on ? n.cut->corner : n.cut->end == End::datum ? "<" : ">";
        if (!done_.insert(place).second) return;
        const std::string proud =
            n.cut->proud > 0 ? words_.say(", leave %1 proud at the shoulders", in_mm(n.cut->proud)) : "";
        if (!n.cut->runs_on) {
            const bool datum = n.cut->end == End::datum;
            const std::string &name = datum ? names_.datum : names_.far;
            rows.push_back({marks_of(n), (datum ? words_.say("Tail %1 at the datum end", name)
                                                : words_.say("Tail %1 at the far end", name)) +
                                             shoulder_words(n) + proud});
            return;
        }
        const SawLine first = first_of(place);
        const std::string outside = words_.length(first.outside), inside = words_.length(first.inside);
        const std::string &name = names_.at_corner.at(place);
        rows.push_back({marks_of(n), (outside == inside
                                          ? words_.say("Notch %1, its first side at %2", name, outside)
                                          : words_.say("Notch %1, its first side at %2 outside and %3 inside",
                                                       name, outside, inside)) +
                                         proud});
    }

    /// The numbers of all cuts of its joint.
    std::string marks_of(const Notch &one) const {
        std::string all;
        for (const Notch &n : f_.notches) {
            const bool same = one.cut->runs_on ? n.cut->runs_on && n.cut->corner == one.cut->corner
                                               : !n.cut->runs_on && n.cut->end == one.cut->end;
            if (same) all += (all.empty() ? "" : ", ") + std::to_string(n.number);
        }
        return all;
    }

    /// Where the log's run ends and the tail begins, or a notch near the end.
    std::string shoulder_words(const Notch &n) const {
        const SawLine &at = n.cut->end == End::datum ? n.to : n.from;
        const std::string outside = words_.length(at.outside), inside = words_.length(at.inside);
        return outside == inside ? words_.say(", its shoulder at %1", outside)
                                 : words_.say(", its shoulder at %1 outside and %2 inside", outside, inside);
    }

    /// Where the joint begins that runs past that corner.
    SawLine first_of(const std::string &corner) const {
        SawLine first{f_.blank.length, f_.blank.length};
        for (const Notch &n : f_.notches)
            if (n.cut->runs_on && n.cut->corner == corner && n.from.outside < first.outside) first = n.from;
        return first;
    }

    const Features &f_;
    const JointNames &names_;
    const Words &words_;
    std::set<std::string> done_;
};

bool is_number(const std::string &mark) {
    return !mark.empty() && std::ranges::all_of(mark, [](char c) { return c >= '0' && c <= '9'; });
}

/// Of a row of the cut sheet's table of pockets.
std::string pocket_words(const std::vector<std::string> &row, const Words &words) {
    const std::string through = words.say("through"), top = words.say("top");
    std::string all =
        words.say("Pocket, its middle at %1, into the %2, %3 deep, %4 wide at the face and %5 at the back",
                  row.at(1), row.at(2), row.at(3), row.at(4), row.at(5));
    all += row.at(6) == through && row.at(7) == through
               ? words.say(", open below")
               : words.say(", its bed at %1 at the face and %2 at the back", row.at(6), row.at(7));
    return all + (row.at(8) == top ? words.say(", open above") : words.say(", up to %1", row.at(8)));
}

void add_pocket_rows(std::vector<BenchRow> &rows, std::string &holds, const Features &f, const Words &words) {
    for (const auto &row : pocket_table(f, words).rows) {
        holds += (holds.empty() ? "" : ", ") + row.at(0) + " " + row.at(9);
        rows.push_back({row.at(0), pocket_words(row, words)});
    }
}

/// Most pegs stand on the log's centre line, however it tapers.
std::string across_words(const Features &f, const Bore &b, const Words &words) {
    const double out = f.outermost(b.x), middle = (f.innermost(b.x) - out) / 2;
    const std::string across = words.length(b.y - out);
    return across == words.length(middle) ? words.say("in the middle")
                                          : words.say("%1 from the outside", across);
}

void add_bores(std::vector<BenchBores> &all, const Features &f, const Words &words) {
    for (const PegHole &peg : f.pegs) {
        const Bore &b = *peg.bore;
        const std::string use = words.word(name_of(b.use)),
                          from = b.from_top ? words.say("top") : words.say("under"),
                          wide = words.length(b.diameter);
        const std::string kind = b.through ? words.say("%1 %2 through from %3", use, wide, from)
                                           : words.say("%1 %2 from %3", use, wide, from);
        auto same = std::ranges::find(all, kind, &BenchBores::kind);
        if (same == all.end()) same = all.insert(all.end(), {kind, {}});
        same->bores.push_back({words.length(b.x),
                               b.through ? "" : words.say("%1 deep", in_mm(b.z_to - b.z_from)),
                               across_words(f, b, words)});
    }
    std::ranges::sort(all, {}, &BenchBores::kind);
}

bool is_of_bores(const std::string &mark) {
    for (const std::optional<BoreUse> use :
         {std::optional<BoreUse>(), std::optional(BoreUse::bolt), std::optional(BoreUse::rod),
          std::optional(BoreUse::wire), std::optional(BoreUse::hole)})
        if (mark == letter_of(use)) return true;
    return false;
}

} // namespace

BenchPiece bench_piece(const Features &features, const JointNames &names, const Words &words) {
    BenchPiece piece;
    add_lines(piece.rows, features, words);
    const std::size_t lines = piece.rows.size();
    Numbered numbered(features, names, words);
    for (const Table &table : steps_tables(features, {}, words))
        for (const auto &row : table.rows) {
            const std::string &mark = row.at(0);
            if (is_number(mark))
                numbered.add(piece.rows, row, piece.openings);
            else if (mark != "K" && !is_of_bores(mark)) // they have rows and places of their own
                piece.rows.push_back({mark, row.at(1)});
        }
    add_pocket_rows(piece.rows, piece.holds, features, words);
    piece.is_cut = piece.rows.size() > lines;
    add_bores(piece.bores, features, words);
    if (!piece.bores.empty())
        piece.rows.push_back({"P", words.say("Bore at the places in the table of pieces")});
    return piece;
}

} // namespace roundlay::sheets
