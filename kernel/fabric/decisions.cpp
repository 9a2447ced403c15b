#include "kernel/fabric/along_log.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/standing.h"
#include "kernel/layout/piece_places.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/measured/found_piece.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/record/found_words.h"
#include "kernel/record/numbers.h"

#include <algorithm>
#include <map>

namespace roundlay {

namespace {

std::string decision_path(std::size_t log, std::size_t decision) {
    return log_path(log) + ".decision[" + std::to_string(decision) + "]";
}

/// Of one timber, or one log that was cut up.
bool belong_together(const FoundLog &a, const FoundLog &b) {
    const auto names = [](const FoundLog &log, const std::string &tag) {
        return std::ranges::find(log.scarfed_to, tag) != log.scarfed_to.end();
    };
    return names(a, b.tag) || names(b, a.tag) || (!a.cut_from.empty() && a.cut_from == b.cut_from);
}

class Checking {
  public:
    Checking(const Record &record, const Layout &layout, const Layout *found)
        : record_(record), layout_(layout), found_(found) {}

    std::vector<DecisionProblem> problems() {
        for (const DecidedLog &log : decided_logs(record_, layout_))
            if (!log.what)
                check_undecided(log);
            else
                stays(*log.what) ? check(log) : check_gone(log);
        return std::move(problems_);
    }

  private:
    const FoundLog &of(const DecidedLog &log) const { return record_.logs[log.log]; }
    static const FoundPlace &place_of(const FoundLog &log) {
        const FoundDecision &last = log.decisions.back();
        return last.what == Decision::use_elsewhere ? last.to : log.place;
    }

    void tell(const DecidedLog &log, Said what) {
        problems_.push_back({decision_path(log.log, of(log).decisions.size() - 1), std::move(what)});
    }

    void check(const DecidedLog &decided) {
        const FoundLog &log = of(decided);
        if (is_gone(log))
            return tell(decided,
                        said("log %1 is recorded as missing and cannot stay: replace it, or leave it "
                             "out",
                             log.tag));
        const FoundPlace &place = place_of(log);
        if (!place.timber.empty()) return check_timber(decided);
        if (place.wall.empty() || !place.round) return; // nobody knows where it lay
        const bool stays_there = decided.what != Decision::use_elsewhere;
        if (stays_there && check_stands(decided)) return;
        const auto pieces = stays_there ? own_pieces(decided) : pieces_at(layout_, place);
        if (pieces.empty())
            return tell(decided,
                        said("log %1 is to lie in wall %2, round %3, and the shell has no such log: decide "
                             "otherwise, or mend the place",
                             log.tag, place.wall, *place.round));
        check_alone(decided, pieces);
        if (decided.what == Decision::mend) check_mended(decided, pieces);
        if (decided.what == Decision::keep || decided.what == Decision::turn) check_unmended(decided, pieces);
        if (decided.what != Decision::use_elsewhere) return check_stays(decided, pieces);
        if (pieces.size() > 1)
            return tell(decided,
                        said("openings part round %1 of wall %2 into %3 logs: say which piece log %4 "
                             "becomes",
                             *place.round, place.wall, pieces.size(), log.tag));
        check_left(decided);
        check_welcome(decided, layout_.pieces[pieces.front()]);
        check_fit(decided, layout_.pieces[pieces.front()]);
    }

    /// A floor's timbers are of one wood, and no mend is drawn in them: what becomes of one is told by its
    /// decision.
    void check_timber(const DecidedLog &decided) {
        const auto pieces = own_pieces(decided);
        if (pieces.empty())
            return tell(decided,
                        said("timber %1 is to stay, and this state has no timber %2: decide otherwise, or "
                             "state its floor",
                             of(decided).tag, of(decided).place.timber));
        const Piece &piece = layout_.pieces[pieces.front()];
        check_alone(decided, pieces);
        if (piece.fabric == Fabric::replacement)
            tell(decided,
                 said("timber %1 is to stay, and the floor of %2 is stated to be a replacement: state "
                      "fabric = \"kept\" of the floor, or decide otherwise",
                      of(decided).tag, piece.tag));
        const auto length = taken(of(decided).length);
        if (const double needed = stock_of(piece).size.length; length && *length + tape_tolerance < needed)
            tell(decided, said("log %1 is %2 long, and %3 needs %4: it is too short for that place",
                               of(decided).tag, in_mm(*length), piece.tag, in_mm(needed)));
    }

    /// Where a log is that stays in its place: openings that come or go count those of a round anew.
    std::vector<Index<Piece>> own_pieces(const DecidedLog &decided) const {
        std::vector<Index<Piece>> own;
        if (found_)
            for (const Index<Piece> was : pieces_at(*found_, of(decided).place))
                for (const Index<Piece> is : standing_as(*found_, was, layout_))
                    if (std::ranges::find(own, is) == own.end()) own.push_back(is);
        return own.empty() ? pieces_at(layout_, of(decided).place) : own;
    }

    /// New wood in its place, where openings were closed or a replacement is stated. True if told.
    bool check_stands(const DecidedLog &decided) {
        if (!found_) return false;
        for (const Index<Piece> was : pieces_at(*found_, of(decided).place)) {
            if (!standing_as(*found_, was, layout_).empty()) continue;
            const Piece *is = log_over(found_->pieces[was]);
            if (!is) continue; // the shell has no such log, which is told
            tell(decided, said("log %1 is to stay, and in its place, where it was found %2 long, %3 is shown "
                               "as new wood, %4 long: decide otherwise, or state the old log there; as it is "
                               "it is not counted as old wood that stays",
                               of(decided).tag, in_mm(found_->pieces[was].blank.length), is->tag,
                               in_mm(is->blank.length)));
            return true;
        }
        return false;
    }

    /// The log that lies over the most of where that piece of the house as found lay. Null: none does.
    const Piece *log_over(const Piece &was) const {
        const AlongWall old = along_wall(found_->walls, was);
        const Piece *over = nullptr;
        double most = 0;
        for (const Piece &is : layout_.pieces) {
            if (!is_log(is) || is.round != was.round ||
                layout_.walls[is.wall].name != found_->walls[was.wall].name)
                continue;
            const AlongWall along = along_wall(layout_.walls, is);
            const double shared = std::min(old.to, along.to) - std::max(old.from, along.from);
            if (shared > most) most = shared, over = &is;
        }
        return over;
    }

    /// It cannot lie in its old place as well.
    void check_left(const DecidedLog &decided) {
        for (const Index<Piece> index : decided.found_as) {
            const Piece &piece = layout_.pieces[index];
            if (piece.fabric != Fabric::kept && piece.fabric != Fabric::patched) continue;
            if (another_comes_to(index)) continue;
            return tell(decided,
                        said("log %1 goes elsewhere, and %2, where it was found, is shown as old wood still: "
                             "state what stands there in this state",
                             of(decided).tag, piece.tag));
        }
    }

    /// New wood that is stated there is not the log that comes.
    void check_welcome(const DecidedLog &decided, const Piece &piece) {
        if (piece.fabric != Fabric::replacement) return;
        tell(decided,
             said("log %1 is to become %2, and that is shown as new wood: state fabric = \"kept\" of "
                  "it in this state; as it is the log is not counted as old wood that stays",
                  of(decided).tag, piece.tag));
    }

    /// A mend is decided in the record and drawn in the shell.
    void check_mended(const DecidedLog &decided, const std::vector<Index<Piece>> &pieces) {
        if (mended_of(pieces)) return;
        tell(decided, said("log %1 is to be mended, and %2 is shown whole: state the [[mend]] of it in this "
                           "state",
                           of(decided).tag, layout_.pieces[pieces.front()].tag));
    }

    /// What stays as it is has no new wood.
    void check_unmended(const DecidedLog &decided, const std::vector<Index<Piece>> &pieces) {
        const Piece *piece = mended_of(pieces);
        if (!piece) return;
        tell(decided, decided.what == Decision::keep
                          ? said("log %1 is to be kept as it is, and %2 puts new wood into it, in %3: decide "
                                 "to mend it, or take the mend out of this state",
                                 of(decided).tag, mend_of(*piece), piece->tag)
                          : said("log %1 is to be turned end for end, and %2 puts new wood into it, in %3: "
                                 "one decision holds, so decide to mend it and say in its note that it is "
                                 "turned, or take the mend out of this state",
                                 of(decided).tag, mend_of(*piece), piece->tag));
    }

    const Piece *mended_of(const std::vector<Index<Piece>> &pieces) const {
        const auto mended =
            std::ranges::find_if(pieces, [&](auto piece) { return !layout_.pieces[piece].mended.empty(); });
        return mended == pieces.end() ? nullptr : &layout_.pieces[*mended];
    }

    static std::string mend_of(const Piece &piece) {
        return "mend[" + std::to_string(piece.mended.front()) + "]";
    }

    /// A mend is drawn, and nobody has said that the log is to be mended.
    void check_undecided(const DecidedLog &decided) {
        if (const Piece *piece = mended_of(own_pieces(decided)))
            problems_.push_back({log_path(decided.log), said("nobody has decided what becomes of log %1, and "
                                                             "%2 puts new wood into it, in %3: decide to "
                                                             "mend it, or take the mend out of this state",
                                                             of(decided).tag, mend_of(*piece), piece->tag)});
    }

    /// It was decided so, and does the shell show it?
    void check_gone(const DecidedLog &decided) {
        if (const Piece *piece = mended_of(decided.found_as); piece && !comes_another_to(decided.found_as))
            return tell(decided,
                        said("log %1 is decided “%2”, and %3 puts new wood into it, in %4: decide to "
                             "mend it, or take the mend out of this state",
                             of(decided).tag, said_of(*decided.what), mend_of(*piece), piece->tag));
        for (const Index<Piece> index : decided.found_as) {
            const Piece &piece = layout_.pieces[index];
            if (piece.fabric != Fabric::kept && piece.fabric != Fabric::patched) continue;
            if (another_comes_to(index)) continue;
            if (piece.timber)
                return tell(
                    decided,
                    said("timber %1 goes, and the floor of %2 is shown as old wood: its timbers are of "
                         "one wood in the model, so that nothing is ordered for it; order it by hand",
                         of(decided).tag, piece.tag));
            return tell(decided, decided.what == Decision::replace
                                     ? said("log %1 is to be replaced, and %2 is shown as old wood: state "
                                            "fabric = \"replacement\" of it in this state",
                                            of(decided).tag, piece.tag)
                                     : said("log %1 is to be left out, and %2 is shown as old wood: state "
                                            "what stands there in this state",
                                            of(decided).tag, piece.tag));
        }
    }

    bool comes_another_to(const std::vector<Index<Piece>> &pieces) const {
        return std::ranges::any_of(pieces, [&](auto piece) { return another_comes_to(piece); });
    }
    bool another_comes_to(Index<Piece> piece) const {
        return std::ranges::any_of(record_.logs, [&](const FoundLog &log) {
            if (log.decisions.empty() || log.decisions.back().what != Decision::use_elsewhere) return false;
            const auto there = pieces_at(layout_, log.decisions.back().to);
            return std::ranges::find(there, piece) != there.end();
        });
    }

    /// In its own place, as it is or turned.
    void check_stays(const DecidedLog &decided, const std::vector<Index<Piece>> &pieces) {
        if (pieces.size() > 1) return; // which of them it is was not recorded
        const FoundLog &log = of(decided);
        const Piece &piece = layout_.pieces[pieces.front()];
        const auto length = taken(log.length);
        if (const double needed = stock_of(piece).size.length; length && *length + tape_tolerance < needed)
            tell(decided, said("log %1 is %2 long, and %3 needs %4: it is too short for that place", log.tag,
                               in_mm(*length), piece.tag, in_mm(needed)));
        const auto butt = end_at(record_, layout_, piece.wall, log.butt);
        if (decided.what == Decision::turn && !butt && is_old_wood(piece)) // as it was measured
            return tell(decided,
                        said("log %1 is to be turned end for end, and the corner that its butt lies in "
                             "was never recorded, so that nothing of %2 turns: record its butt",
                             log.tag, piece.tag));
        if (decided.what == Decision::turn && butt && (*butt == LogEnd::left) == piece.butt_at_datum)
            tell(decided, said("log %1 is to be turned end for end, and the butt of %2 is shown where it was "
                               "found: state its butt at the other end in this state",
                               log.tag, piece.tag));
    }

    /// No other log comes to lie there.
    void check_alone(const DecidedLog &decided, const std::vector<Index<Piece>> &pieces) {
        for (const Index<Piece> piece : pieces) {
            const auto [other, first] = taken_.emplace(piece, decided.log);
            if (first || other->second == decided.log) continue;
            const FoundLog &there = record_.logs[other->second];
            if (belong_together(of(decided), there)) continue;
            return tell(decided, said("logs %1 and %2 are both to lie at %3: one of them goes elsewhere",
                                      there.tag, of(decided).tag, layout_.pieces[piece].tag));
        }
    }

    void check_fit(const DecidedLog &decided, const Piece &piece) {
        const FoundLog &log = of(decided);
        const Blank needed = stock_of(piece).size;
        const auto length = log.length.value ? std::optional(log.length.value->mm()) : std::nullopt;
        check_size(decided, length, needed.length,
                   said("log %1 is %2 long, and %3 needs %4: it is too short for that place", log.tag,
                        in_mm(length.value_or(0)), piece.tag, in_mm(needed.length)));
        const auto height = least(log, &FoundEnd::height, &FoundStation::height);
        check_size(decided, height, needed.height,
                   said("log %1 is %2 high where it is lowest, and %3 needs %4: it is too low for that place",
                        log.tag, in_mm(height.value_or(0)), piece.tag, in_mm(needed.height)));
        const auto width = least(log, &FoundEnd::width, &FoundStation::width);
        check_size(decided, width, needed.width,
                   said("log %1 is %2 wide where it is narrowest, and %3 needs %4: it is too narrow for that "
                        "place",
                        log.tag, in_mm(width.value_or(0)), piece.tag, in_mm(needed.width)));
        if (!length) check_length_as_found(decided, piece, needed.length);
        if (!length || !height || !width)
            tell(decided, said("log %1 is to become %2, and its length, height and width are not all "
                               "recorded: measure them before anything is cut",
                               log.tag, piece.tag));
    }

    /// Nobody has taped it: by the house as it was found.
    void check_length_as_found(const DecidedLog &decided, const Piece &piece, double needed) {
        const FoundLog &log = of(decided);
        const Layout &found = found_ ? *found_ : layout_;
        const Piece *was = piece_at(found, log.place);
        if (!was || was->blank.length + tape_tolerance >= needed) return;
        tell(decided,
             said("log %1 is %2 long in the house as it was found, where nobody taped it, and %3 needs "
                  "%4: it is too short for that place",
                  log.tag, in_mm(was->blank.length), piece.tag, in_mm(needed)));
    }

    void check_size(const DecidedLog &decided, const std::optional<double> &is, double needed, Said what) {
        constexpr double told = 3; // mm, as much as a plane takes: our choice, no source
        if (is && *is < needed - told) tell(decided, std::move(what));
    }

    const Record &record_;
    const Layout &layout_;
    const Layout *found_; ///< null: it is this one, or not known
    std::map<Index<Piece>, std::size_t> taken_;
    std::vector<DecisionProblem> problems_;
};

} // namespace

std::vector<DecisionProblem> decision_problems(const Record &record, const Layout &layout,
                                               const Layout *found) {
    if (found && (found == &layout || found->pieces.empty())) found = nullptr;
    return Checking(record, layout, found).problems();
}

} // namespace roundlay
