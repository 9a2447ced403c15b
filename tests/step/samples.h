// Shells whose STEP files are checked, each for what may go wrong with it.
#pragma once

#include "exporters/step/step.h"
#include "kernel/layout/wood/body.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::test {

struct StepSample {
    std::string name; ///< file name without its ending
    Shell shell;
    Layout layout;
    Bodies bodies; ///< by model
    StepOptions options;
    std::optional<Index<Piece>> piece; ///< only this piece, in its own frame

    std::string write() const;
};

std::vector<StepSample> step_samples();
StepSample step_sample(const std::string &name);

} // namespace roundlay::test
