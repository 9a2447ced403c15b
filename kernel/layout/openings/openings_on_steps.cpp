#include "kernel/layout/openings/openings_on_steps.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/text.h"

namespace roundlay {

namespace {

/// Wood that is asked for between an opening and a step: beside it, and over it.
bool runs_into(const Opening &o, const StepPlace &step, double beside, double over) {
    if (o.sill.mm() >= step.rise + over) return false;
    const double from = o.from_left.mm(), to = (o.from_left + o.width).mm();
    const bool sunk = o.sill.mm() < step.rise - tolerance::weld;
    if (from >= step.to + beside || to <= step.from - beside) return false;
    if (!sunk && from >= step.from - tolerance::weld && to <= step.to + tolerance::weld) return false;
    return sunk || (from < step.to - tolerance::weld && to > step.from + tolerance::weld);
}

/// Adds findings; false where there is nothing to cut.
bool check(const Shell &shell, const Plan &plan, const StepPlace &step, std::size_t opening,
           Findings &findings) {
    const Opening &o = shell.openings[opening];
    if (o.wall != plan.walls[step.wall].name || !runs_into(o, step, least_beside_step, least_over_step))
        return true;
    const bool cut = runs_into(o, step, no_wood, no_wood);
    findings.push_back({cut ? Weight::error : Weight::warning, "opening-meets-step",
                        opening_place(shell, opening),
                        said("it runs into %1 of the foundation or leaves too little wood beside it",
                             said_of(about::Step{step.number})),
                        said("it fits wholly over the step with a sill of %1 or more, or %2 beside it",
                             no_less(shell, step.rise), no_less(shell, least_beside_step)),
                        subject("opening", opening, "sill")});
    return !cut;
}

} // namespace

Found<Openings> check_openings_on_steps(const Shell &shell, const Plan &plan, const Foundation &foundation,
                                        const Openings &openings) {
    Found<Openings> all{openings, {}};
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        for (const StepPlace &step : foundation.steps)
            if (!all.refused[i]) all.refused[i] = !check(shell, plan, step, i, all.findings);
    return all;
}

} // namespace roundlay
