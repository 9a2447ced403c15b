// What no arrangement can beat.
#pragma once

#include "kernel/levelling/stacks.h"

namespace roundlay {

struct LevelBounds {
    double squares = 0, worst = 0;
};

/// A log that brings an excess a to a wall's end changes the error there from e to e + a. So e*e +
/// (e+a)*(e+a) is at least a*a/2, whatever e was, and one of the two errors is at least |a|/2. Summed up a
/// wall every error counts in at most two such pairs: the squares of all errors are at least a quarter of the
/// squares of all excesses. Of a pile with spare logs the mildest count.
LevelBounds level_bounds(const Stacks &stacks);

} // namespace roundlay
