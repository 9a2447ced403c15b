#include "kernel/layout/lay_out.h"

#include "kernel/layout/advice/alternation_advice.h"
#include "kernel/layout/advice/floor_advice.h"
#include "kernel/layout/advice/opening_advice.h"
#include "kernel/layout/advice/sliver_advice.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/fastenings/bores.h"
#include "kernel/layout/fastenings/pegs.h"
#include "kernel/layout/floors/floors.h"
#include "kernel/layout/openings/openings_on_steps.h"
#include "kernel/layout/pieces/models.h"
#include "kernel/layout/plan/plan.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Bores come last, from the datum end on, as they are marked out.
void sort_bores(Layout &layout) {
    for (Piece &p : layout.pieces) {
        const auto bores =
            std::stable_partition(p.cuts.begin(), p.cuts.end(), [](const Cut &c) { return !bore_of(c); });
        std::stable_sort(bores, p.cuts.end(),
                         [](const Cut &a, const Cut &b) { return bore_of(a)->x < bore_of(b)->x; });
    }
}

/// Height of each piece's log in the middle of the piece.
std::vector<double> centres_of(const Layout &layout, const std::vector<std::vector<CourseSpans>> &spans) {
    std::vector<double> centres(layout.pieces.size());
    for (const auto &wall : spans)
        for (const CourseSpans &course : wall)
            for (const PieceSpan &s : course)
                centres[static_cast<std::size_t>(s.piece)] =
                    (s.course->datum.centre + s.course->far.centre) / 2;
    for (const Timber &t : layout.timbers)
        centres[static_cast<std::size_t>(t.piece)] = t.laid_at;
    return centres;
}

/// Better no shell than half a one.
void clear_pieces(Layout &layout) {
    layout.pieces.clear();
    layout.pegs.clear();
    layout.floors.clear();
    layout.timbers.clear();
}

/// `advises`: what a warning says would mend it is tried first, by laying the shell out so.
Layout laid_out(const Shell &shell, bool advises) {
    Layout layout;
    layout.name = shell.name;
    lay_out_plan(shell, layout);
    if (layout.walls.empty()) return layout;
    const auto courses = lay_out_courses(shell, layout);
    if (courses.empty()) return layout;
    if (!lay_out_steps(shell, layout)) return layout;
    const auto notches = lay_out_corners(shell, layout, courses);
    const auto tried = [](const Shell &other) { return laid_out(other, false); };
    if (advises) advise_on_alternation(shell, layout, courses, tried);
    if (!check_openings(shell, layout) || !check_trim(shell, layout) ||
        !check_openings_on_steps(shell, layout) || notches.empty()) {
        if (advises) advise_on_openings(shell, layout, tried);
        return layout;
    }
    warn_of_steps(layout, courses);
    const auto slivers = warn_of_slivers(shell, layout, courses);
    note_level_sills(shell, layout, courses);
    auto spans = lay_out_pieces(shell, layout, courses, notches);
    std::vector<FloorMove> moves;
    if (has_errors(layout.findings) || !lay_out_floors(shell, layout, spans, moves) ||
        !lay_out_bores(shell, layout, spans) || !lay_out_pegs(shell, layout, spans)) {
        clear_pieces(layout);
        if (advises)
            advise_on_floors(shell, layout, moves, tried), advise_on_walls_of_floors(shell, layout, tried);
        return layout;
    }
    sort_bores(layout);
    group_models(layout);
    order_raise(layout, centres_of(layout, spans));
    check_level_top(shell, layout);
    note_pitch_left_out(shell, layout);
    if (!advises) return layout;
    advise_on_floors(shell, layout, moves, tried);
    advise_on_slivers(shell, layout, slivers, tried);
    return layout;
}

} // namespace

Layout lay_out(const Shell &shell) {
    return laid_out(shell, true);
}

Layout lay_out_to_try(const Shell &shell) {
    return laid_out(shell, false);
}

} // namespace roundlay
