#include "modeler/command_line/decisions.h"

#include "exporters/registry/shared_order.h"
#include "exporters/words/words.h"
#include "kernel/fabric/fabric.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Is it a house that decisions about found logs lead to? Where a state is measured, one that changes it:
/// what was there before has nothing to do with them.
bool comes_of_decisions(const ReadResult &read) {
    const auto &states = read.states;
    if (std::ranges::find(states, true, &HouseState::measured) != states.end())
        return read.measured_on && !(*read.measured_on == *read.shell);
    return states.empty() || states.front().name != read.shell->state;
}

template <typename Each> void add_warnings(const std::vector<Each> &all, const ExportJob &job, Input &input) {
    for (const Each &problem : all)
        input.read.problems.push_back({Weight::warning,
                                       input.file,
                                       input.read.places.locate(problem.path).value_or(Place{}),
                                       words_of(problem.what, voice_of(job).speech()),
                                       {}});
}

} // namespace

void add_decision_problems(Input &input, const ExportJob &job) {
    if (job.layout.pieces.empty() || !comes_of_decisions(input.read)) return;
    add_warnings(decision_problems(input.read.record, job.layout), job, input);
}

void add_tick_problems(Input &input, const ExportJob &job) {
    if (input.read.record.done.empty() || job.bodies.empty() || has_errors(job.findings)) return;
    std::vector<std::string> states;
    for (const HouseState &state : input.read.states)
        states.push_back(state.name);
    add_warnings(tick_problems(input.read.record, job.shell, job.layout, raising_order_of(job), states), job,
                 input);
}

} // namespace roundlay
