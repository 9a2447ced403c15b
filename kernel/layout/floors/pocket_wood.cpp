#include "kernel/layout/floors/pocket_wood.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>

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

} // namespace roundlay
