#include "kernel/layout/assembly.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/mends/mends.h"
#include "kernel/layout/piece_places.h"
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

/// New wood is raised with the log that it comes into.
Indexed<double, Piece> centres_now(const MendedPieces &mended, const Indexed<double, Piece> &before) {
    Indexed<double, Piece> centres(mended.pieces.size());
    for (const auto i : before.indices())
        centres[mended.now[i]] = before[i];
    for (const auto i : mended.pieces.indices())
        if (const auto log = mended.pieces[i].mends) centres[i] = centres[*log];
    return centres;
}

/// The piece that a peg's hole is in, of a log and the new wood behind it.
Index<Piece> bored_for(const Indexed<Piece> &pieces, Index<Piece> log, Index<Peg> peg) {
    const auto holds = [&](Index<Piece> i) {
        return std::ranges::any_of(pieces[i].cuts, [&](const Cut &cut) {
            const Bore *bore = bore_of(cut);
            return bore != nullptr && bore->peg == peg;
        });
    };
    if (holds(log)) return log;
    const auto comes = new_wood_in(pieces, log);
    const auto bored = std::ranges::find_if(comes, holds);
    return bored == comes.end() ? log : *bored;
}

/// Pegs and timbers name pieces by their place in the list.
void place_anew(const MendedPieces &mended, Layout &layout) {
    for (Timber &timber : layout.timbers)
        timber.piece = mended.now[timber.piece];
    for (const auto i : layout.pegs.indices()) {
        Peg &peg = layout.pegs[i];
        peg.upper = bored_for(mended.pieces, mended.now[peg.upper], i);
        peg.lower = bored_for(mended.pieces, mended.now[peg.lower], i);
    }
}

/// Only now, as the rules for bores, mends and places above hold for them too.
void leave_unbored(Indexed<Piece> &pieces) {
    for (Piece &piece : pieces)
        std::erase_if(piece.cuts, [](const Cut &cut) {
            const Bore *bore = bore_of(cut);
            return bore != nullptr && bore->peg;
        });
}

} // namespace

Layout assembled(const Shell &shell, Stages &stages) {
    Layout layout;
    layout.name = called(shell);
    static_cast<Plan &>(layout) = std::move(static_cast<Plan &>(stages.plan));
    static_cast<Heights &>(layout) = static_cast<const Heights &>(stages.courses);
    static_cast<Foundation &>(layout) = std::move(static_cast<Foundation &>(stages.foundation));
    if (!all_stand(stages)) return layout;
    Indexed<Piece> pieces = all_pieces(stages);
    const Indexed<double, Piece> centres = centres_of(pieces.size(), stages);
    Found<MendedPieces> mended = mend(shell, layout, std::move(pieces));
    stages.mends = std::move(mended.findings);
    if (has_errors(stages.mends)) return layout;
    layout.floors = std::move(stages.floors.floors);
    layout.timbers = std::move(stages.floors.timbers);
    layout.pegs = std::move(stages.pegs.pegs);
    place_anew(mended, layout);
    const Indexed<double, Piece> centres_of_all = centres_now(mended, centres);
    layout.pieces = std::move(mended.pieces);
    if (shell.pegs.bored == PegBoring::in_place) leave_unbored(layout.pieces);
    layout.models = group_models(layout.pieces);
    order_raise(layout.pieces, centres_of_all);
    return layout;
}

} // namespace roundlay
