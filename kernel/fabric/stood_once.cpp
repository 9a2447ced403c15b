#include "kernel/fabric/fabric.h"
#include "kernel/record/numbers.h"

namespace roundlay {

std::optional<DecisionProblem> stood_once(const Record &record, const std::optional<Shell> &measured,
                                          const Shell &state) {
    if (!measured || *measured == state) return {};
    if (measured->own_logs != state.own_logs || measured->mends != state.mends) return {};
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const auto &decisions = record.logs[i].decisions;
        if (decisions.empty() || decisions.back().what == Decision::keep) continue;
        return DecisionProblem{
            log_path(i) + ".decision[" + std::to_string(decisions.size() - 1) + "]",
            said(
                "state \"%1\" has no mend and states no log otherwise than as it was found: it is held to be "
                "the house as it once stood, and decisions are not held against it. If it is the house as "
                "it shall stand, state in it what becomes of its logs",
                state.state),
            Weight::note};
    }
    return {};
}

} // namespace roundlay
