#include "modeler/command_line/decisions.h"

#include "exporters/registry/shared_order.h"
#include "exporters/words/words.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/unrecorded.h"

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

template <typename Each> Weight weight_of(const Each &) {
    return Weight::warning;
}
Weight weight_of(const DecisionProblem &problem) {
    return problem.weight;
}

template <typename Each> void add(const Each &problem, const ExportJob &job, Input &input) {
    input.read.problems.push_back({weight_of(problem),
                                   input.file,
                                   input.read.places.locate(problem.path).value_or(Place{}),
                                   words_of(problem.what, voice_of(job).speech()),
                                   {}});
}

template <typename Each> void add_all(const std::vector<Each> &all, const ExportJob &job, Input &input) {
    for (const Each &problem : all)
        add(problem, job, input);
}

} // namespace

void add_decision_problems(Input &input, const ExportJob &job) {
    const Layout &found = found_layout(job);
    add_all(places_past_log(input.read.record, found), job, input);
    if (job.layout.pieces.empty() || !comes_of_decisions(input.read)) return;
    if (const auto once = stood_once(input.read.record, input.read.measured_on, *input.read.shell))
        return add(*once, job, input);
    add_all(decision_problems(input.read.record, job.layout, &found), job, input);
    if (const auto anew = kept_and_cut_anew(input.read.record, job.layout, found)) add(*anew, job, input);
    if (const auto unknown = unrecorded_and_ordered(input.read.record, job.layout)) add(*unknown, job, input);
    add_all(harm_that_stays(input.read.record, job.shell, job.layout, found), job, input);
}

void add_tick_problems(Input &input, const ExportJob &job) {
    if (input.read.record.done.empty() || job.bodies.empty() || has_errors(job.findings)) return;
    std::vector<std::string> states;
    for (const HouseState &state : input.read.states)
        states.push_back(state.name);
    add_all(tick_problems(input.read.record, job.shell, job.layout, raising_order_of(job), states), job,
            input);
}

} // namespace roundlay
