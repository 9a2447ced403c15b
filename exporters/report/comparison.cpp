#include "exporters/report/comparison.h"

#include "exporters/lists/compare_table.h"
#include "exporters/report/fitted_wall.h"
#include "exporters/report/list_paper.h"
#include "exporters/report/marks.h"
#include "exporters/sheets/drawing/columns.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

constexpr Along everywhere{-1e9, 1e9};

class Comparison {
  public:
    Comparison(const Draft &before, const Draft &after, const std::vector<ComparedPiece> &pieces)
        : before_(before), after_(after), compared_(pieces),
          pages_(after, {after.words().say("From %1 to %2", before.shell.state, after.shell.state),
                         after.words().say("Two states side by side"), "comparison", ""}),
          words_(pages_.words()) {}

    std::vector<Sheet> draw() {
        pages_.add_text(change_words(compared_, words_));
        pages_.add(key_of(change_marks(words_), pages_.room().width()));
        pages_.add_text(
            words_.say("Dashed: what is gone, where it lay. An unchanged log has its tag alone."));
        for (const auto wall : after_.layout.walls.indices())
            add(after_, wall, true);
        for (const auto wall : before_.layout.walls.indices())
            if (!wall_named(after_.layout, before_.layout.walls[wall].name)) add(before_, wall, false);
        add_list();
        return pages_.finished();
    }

  private:
    void add(const Draft &draft, Index<WallPlace> wall, bool of_after) {
        constexpr double tallest_part = 0.42; // of a page: two walls on each
        const SeenShell seen = seen_wall(draft.layout, draft.bodies, wall, WallSide::outside);
        MarkedWall marked{draft.shell, draft.layout, seen, words_, wall, WallSide::outside,
                          {},          {},           "",   true,   {}};
        marked.areas = of_after ? areas_of(draft.layout.walls[wall].name) : gone_of(wall);
        marked.caption = of_after ? after_.shell.state : before_.shell.state;
        add_wall(pages_, std::move(marked), pages_.room().height() * tallest_part);
    }

    std::vector<MarkedArea> areas_of(const std::string &wall) const {
        std::vector<MarkedArea> areas;
        for (const ComparedPiece &piece : compared_)
            if (piece.after && is_in(after_.layout, *piece.after, wall)) areas.push_back(area_of(piece));
        if (const auto was = wall_named(before_.layout, wall)) {
            const auto gone = gone_of(*was);
            areas.insert(areas.end(), gone.begin(), gone.end());
        }
        return areas;
    }

    MarkedArea area_of(const ComparedPiece &compared) const {
        const Piece &piece = after_.layout.pieces[*compared.after];
        const MarkOf mark = mark_of(compared.what, words_);
        const bool same = compared.what == PieceChange::unchanged;
        return {face_outline(after_.layout, piece, everywhere),
                mark.hatch,
                same ? piece.tag : words_.say("%1 %2", piece.tag, mark.letter),
                false,
                false,
                true};
    }

    std::vector<MarkedArea> gone_of(Index<WallPlace> wall) const {
        std::vector<MarkedArea> areas;
        for (const ComparedPiece &compared : compared_) {
            if (compared.what != PieceChange::gone) continue;
            const Piece &piece = before_.layout.pieces[*compared.before];
            if (!is_log_of(piece, wall)) continue;
            const MarkOf mark = mark_of(compared.what, words_);
            areas.push_back({face_outline(before_.layout, piece, everywhere), mark.hatch,
                             words_.say("%1 %2", piece.tag, mark.letter), true, true, true});
        }
        return areas;
    }

    static bool is_in(const Layout &layout, Index<Piece> piece, const std::string &wall) {
        const Piece &p = layout.pieces[piece];
        return !p.timber && layout.walls[p.wall].name == wall;
    }

    void add_list() {
        const roundlay::Table list = compare_table(compared_, before_.layout, after_.layout, words_);
        if (list.rows.empty()) return;
        pages_.add(
            on_paper(list, words_, words_.say("Every piece that differs"),
                     {"change", "before", "after", "length_before", "length_after", "longer_by", "where"}));
    }

    const Draft &before_, &after_;
    const std::vector<ComparedPiece> &compared_;
    ReportPages pages_;
    const Words &words_;
};

} // namespace

std::vector<Sheet> comparison_sheets(const Draft &before, const Draft &after,
                                     const std::vector<ComparedPiece> &pieces) {
    return Comparison(before, after, pieces).draw();
}

} // namespace roundlay::sheets
