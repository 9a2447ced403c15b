// What is stated of one log's sizes: of it alone, or of every log.
#pragma once

#include "kernel/shell/shell.h"

#include <optional>
#include <string>

namespace roundlay {

/// What is stated of one log alone.
LogSizes own_sizes_of(const Shell &shell, const std::string &wall, int round);

/// Under the two ends of a log, where stated of it alone.
struct OwnGaps {
    std::optional<Length> left, right;
};
OwnGaps own_gaps_of(const Shell &shell, const std::string &wall, int round);

/// How far its seams at corners are cut clear of those that they meet, mm.
double own_scribe_of(const Shell &shell, const std::string &wall, int round);

/// Sizes of one log: its own where stated, else those of every log.
LogSizes sizes_of(const Shell &shell, const std::string &wall, int round);

} // namespace roundlay
