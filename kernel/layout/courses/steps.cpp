#include "kernel/layout/courses/steps.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// A place that is offered is told in whole millimetres or sixteenths of an inch, and does when it is stated
/// so.
constexpr double off_by_print = 1;

const WallPlace &wall_of(const Plan &plan, Index<WallPlace> wall) {
    return plan.walls[wall];
}

std::string name_of_step(std::size_t index) {
    return "step " + std::to_string(index + 1);
}

Said spoken(const StepPlace &step) {
    return said_of(about::Step{step.number});
}

/// Past the longest end that any log of the wall has there.
double past_end(const Shell &shell, const Plan &plan, Index<WallPlace> wall, End end) {
    const WallPlace &w = wall_of(plan, wall);
    const double away = end == End::datum ? -1 : 1;
    double tip = full_reach_at(shell, plan, wall, end).tip;
    for (const OwnLog &own : shell.own_logs) {
        if (own.wall != w.name) continue;
        const double own_tip = reach_of(shell, plan, wall, own.round, meeting_at(w, end)).tip;
        tip = away * std::max(away * tip, away * own_tip);
    }
    return tip + away * w.thickness;
}

class StepPlacer {
  public:
    StepPlacer(const Shell &shell, const Plan &plan, const Heights &heights)
        : shell_(shell), plan_(plan), heights_(heights) {}

    Found<Foundation> placed() {
        place();
        return std::move(made_);
    }

  private:
    bool place() {
        bool good = true;
        for (std::size_t i = 0; i < shell_.steps.size(); ++i)
            good = place_one(i) && good;
        if (!good) return false;
        std::stable_sort(placed_.begin(), placed_.end(), [](const Placed &a, const Placed &b) {
            return std::pair(a.step.wall, a.step.from) < std::pair(b.step.wall, b.step.from);
        });
        for (std::size_t i = 0; i + 1 < placed_.size(); ++i)
            good = apart(placed_[i], placed_[i + 1]) && good;
        for (const Placed &p : placed_)
            made_.steps.push_back(p.step);
        return good && std::ranges::all_of(plan_.corners.indices(),
                                           [&](const auto corner) { return agree_at(corner); });
    }

    struct Placed {
        StepPlace step;
        std::size_t index; ///< in Shell::steps
    };

    bool refuse(std::size_t i, const std::string &code, Said what, std::optional<Said> advice,
                const std::string &key) {
        return say_of(Weight::error, i, code, std::move(what), std::move(advice), key);
    }

    /// True where it can be cut all the same.
    bool say_of(Weight weight, std::size_t i, const std::string &code, Said what, std::optional<Said> advice,
                const std::string &key) {
        const about::Step step{static_cast<int>(i) + 1};
        made_.findings.push_back({weight, code, narrowed(wall_place(shell_.steps[i].wall), step),
                                  std::move(what), std::move(advice), subject("step", i, key)});
        return weight != Weight::error;
    }

    bool place_one(std::size_t i) {
        const FoundationStep &stated = shell_.steps[i];
        const auto w = wall_named(plan_, stated.wall);
        if (!w)
            return refuse(i, "step-without-wall", said("there is no wall %1 in this shell", stated.wall), {},
                          "wall");
        if (!(stated.width.mm() > 0) || !(stated.rise.mm() > 0))
            return refuse(i, "step-empty", said("a step needs a width and a rise above zero"), {}, "width");
        const WallPlace &wall = wall_of(plan_, *w);
        const double from = stated.from_left.mm(), to = from + stated.width.mm();
        if (from < -tolerance::weld || to > wall.length + tolerance::weld)
            return refuse(i, "step-off-wall",
                          said("it runs from %1 to %2, but wall %3 is %4 long", in_mm(from), in_mm(to),
                               wall.name, in_mm(wall.length)),
                          {}, "width");
        const double top = heights_.heights[*w].top;
        if (stated.rise.mm() > top - no_wood)
            return refuse(
                i, "step-over-wall",
                said("it rises %1, but wall %2 is only %3 high", in_mm(stated.rise.mm()), wall.name,
                     in_mm(top)),
                said("at most %1 leaves a log on it", no_more(shell_, std::max(0.0, top - least_over_step))),
                "rise");
        StepPlace step{name_of_step(i), *w, from, to, stated.rise.mm(), static_cast<int>(i) + 1};
        if (!clear_of_meetings(i, wall, step)) return false;
        if (from <= tolerance::weld) step.from = past_end(shell_, plan_, *w, End::datum);
        if (to >= wall.length - tolerance::weld) step.to = past_end(shell_, plan_, *w, End::far);
        placed_.push_back({step, i});
        return true;
    }

    /// What the notches of a meeting take of a wall: the outermost all of it, to its end.
    struct Notched {
        const WallMeeting *meeting = nullptr;
        double low = 0, high = 0;

        bool keeps_clear(double x) const {
            const double room = least_beside_step - off_by_print;
            return x <= low - room || x >= high + room;
        }
        bool holds(double x) const { return x > low - no_wood && x < high + no_wood; }
    };

    std::vector<Notched> notched_in(const WallPlace &wall, const FreeStretch &free) const {
        std::vector<Notched> all;
        for (const WallMeeting &m : wall.meetings) {
            const bool first = &m == &wall.meetings.front(), last = &m == &wall.meetings.back();
            const double lean = std::abs(m.skew) * wall.thickness / 2;
            all.push_back({&m,
                           first  ? -HUGE_VAL
                           : last ? free.to
                                  : m.low - lean,
                           last    ? HUGE_VAL
                           : first ? free.from
                                   : m.high + lean});
        }
        return all;
    }

    /// A notch stands wholly on the step or wholly beside it.
    bool clear_of_meetings(std::size_t i, const WallPlace &wall, const StepPlace &step) {
        const std::vector<Notched> all = notched_in(wall, free_between(plan_, step.wall));
        const auto edge_at = [&](double x, const Notched &notched) {
            if (notched.keeps_clear(x)) return true;
            const std::string &corner = plan_.corners[notched.meeting->corner].name;
            return say_of(
                notched.holds(x) ? Weight::error : Weight::warning, i, "step-cuts-corner",
                said("it ends %1 from the left, in or too near the notches of corner %2", in_mm(x), corner),
                place_beside(wall, all, notched), "from_left");
        };
        for (const Notched &notched : all) {
            if (step.from > tolerance::weld && !edge_at(step.from, notched)) return false;
            if (step.to < wall.length - tolerance::weld && !edge_at(step.to, notched)) return false;
        }
        return true;
    }

    /// Where an end of a step fits to the left and to the right of notches: told as far as there is wall, and
    /// clear of all other notches of it.
    std::optional<Said> place_beside(const WallPlace &wall, const std::vector<Notched> &all,
                                     const Notched &notched) const {
        const auto fits = [&](double x) {
            return x > tolerance::weld && x < wall.length - tolerance::weld &&
                   std::ranges::all_of(all, [x](const Notched &n) { return n.keeps_clear(x); });
        };
        std::optional<LengthAmount> left, right;
        if (std::isfinite(notched.low)) left = no_more(shell_, notched.low - least_beside_step);
        if (std::isfinite(notched.high)) right = no_less(shell_, notched.high + least_beside_step);
        if (left && !fits(left->mm)) left.reset();
        if (right && !fits(right->mm)) right.reset();
        return notched.meeting->ends ? place_or_end(left, right) : place(left, right);
    }

    static std::optional<Said> place(const std::optional<LengthAmount> &left,
                                     const std::optional<LengthAmount> &right) {
        if (left && right) return said("it fits up to %1 or from %2", *left, *right);
        if (left) return said("it fits up to %1", *left);
        if (right) return said("it fits from %1 on", *right);
        return {};
    }

    static Said place_or_end(const std::optional<LengthAmount> &left,
                             const std::optional<LengthAmount> &right) {
        if (left && right)
            return said("it fits up to %1 or from %2, or where it takes the corner in, to the wall's end",
                        *left, *right);
        if (left) return said("it fits up to %1, or where it takes the corner in, to the wall's end", *left);
        if (right)
            return said("it fits from %1 on, or where it takes the corner in, to the wall's end", *right);
        return said("it fits where it takes the corner in, to the wall's end");
    }

    bool apart(const Placed &left, const Placed &right) {
        if (left.step.wall != right.step.wall) return true;
        const double between = right.step.from - left.step.to;
        if (std::abs(between) <= tolerance::weld || between >= least_beside_step) return true;
        return say_of(between < no_wood ? Weight::error : Weight::warning, right.index, "steps-too-close",
                      between < 0
                          ? said("it overlaps step %1", left.step.number)
                          : said("it leaves too little wall between itself and %1", spoken(left.step)),
                      beside(left.step), "from_left");
    }

    /// Where the next one may start: right at its end only where a rule shows where that is.
    Said beside(const StepPlace &step) const {
        const LengthAmount apart = no_less(shell_, least_beside_step), end = no_less(shell_, step.to);
        if (end.mm - step.to > tolerance::weld)
            return said("let it start %1 past the end of that one", apart);
        return said("let it start at %1, where that one ends, or %2 further on", end, apart);
    }

    /// Both walls at a corner stand on the same foundation.
    bool agree_at(Index<CornerPlace> corner) {
        const CornerPlace &place = plan_.corners[corner];
        const StepPlace *a = step_of(place.ends, corner), *b = step_of(place.starts, corner);
        const double rise_a = a ? a->rise : 0, rise_b = b ? b->rise : 0;
        if (std::abs(rise_a - rise_b) <= tolerance::weld) return true;
        const StepPlace *known = a ? a : b;
        const Index<WallPlace> lower = rise_a < rise_b ? place.ends : place.starts;
        const auto placed = std::find_if(placed_.begin(), placed_.end(),
                                         [&](const Placed &p) { return p.step.name == known->name; });
        return refuse(placed->index, "step-at-corner-differs",
                      said("at corner %1 wall %2 stands %3 high and wall %4 %5", place.name,
                           wall_of(plan_, place.ends).name, in_mm(rise_a), wall_of(plan_, place.starts).name,
                           in_mm(rise_b)),
                      said("state a step of wall %1 that takes in that corner with a rise of %2",
                           wall_of(plan_, lower).name, in_mm(std::max(rise_a, rise_b))),
                      "rise");
    }

    const StepPlace *step_of(Index<WallPlace> wall, Index<CornerPlace> corner) const {
        const WallPlace &w = wall_of(plan_, wall);
        std::size_t m = 0;
        while (w.meetings[m].corner != corner)
            ++m;
        return step_at(plan_, made_, wall, m);
    }

    const Shell &shell_;
    const Plan &plan_;
    const Heights &heights_;
    Found<Foundation> made_;
    std::vector<Placed> placed_;
};

} // namespace

Found<Foundation> lay_out_steps(const Shell &shell, const Plan &plan, const Heights &heights) {
    return StepPlacer(shell, plan, heights).placed();
}

const StepPlace *step_at(const Plan &plan, const Foundation &foundation, Index<WallPlace> wall,
                         std::size_t meeting) {
    const double x = wall_of(plan, wall).meetings[meeting].x;
    for (const StepPlace &step : foundation.steps)
        if (step.wall == wall && step.from < x && x < step.to) return &step;
    return nullptr;
}

bool leaves_out(const StepPlace &step, const Course &course) {
    const double from = std::clamp(step.from, course.x_datum, course.x_far);
    const double to = std::clamp(step.to, course.x_datum, course.x_far);
    return std::min(course.high(from), course.high(to)) <= step.rise + tolerance::thinnest;
}

std::vector<const StepPlace *> steps_under(const Foundation &foundation, Index<WallPlace> wall,
                                           const Course &course) {
    std::vector<const StepPlace *> found;
    for (const StepPlace &step : foundation.steps) {
        if (step.wall != wall || step.from >= course.x_far || step.to <= course.x_datum) continue;
        const double from = std::max(step.from, course.x_datum), to = std::min(step.to, course.x_far);
        if (step.rise > std::min(course.low(from), course.low(to)) - course.lip + tolerance::thinnest)
            found.push_back(&step);
    }
    return found;
}

double floor_under(const Foundation &foundation, Index<WallPlace> wall, double from, double to) {
    double lowest = HUGE_VAL, reached = from;
    for (const StepPlace &step : foundation.steps) {
        if (step.wall != wall || step.to <= from || step.from >= to) continue;
        if (step.from > reached + tolerance::weld) return 0;
        reached = step.to;
        lowest = std::min(lowest, step.rise);
    }
    return lowest < HUGE_VAL && reached >= to - tolerance::weld ? lowest : 0;
}

namespace {

Finding warning(const std::string &wall, const StepPlace &step, const Course &course, const std::string &code,
                Said what, Said advice) {
    return {Weight::warning,
            code,
            narrowed(round_place(wall, course.round), about::Step{step.number}),
            std::move(what),
            std::move(advice),
            "step"};
}

std::optional<Finding> warning_of(const Shell &shell, const std::string &wall, const StepPlace &step,
                                  const std::vector<Course> &courses) {
    const auto first =
        std::find_if(courses.begin(), courses.end(), [&](const Course &c) { return !leaves_out(step, c); });
    if (first == courses.end()) return {}; // an error of its own: step-over-wall
    const double from = std::max(step.from, first->x_datum), to = std::min(step.to, first->x_far);
    const double hangs = std::min(first->low(from), first->low(to)) - step.rise;
    if (hangs > tolerance::clear)
        return warning(wall, step, *first, "log-over-step",
                       said("the lowest log over the step lies %1 above it", in_mm(hangs)),
                       said("a rise of %1 would carry it, else that much is to be packed",
                            no_less(shell, step.rise + hangs)));
    const double left = std::min(first->high(from), first->high(to)) - step.rise;
    if (left < least_over_step)
        return warning(wall, step, *first, "thin-wood-on-step",
                       said("the step leaves only %1 of the log that lies on it", in_mm(left)),
                       said("a rise of %1 would start at the next one, and %2 leave enough",
                            no_less(shell, step.rise + left),
                            no_more(shell, step.rise - least_over_step + left)));
    return {};
}

} // namespace

Findings warn_of_steps(const Shell &shell, const Plan &plan, const Foundation &foundation,
                       const Courses &courses) {
    Findings findings;
    for (const StepPlace &step : foundation.steps) {
        if (auto found = warning_of(shell, plan.walls[step.wall].name, step, courses.logs[step.wall]))
            findings.push_back(std::move(*found));
    }
    return findings;
}

} // namespace roundlay
