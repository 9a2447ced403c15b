#include "kernel/layout/floors/pocket_wood.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

double highest_over(const Course &course, const Span &taken) {
    return std::max(course.high(taken.from), course.high(taken.to));
}

WoodUnder wood_under(const Shell &shell, const std::string &wall, const Course &course, const Span &taken,
                     double bed) {
    double foot = std::max(course.low(taken.from), course.low(taken.to));
    bool over_opening = false;
    for (const Opening &o : shell.openings) {
        const double top = (o.sill + o.height).mm();
        if (o.wall != wall || o.from_left.mm() >= taken.to || (o.from_left + o.width).mm() <= taken.from ||
            top > bed + tolerance::thinnest || top <= foot)
            continue;
        foot = top;
        over_opening = true;
    }
    return {bed - foot, over_opening};
}

PieceSpan *span_over(CourseSpans &course, const Span &taken) {
    for (PieceSpan &s : course)
        if (s.span.from <= taken.from && s.span.to >= taken.to) return &s;
    return nullptr;
}

std::optional<Index<WallPlace>> notches_at(const WallPlace &wall, const Span &taken) {
    for (const WallMeeting &m : wall.meetings) {
        const double lean = std::abs(m.skew) * wall.thickness / 2;
        if (m.low - lean < taken.to - tolerance::thinnest && m.high + lean > taken.from + tolerance::thinnest)
            return m.other;
    }
    return std::nullopt;
}

WoodBeside wood_beside(const WallPlace &wall, const Span &log, const Span &taken) {
    WoodBeside wood{std::min(taken.from - log.from, log.to - taken.to), std::nullopt};
    for (const WallMeeting &m : wall.meetings) {
        const double lean = std::abs(m.skew) * wall.thickness / 2;
        const double mm = std::max(m.low - lean - taken.to, taken.from - m.high - lean);
        if (mm < wood.mm && mm > -tolerance::clear) wood = {mm, m.other};
    }
    return wood;
}

Bearer bearer_of(const std::vector<CourseSpans> &courses, const Span &taken, double low, double high) {
    Bearer found;
    for (std::size_t k = 0; k < courses.size(); ++k) {
        if (courses[k].empty()) continue; // the foundation stands higher than the whole log
        const Course &course = courses[k].front().course;
        if (!found.first) found.first = &course;
        const double foot = std::max(course.low(taken.from), course.low(taken.to));
        const double top = std::min(course.high(taken.from), course.high(taken.to));
        if (foot < low - tolerance::thinnest && top > high - tolerance::thinnest) {
            found.course = k;
            return found;
        }
        if (course.high((taken.from + taken.to) / 2) < high) found.below = &course;
    }
    return found;
}

} // namespace roundlay
