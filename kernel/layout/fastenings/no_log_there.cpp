#include "kernel/layout/fastenings/no_log_there.h"

#include "kernel/layout/courses/steps.h"
#include "kernel/layout/openings/openings.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

bool touches(const BoredPlace &at, double from, double to) {
    return at.x + at.half > from && at.x - at.half < to;
}

const StepPlace *step_there(const Foundation &foundation, const BoredPlace &at, const Course *course) {
    const auto step = std::ranges::find_if(foundation.steps, [&](const StepPlace &s) {
        return s.wall == at.wall && touches(at, s.from, s.to) && (!course || leaves_out(s, *course));
    });
    return step == foundation.steps.end() ? nullptr : &*step;
}

std::optional<Said> opening_there(const Shell &shell, const WallPlace &wall, const BoredPlace &at,
                                  const Course &course) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        const double from = o.from_left.mm(), to = from + o.width.mm();
        if (o.wall != wall.name || !touches(at, from, to)) continue;
        if (o.sill.mm() < course.high(at.x) && (o.sill + o.height).mm() > course.low(at.x))
            return said_of(opening_of(shell, i));
    }
    return {};
}

/// The corner whose notches are nearest.
const std::string &nearest_corner(const Plan &plan, const WallPlace &wall, double x) {
    const auto nearest =
        std::ranges::min_element(wall.meetings, {}, [&](const WallMeeting &m) { return std::abs(m.x - x); });
    return plan.corners[nearest->corner].name;
}

} // namespace

Said no_log_there(const Shell &shell, const Plan &plan, const Foundation &foundation, const BoredPlace &at,
                  const Course *course) {
    const WallPlace &wall = plan.walls[at.wall];
    const LengthAmount place = in_mm(at.x);
    if (at.x < 0 || at.x > wall.length)
        return said("%1 from the left lies past the ends of wall %2, which is %3 long", place, wall.name,
                    in_mm(wall.length));
    if (const StepPlace *step = step_there(foundation, at, course))
        return said("%1 from the left there is no log, but %2 of the foundation", place,
                    said_of(about::Step{step->number}));
    if (course)
        if (const auto opening = opening_there(shell, wall, at, *course))
            return said("%1 from the left there is no whole log: %2 is there", place, *opening);
    return said("%1 from the left there is no whole log: the notches of corner %2 are there", place,
                nearest_corner(plan, wall, at.x));
}

} // namespace roundlay
