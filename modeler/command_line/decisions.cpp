#include "modeler/command_line/decisions.h"

#include "exporters/words/words.h"
#include "kernel/fabric/fabric.h"

namespace roundlay {

void add_decision_problems(Input &input, const ExportJob &job) {
    const auto &states = input.read.states;
    if (job.layout.pieces.empty() || (!states.empty() && states.front().name == job.shell.state)) return;
    for (const DecisionProblem &problem : decision_problems(input.read.record, job.layout))
        input.read.problems.push_back({Weight::warning,
                                       input.file,
                                       input.read.places.locate(problem.path).value_or(Place{}),
                                       words_of(problem.what, voice_of(job).speech()),
                                       {}});
}

} // namespace roundlay
