#include "modeler/command_line/decisions.h"

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

} // namespace

void add_decision_problems(Input &input, const ExportJob &job) {
    if (job.layout.pieces.empty() || !comes_of_decisions(input.read)) return;
    for (const DecisionProblem &problem : decision_problems(input.read.record, job.layout))
        input.read.problems.push_back({Weight::warning,
                                       input.file,
                                       input.read.places.locate(problem.path).value_or(Place{}),
                                       words_of(problem.what, voice_of(job).speech()),
                                       {}});
}

} // namespace roundlay
