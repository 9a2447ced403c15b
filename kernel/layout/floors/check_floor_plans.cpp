#include "kernel/layout/floors/floor_plan.h"
#include "kernel/layout/floors/floors.h"

namespace roundlay {

Findings check_floor_plans(const Shell &shell, const Plan &plan) {
    Findings findings;
    for (std::size_t f = 0; f < shell.floors.size(); ++f) {
        const auto floor = plan_floor(shell, plan, f);
        findings.insert(findings.end(), floor.findings.begin(), floor.findings.end());
    }
    return findings;
}

} // namespace roundlay
