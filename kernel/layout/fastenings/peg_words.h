// What is said of joints that hold too few pegs.
#pragma once

#include "kernel/measure/said.h"

#include <string>

namespace roundlay {

/// Fewer fit than are asked for, so of one peg none.
inline Said too_few(const std::string &upper, const std::string &lower, int asked, int fit) {
    if (asked == 1)
        return said(
            "piece %1 on %2 needs 1 peg, but its ends, notches and other bores leave no place for one", upper,
            lower);
    if (fit == 0)
        return said(
            "piece %1 on %2 needs %3 pegs, but its ends, notches and other bores leave no place for one",
            upper, lower, asked);
    return said(
        "piece %1 on %2 needs %3 pegs, and only %4 can stand there between ends, notches and other bores",
        upper, lower, asked, fit);
}

} // namespace roundlay
