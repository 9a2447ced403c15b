#include "exporters/lists/compare_table.h"

#include "exporters/lists/cut_words.h"
#include "exporters/lists/list_cells.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/pieces/wood_difference.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

constexpr std::array all_changes{PieceChange::unchanged, PieceChange::added,   PieceChange::gone,
                                 PieceChange::longer,    PieceChange::shorter, PieceChange::recut,
                                 PieceChange::moved,     PieceChange::retold};

std::string in_words(PieceChange what, const Voice &voice) {
    switch (what) {
    case PieceChange::unchanged:
        return voice.say("unchanged");
    case PieceChange::added:
        return voice.say("new");
    case PieceChange::gone:
        return voice.say("gone");
    case PieceChange::longer:
        return voice.say("longer");
    case PieceChange::shorter:
        return voice.say("shorter");
    case PieceChange::recut:
        return voice.say("re-cut");
    case PieceChange::moved:
        return voice.say("moved");
    case PieceChange::retold:
        break;
    }
    return voice.say("finish or note");
}

Said counted(PieceChange what, int count) {
    switch (what) {
    case PieceChange::unchanged:
        return said("%1 unchanged", count);
    case PieceChange::added:
        return said("%1 new", count);
    case PieceChange::gone:
        return said("%1 gone", count);
    case PieceChange::longer:
        return said("%1 longer", count);
    case PieceChange::shorter:
        return said("%1 shorter", count);
    case PieceChange::recut:
        return said("%1 re-cut", count);
    case PieceChange::moved:
        return said("%1 moved", count);
    case PieceChange::retold:
        break;
    }
    return said("%1 finish or note", count);
}

/// What only the first has.
std::vector<std::string> only_in(const std::vector<std::string> &a, std::vector<std::string> b) {
    std::vector<std::string> only;
    for (const std::string &words : a)
        if (const auto same = std::ranges::find(b, words); same != b.end())
            b.erase(same);
        else
            only.push_back(words);
    return only;
}

class Rows {
  public:
    Rows(const Layout &before, const Layout &after, const Voice &voice)
        : before_(before), after_(after), voice_(voice) {}

    std::vector<Entry> row(const ComparedPiece &piece) const {
        const Piece *was = piece.before ? &before_.pieces[*piece.before] : nullptr,
                    *is = piece.after ? &after_.pieces[*piece.after] : nullptr;
        const auto [lost, gained] = cuts(was, is);
        return {words_of_change(piece),
                was ? was->tag : "",
                is ? is->tag : "",
                was ? voice_.length(length_of(*was)) : "",
                is ? voice_.length(length_of(*is)) : "",
                piece.longer == 0 ? "" : signed_length(piece.longer),
                where_to(piece),
                was && is ? differences(piece.what, *was, *is, lost.empty() && gained.empty())
                          : std::vector<std::string>(),
                was ? Entry(number(length_of(*was), mm_decimals)) : Entry(std::string()),
                is ? Entry(number(length_of(*is), mm_decimals)) : Entry(std::string()),
                number(piece.longer, mm_decimals),
                number(piece.along, mm_decimals),
                number(piece.up, mm_decimals),
                piece.section ? voice_.say("yes") : std::string(),
                lost,
                gained,
                tags(piece)};
    }

  private:
    std::string words_of_change(const ComparedPiece &piece) const {
        const bool another = piece.before && piece.after &&
                             lay_at(before_.pieces[*piece.before], after_.pieces[*piece.after]) != nullptr;
        if (piece.what == PieceChange::retold && another) return voice_.say("another log");
        if (!piece.new_wood) return in_words(piece.what, voice_);
        const bool nothing_else = piece.what == PieceChange::retold;
        return (nothing_else ? "" : in_words(piece.what, voice_) + ", ") + voice_.say("new wood");
    }

    /// Where the log that is there now lay before, by what is written on it; null where it is the same log,
    /// or nobody can tell.
    const Piece *lay_at(const Piece &was, const Piece &is) const {
        if (is.mark.empty() || is.mark == was.mark) return nullptr;
        const auto before = std::ranges::find(before_.pieces, is.mark, &Piece::mark);
        return before == before_.pieces.end() ? nullptr : &*before;
    }

    /// What is told of it beside its wood's shape.
    void add_told(std::vector<std::string> &all, const Piece &was, const Piece &is) const {
        if (const Piece *there = lay_at(was, is))
            all.push_back(voice_.say("log %1, which lay at %2", is.mark, there->tag));
        else if (is.mark != was.mark)
            all.push_back(is.mark.empty() ? voice_.say("no more: %1", was.mark)
                                          : voice_.say("written on it: %1", is.mark));
        if (is.finish != was.finish)
            all.push_back(voice_.say("finish: %1, before %2", voice_.word(name_of(is.finish)),
                                     voice_.word(name_of(was.finish))));
        if (is.fabric != was.fabric)
            all.push_back(voice_.say("wood: %1, before %2", voice_.word(name_of(is.fabric)),
                                     voice_.word(name_of(was.fabric))));
        if (is.note != was.note)
            all.push_back(is.note.empty() ? voice_.say("its note is gone") : voice_.say("note: %1", is.note));
    }

    /// Of one that moved: from where to where.
    std::string where_to(const ComparedPiece &piece) const {
        if (piece.what != PieceChange::moved) return "";
        const Piece &was = before_.pieces[*piece.before], &is = after_.pieces[*piece.after];
        if (is_log(was) && is_log(is) && was.round == is.round &&
            before_.walls[was.wall].name == after_.walls[is.wall].name)
            return voice_.say("%1 along its wall", signed_length(piece.along));
        return voice_.say("from %1 to %2", place_of(before_, was), place_of(after_, is));
    }

    std::string place_of(const Layout &layout, const Piece &piece) const {
        return is_log(piece) ? voice_.say("wall %1, round %2", layout.walls[piece.wall].name, piece.round)
                             : piece.tag;
    }

    static bool is_cut_anew(PieceChange what) {
        return what == PieceChange::recut || what == PieceChange::longer || what == PieceChange::shorter;
    }

    /// "+3 mm at the left end", for a log; of both ends, where both differ.
    void add_ends(std::vector<std::string> &all, double datum, double far, const Said &left,
                  const Said &right, const Said &both) const {
        constexpr double told = 0.5; // mm: less is printed as nothing
        const bool at_datum = std::abs(datum) >= told, at_far = std::abs(far) >= told;
        if (at_datum && at_far)
            all.push_back(
                voice_.say("%1: %2 and %3", voice_.words(both), signed_length(datum), signed_length(far)));
        else if (at_datum || at_far)
            all.push_back(voice_.say("%1: %2", voice_.words(at_datum ? left : right),
                                     signed_length(at_datum ? datum : far)));
    }

    /// What is not told by the cuts that go and come: those are told by whole millimetres.
    std::vector<std::string> differences(PieceChange what, const Piece &was, const Piece &is,
                                         bool no_cut_told) const {
        std::vector<std::string> all;
        if (what != PieceChange::unchanged) add_told(all, was, is);
        const std::size_t told_before = all.size();
        if (!is_cut_anew(what)) return all;
        const WoodDifference differs = wood_difference(was, is);
        add_ends(all, differs.height_datum, differs.height_far, said("height at its left end"),
                 said("height at its right end"), said("heights at its left and right end"));
        add_ends(all, differs.width_datum, differs.width_far, said("width at its left end"),
                 said("width at its right end"), said("widths at its left and right end"));
        add_ends(all, differs.shoulder_datum, differs.shoulder_far, said("length of its left tail"),
                 said("length of its right tail"), said("lengths of its left and right tail"));
        const bool none = all.size() == told_before;
        if (none && !piece_grew(what) && !differs.cuts && no_cut_told) // hewn by less than is printed
            all.push_back(voice_.say("its cuts, each by less than %1", voice_.length(1)));
        constexpr double anything = 0.02; // mm: measuring by small steps leaves as much
        if (all.size() > told_before || piece_grew(what) || differs.cuts.value_or(0) < anything) return all;
        constexpr double told = 0.5;
        all.push_back(*differs.cuts >= told
                          ? voice_.say("places of its cuts: up to %1", voice_.length(*differs.cuts))
                          : voice_.say("places of its cuts: less than %1", voice_.length(1)));
        return all;
    }
    static bool piece_grew(PieceChange what) { return what != PieceChange::recut; }

    static double length_of(const Piece &piece) { return stock_of(piece).size.length; }

    std::string signed_length(double mm) const { return (mm > 0 ? "+" : "-") + voice_.length(std::abs(mm)); }

    std::pair<std::vector<std::string>, std::vector<std::string>> cuts(const Piece *was,
                                                                       const Piece *is) const {
        if (!was || !is) return {};
        const auto old = cut_words(*was, voice_), now = cut_words(*is, voice_);
        return {only_in(old, now), only_in(now, old)};
    }

    std::vector<std::string> tags(const ComparedPiece &piece) const {
        std::vector<std::string> all;
        for (const Index<Piece> other : piece.where)
            all.push_back((piece.after ? before_ : after_).pieces[other].tag);
        return all;
    }

    const Layout &before_, &after_;
    const Voice &voice_;
};

} // namespace

const char *key_of(PieceChange what) {
    switch (what) {
    case PieceChange::unchanged:
        return "unchanged";
    case PieceChange::added:
        return "new";
    case PieceChange::gone:
        return "gone";
    case PieceChange::longer:
        return "longer";
    case PieceChange::shorter:
        return "shorter";
    case PieceChange::recut:
        return "re-cut";
    case PieceChange::moved:
        return "moved";
    case PieceChange::retold:
        break;
    }
    return "retold";
}

Table compare_table(const std::vector<ComparedPiece> &pieces, const Layout &before, const Layout &after,
                    const Voice &voice) {
    Table table{{{"change", voice.say("change")},
                 {"before", voice.say("before")},
                 {"after", voice.say("after")},
                 {"length_before", voice.say("length before")},
                 {"length_after", voice.say("length after")},
                 {"longer_by", voice.say("longer by")},
                 {"moved", voice.say("moved")},
                 {"differs", voice.say("what differs")},
                 {"length_before_mm", ""},
                 {"length_after_mm", ""},
                 {"longer_by_mm", ""},
                 {"moved_along_mm", ""},
                 {"moved_up_mm", ""},
                 {"other_section", ""},
                 {"cuts_before_only", voice.say("cuts that go")},
                 {"cuts_after_only", voice.say("cuts that come")},
                 {"where", voice.say("in its place")}},
                {}};
    const Rows rows(before, after, voice);
    for (const ComparedPiece &piece : pieces)
        if (piece.what != PieceChange::unchanged) table.rows.push_back(rows.row(piece));
    return table;
}

std::map<PieceChange, int> change_counts(const std::vector<ComparedPiece> &pieces) {
    std::map<PieceChange, int> counts;
    for (const PieceChange what : all_changes)
        counts[what] = 0;
    for (const ComparedPiece &piece : pieces)
        ++counts[piece.what];
    return counts;
}

std::string change_words(const std::vector<ComparedPiece> &pieces, const Voice &voice) {
    std::string text;
    for (const auto &[what, count] : change_counts(pieces))
        if (count > 0 || what == PieceChange::unchanged)
            text += (text.empty() ? "" : ", ") + voice.words(counted(what, count));
    const auto renewed = std::ranges::count(pieces, true, &ComparedPiece::new_wood);
    if (renewed > 0) text += "; " + voice.say("old wood replaced: %1", renewed);
    return text;
}

} // namespace roundlay
