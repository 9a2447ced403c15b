#include "exporters/report/comparison.h"

#include "exporters/lists/compare_table.h"
#include "exporters/report/fitted_wall.h"
#include "exporters/report/marks.h"
#include "exporters/report/plan_drawing.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/schedule/list_paper.h"

#include <algorithm>
#include <limits>
#include <map>
#include <optional>

namespace roundlay::sheets {

namespace {

constexpr Along everywhere{-1e9, 1e9};
constexpr double tallest_wall = 0.36, tallest_plan = 0.36; ///< of a page: both states of one stand on it

/// One of the two states, with what the comparison says of its pieces.
class OneState {
  public:
    OneState(const Draft &draft, const Layout &other, const std::vector<ComparedPiece> &compared, bool before,
             const Words &words)
        : draft_(draft), other_(other), compared_(compared), before_(before), words_(words) {}

    const Draft &draft() const { return draft_; }
    std::string called() const {
        const std::string &state = draft_.shell.state;
        return before_ ? words_.say("before, %1", state) : words_.say("after, %1", state);
    }

    /// Every log of the wall, with its tag and the letter of its change.
    std::vector<MarkedArea> areas(Index<WallPlace> wall) const {
        std::vector<MarkedArea> areas;
        each_log_of(wall, [&](const ComparedPiece &compared, const Piece &piece) {
            const MarkOf mark = mark_here(compared);
            areas.push_back({face_outline(draft_.layout, piece, everywhere), mark.hatch,
                             words_on(compared, piece, mark), false, false, true});
        });
        return areas;
    }

    /// "N 3, + 2": how many logs of the wall differ, by the letter of their change.
    std::string counts(Index<WallPlace> wall) const {
        std::map<std::string, int> counts;
        each_log_of(wall, [&](const ComparedPiece &compared, const Piece &) {
            if (compared.what != PieceChange::unchanged) ++counts[mark_here(compared).letter];
        });
        std::string all;
        for (const auto &[letter, count] : counts)
            all += (all.empty() ? "" : ", ") + letter + " " + std::to_string(count);
        return all;
    }

    /// A wall that the other state does not have at all.
    Hatch hatch_on_plan(Index<WallPlace> wall) const {
        if (wall_named(other_, draft_.layout.walls[wall].name)) return Hatch::none;
        return mark_of(before_ ? PieceChange::gone : PieceChange::added, words_).hatch;
    }

  private:
    template <typename Visit> void each_log_of(Index<WallPlace> wall, Visit visit) const {
        for (const ComparedPiece &compared : compared_)
            if (const auto index = before_ ? compared.before : compared.after)
                if (const Piece &piece = draft_.layout.pieces[*index]; is_log_of(piece, wall))
                    visit(compared, piece);
    }

    /// Old wood that goes is gone wood before, and new wood in its place is new after, whatever else differs.
    MarkOf mark_here(const ComparedPiece &compared) const {
        MarkOf mark = mark_of(compared.what, words_);
        if (!compared.new_wood) return mark;
        const MarkOf wood = mark_of(before_ ? PieceChange::gone : PieceChange::added, words_);
        const bool nothing_else = compared.what == PieceChange::retold;
        return {wood.hatch, nothing_else ? wood.letter : mark.letter + wood.letter, wood.meaning};
    }

    std::string words_on(const ComparedPiece &compared, const Piece &piece, const MarkOf &mark) const {
        if (compared.what == PieceChange::unchanged) return piece.tag;
        if (compared.what != PieceChange::moved) return words_.say("%1 %2", piece.tag, mark.letter);
        return before_
                   ? words_.say("%1 %2 to %3", piece.tag, mark.letter, other_.pieces[*compared.after].tag)
                   : words_.say("%1 %2 from %3", piece.tag, mark.letter, other_.pieces[*compared.before].tag);
    }

    const Draft &draft_;
    const Layout &other_;
    const std::vector<ComparedPiece> &compared_;
    bool before_;
    const Words &words_;
};

class Comparison {
  public:
    Comparison(const Draft &before, const Draft &after, const std::vector<ComparedPiece> &pieces)
        : compared_(pieces), pages_(after, after.words().say("Two states side by side")),
          words_(pages_.words()), before_(before, after.layout, pieces, true, words_),
          after_(after, before.layout, pieces, false, words_) {}

    std::vector<Sheet> draw() {
        const Layout &was = before_.draft().layout, &is = after_.draft().layout;
        pages_.begin_part(
            words_.say("From %1 to %2", before_.draft().shell.state, after_.draft().shell.state),
            "comparison");
        pages_.add_text(change_words(compared_, words_));
        pages_.add(key_of(change_marks(words_), pages_.room().width()));
        pages_.add_text(words_.say(
            "Each wall as it is before, and under it as it is after. An unchanged log has its tag alone. New "
            "wood in the place of an old log is marked N, and that old log G. A log that moved tells the tag "
            "that it has in the other state."));
        add_plans();
        for (const auto wall : is.walls.indices())
            add(wall_named(was, is.walls[wall].name), wall);
        for (const auto wall : was.walls.indices())
            if (!wall_named(is, was.walls[wall].name)) add(wall, {});
        add_list();
        return pages_.finished();
    }

  private:
    void add_plans() {
        const auto marks_of = [&](const OneState &state) {
            return PlanMarks{[&state](Index<WallPlace> wall) { return state.counts(wall); },
                             [](const std::string &corner) { return corner; },
                             [&state](Index<WallPlace> wall) { return state.hatch_on_plan(wall); },
                             words_.say("Plan: %1", state.called())};
        };
        const PlanMarks before = marks_of(before_), after = marks_of(after_);
        const double tallest = pages_.room().height() * tallest_plan;
        const Scale *scale = plan_scale({{&before_.draft(), &before}, {&after_.draft(), &after}}, words_,
                                        pages_.room().width(), tallest);
        if (scale == nullptr) return;
        pages_.hold();
        pages_.add(drawn_plan(before_.draft(), before, words_, *scale));
        pages_.add(drawn_plan(after_.draft(), after, words_, *scale));
        pages_.add_text(words_.say("Beside each wall: how many of its logs differ, by the letter of their "
                                   "change. Hatched: a wall that the other state does not have."));
        pages_.release();
    }

    /// Both on one page, to one scale.
    void add(std::optional<Index<WallPlace>> was, std::optional<Index<WallPlace>> is) {
        const double tallest = pages_.room().height() * tallest_wall;
        double ratio = std::numeric_limits<double>::infinity();
        const auto each = [&](const OneState &state, std::optional<Index<WallPlace>> wall,
                              const auto &visit) {
            if (!wall) return;
            const Draft &draft = state.draft();
            const SeenShell seen = seen_wall(draft.layout, draft.bodies, *wall, WallSide::outside);
            visit(MarkedWall{draft.shell,
                             draft.layout,
                             seen,
                             words_,
                             *wall,
                             WallSide::outside,
                             state.areas(*wall),
                             {},
                             state.called(),
                             true,
                             {}});
        };
        const auto fit = [&](const MarkedWall &wall) {
            if (const double own = ratio_of(pages_, wall, tallest); own > 0) ratio = std::min(ratio, own);
        };
        const auto draw = [&](const MarkedWall &wall) { add_wall(pages_, wall, tallest, ratio); };
        each(before_, was, fit), each(after_, is, fit);
        pages_.hold();
        each(before_, was, draw), each(after_, is, draw);
        pages_.release();
    }

    void add_list() {
        const roundlay::Table list =
            compare_table(compared_, before_.draft().layout, after_.draft().layout, words_);
        if (list.rows.empty()) return;
        pages_.add(on_paper(
            list, words_, words_.say("Every piece that differs"),
            {"change", "before", "after", "length_before", "length_after", "longer_by", "moved", "where"}));
    }

    const std::vector<ComparedPiece> &compared_;
    ReportPages pages_;
    const Words &words_;
    OneState before_, after_;
};

} // namespace

std::vector<Sheet> comparison_sheets(const Draft &before, const Draft &after,
                                     const std::vector<ComparedPiece> &pieces) {
    return Comparison(before, after, pieces).draw();
}

} // namespace roundlay::sheets
