#include "kernel/layout/layout.h"

#include "kernel/layout/models.h"
#include "kernel/layout/pegs.h"
#include "kernel/layout/plan.h"
#include "kernel/layout/steps.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Bores come last, from the datum end on, as they are marked out.
void sort_bores(Layout &layout) {
    const auto is_bore = [](const Cut &c) { return std::holds_alternative<Bore>(c); };
    for (Piece &p : layout.pieces) {
        const auto bores = std::stable_partition(p.cuts.begin(), p.cuts.end(), [&](const Cut &c) { return !is_bore(c); });
        std::stable_sort(bores, p.cuts.end(), [](const Cut &a, const Cut &b) {
            const Bore &p1 = std::get<Bore>(a), &p2 = std::get<Bore>(b);
            return p1.x < p2.x;
        });
    }
}

/// Height of each piece's log in the middle of the piece.
std::vector<double> centres_of(const Layout &layout, const std::vector<std::vector<CourseSpans>> &spans) {
    std::vector<double> centres(layout.pieces.size());
    for (const auto &wall : spans)
        for (const CourseSpans &course : wall)
            for (const PieceSpan &s : course)
                centres[static_cast<std::size_t>(s.piece)] = (s.course->datum.centre + s.course->far.centre) / 2;
    return centres;
}

} // namespace

Layout lay_out(const Shell &shell) {
    Layout layout;
    layout.name = shell.name;
    lay_out_plan(shell, layout);
    if (layout.walls.empty()) return layout;
    const auto courses = lay_out_courses(shell, layout);
    if (courses.empty()) return layout;
    if (!lay_out_steps(shell, layout)) return layout;
    const auto notches = lay_out_corners(shell, layout, courses);
    if (!check_openings(shell, layout) || !check_openings_on_steps(shell, layout) || notches.empty()) return layout;
    warn_of_steps(shell, layout, courses);
    warn_of_slivers(shell, layout, courses);
    const auto spans = lay_out_pieces(shell, layout, courses, notches);
    if (!lay_out_pegs(shell, layout, spans)) {
        layout.pieces.clear();
        layout.pegs.clear();
        return layout;
    }
    sort_bores(layout);
    group_models(layout);
    order_raise(layout, centres_of(layout, spans));
    return layout;
}

} // namespace roundlay
