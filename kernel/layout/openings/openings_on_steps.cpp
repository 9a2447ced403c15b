#include "kernel/layout/openings/openings_on_steps.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/openings/openings.h"
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

} // namespace

bool check_openings_on_steps(const Shell &shell, Layout &layout) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        for (const StepPlace &step : layout.steps) {
            const Opening &o = shell.openings[i];
            if (o.wall != layout.walls[static_cast<std::size_t>(step.wall)].name ||
                !runs_into(o, step, least_beside_step, least_over_step))
                continue;
            const bool cut = runs_into(o, step, no_wood, no_wood);
            layout.findings.push_back(
                {cut ? Weight::error : Weight::warning, "opening-meets-step", opening_place(shell, i),
                 said("it runs into %1 of the foundation or leaves too little wood beside it",
                      said_of(about::Step{step.number})),
                 said("it fits wholly over the step with a sill of %1 or more, or %2 beside it",
                      in_mm(step.rise), in_mm(least_beside_step)),
                 subject("opening", i, "sill")});
            if (cut) return false;
        }
    return true;
}

} // namespace roundlay
