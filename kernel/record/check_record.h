// What the record says against itself, and numbers that cannot be.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/record/record.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

struct RecordProblem {
    bool refused = false;               ///< else it is kept as it stands, and a person should look
    std::string path;                   ///< where it stands: "found[3].end[0].height"
    Said what;                          ///< one sentence: what, and what to do
    std::optional<OpenNote> lacks = {}; ///< of a number that stays open: what its sheet does not say ...
    std::string written = {};           ///< ... and how it was noted
};

/// Gives every number the value that it has by its sheet. Told are notes that are no length, that stay open
/// until their sheet says more, and lengths that nothing on a log can have.
std::vector<RecordProblem> read_numbers(Record &record);

/// The same for a list: where many numbers stay open for want of one thing, the first stands for all of them.
std::vector<RecordProblem> told_once(std::vector<RecordProblem> problems);

/// Once its numbers are read. Tags that are missing or stand twice, logs that name what is not there, numbers
/// that exclude one another, and such as look as if they were noted in another unit than their neighbours.
std::vector<RecordProblem> contradictions(const Record &record);

} // namespace roundlay
