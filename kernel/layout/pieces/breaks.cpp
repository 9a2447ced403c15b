#include "kernel/layout/pieces/breaks.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/steps.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Steps side by side are one break.
void add_step(std::vector<Break> &breaks, const StepPlace &step) {
    if (!breaks.empty() && breaks.back().last_step && step.from <= breaks.back().span.to + tolerance::weld) {
        breaks.back().span.to = step.to;
        breaks.back().last_step = &step;
    } else
        breaks.push_back({{step.from, step.to}, nullptr, 0, &step, &step});
}

std::vector<Break> breaks_of(const std::vector<OpeningCut> &openings,
                             const std::vector<WallMeeting> &meetings,
                             const std::vector<const StepPlace *> &steps, const Course &course,
                             const WallNotches &notches, std::size_t index) {
    std::vector<Break> breaks;
    for (const StepPlace *step : steps)
        if (leaves_out(*step, course)) add_step(breaks, *step);
    for (const OpeningCut &c : openings)
        if (c.severs) breaks.push_back({c.span, &c, 0});
    for (std::size_t m = 1; m + 1 < meetings.size(); ++m)
        if (notches[m][index].butts) breaks.push_back({{meetings[m].low, meetings[m].high}, nullptr, m});
    std::sort(breaks.begin(), breaks.end(),
              [](const Break &a, const Break &b) { return a.span.from < b.span.from; });
    return breaks;
}

} // namespace

std::vector<Stretch> stretches_between(const Span &log, const std::vector<Break> &breaks) {
    std::vector<Stretch> all;
    double from = log.from;
    const Break *left = nullptr;
    for (const Break &b : breaks) {
        if (b.span.from > from) all.push_back({{from, b.span.from}, left, &b});
        from = b.span.to;
        left = &b;
    }
    if (log.to > from) all.push_back({{from, log.to}, left, nullptr});
    return all;
}

AllParts parts_of(const Shell &shell, const Plan &plan, const Foundation &foundation, const Courses &courses,
                  const Corners &corners) {
    AllParts all(courses.logs.size());
    for (const auto w : courses.logs.indices()) {
        all[w].resize(courses.logs[w].size());
        for (std::size_t k = 0; k < courses.logs[w].size(); ++k) {
            const Course &course = courses.logs[w][k];
            CourseParts &parts = all[w][k];
            parts.cuts = cuts_of(shell, plan, foundation, w, course);
            parts.breaks = breaks_of(parts.cuts, plan.walls[w].meetings, steps_under(foundation, w, course),
                                     course, corners.notches[w], k);
        }
    }
    return all;
}

} // namespace roundlay
