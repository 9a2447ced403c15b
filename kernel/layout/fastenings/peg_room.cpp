#include "kernel/layout/fastenings/peg_room.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <array>

namespace roundlay {

namespace {

/// A peg's end keeps this much wood to what an opening takes of the log under it. Common practice, no source.
constexpr double least_under_peg = 25;

} // namespace

bool cuts_through(const Opening &opening, const Course &course, FaceHeight face) {
    const double one = face(course, opening.from_left.mm()),
                 other = face(course, (opening.from_left + opening.width).mm());
    return opening.sill.mm() <= std::max(one, other) + tolerance::thinnest &&
           (opening.sill + opening.height).mm() >= std::min(one, other) - tolerance::thinnest;
}

std::vector<Span> clear_of_openings(const Shell &shell, const std::string &wall, const Course &course,
                                    FaceHeight face, std::vector<Span> free) {
    for (const Opening &o : shell.openings) {
        if (o.wall != wall || !cuts_through(o, course, face)) continue;
        const double keep =
            shell.pegs.diameter.mm() / 2 + tolerance::clear + trim_of(shell, o).spline_depth.mm();
        free = without(free, o.from_left.mm() - keep, (o.from_left + o.width).mm() + keep);
    }
    return free;
}

bool pegs_end_over(const PegRule &rule, const Piece &log, const PieceSpan &lower, const Span &taken,
                   double height) {
    if (rule.depth_below >= 1) return false;
    for (const Cut &cut : log.cuts) {
        const BoxCut *box = header_cut(cut);
        if (!box || box->box.low.x + lower.origin < taken.from - tolerance::weld ||
            box->box.high.x + lower.origin > taken.to + tolerance::weld)
            continue;
        const double foot = height + box->box.high.z;
        const Course &course = lower.course;
        return std::ranges::all_of(std::array{taken.from, taken.to}, [&](double x) {
            return course.high(x) - foot >=
                   rule.depth_below * (course.high(x) - course.low(x)) + least_under_peg;
        });
    }
    return false;
}

} // namespace roundlay
