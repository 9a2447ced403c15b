#include "kernel/layout/assembly.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/pieces/models.h"

#include <algorithm>
#include <utility>

namespace roundlay {

namespace {

template <typename Kind> void cut(Indexed<Piece> &pieces, const std::vector<CutIn<Kind>> &cuts) {
    for (const auto &[piece, made] : cuts)
        pieces[piece].cuts.emplace_back(made);
}

/// Bores come last, from the datum end on, as they are marked out.
void sort_bores(Indexed<Piece> &pieces) {
    for (Piece &p : pieces) {
        const auto bores =
            std::stable_partition(p.cuts.begin(), p.cuts.end(), [](const Cut &c) { return !bore_of(c); });
        std::stable_sort(bores, p.cuts.end(),
                         [](const Cut &a, const Cut &b) { return bore_of(a)->x < bore_of(b)->x; });
    }
}

void note_neighbours(Indexed<Piece> &pieces, const std::vector<LogsThatMeet> &meetings) {
    for (const auto &[upper, lower] : meetings) {
        Piece &u = pieces[upper], &l = pieces[lower];
        u.below.push_back(l.tag);
        l.above.push_back(u.tag);
    }
}

/// Height of each piece's log in the middle of the piece.
Indexed<double, Piece> centres_of(std::size_t pieces, const Stages &stages) {
    Indexed<double, Piece> centres(pieces);
    for (const auto &wall : stages.pieces.spans)
        for (const CourseSpans &course : wall)
            for (const PieceSpan &s : course)
                centres[s.piece] = (s.course.datum.centre + s.course.far.centre) / 2;
    for (const Timber &t : stages.floors.timbers)
        centres[t.piece] = t.laid_at;
    return centres;
}

Indexed<Piece> all_pieces(Stages &stages) {
    Indexed<Piece> pieces = std::move(stages.pieces.pieces);
    for (Piece &piece : stages.floors.pieces)
        pieces.push_back(std::move(piece));
    cut(pieces, stages.floors.pockets);
    cut(pieces, stages.bores.bores);
    cut(pieces, stages.pegs.bores);
    sort_bores(pieces);
    note_neighbours(pieces, stages.pegs.meetings);
    return pieces;
}

} // namespace

Layout assembled(const Shell &shell, Stages &stages) {
    Layout layout;
    layout.name = called(shell);
    static_cast<Plan &>(layout) = std::move(static_cast<Plan &>(stages.plan));
    static_cast<Heights &>(layout) = static_cast<const Heights &>(stages.courses);
    static_cast<Foundation &>(layout) = std::move(static_cast<Foundation &>(stages.foundation));
    if (!all_stand(stages)) return layout;
    layout.pieces = all_pieces(stages);
    layout.models = group_models(layout.pieces);
    order_raise(layout.pieces, centres_of(layout.pieces.size(), stages));
    layout.floors = std::move(stages.floors.floors);
    layout.timbers = std::move(stages.floors.timbers);
    layout.pegs = std::move(stages.pegs.pegs);
    return layout;
}

} // namespace roundlay
