// How far a house had settled, corner by corner, so that it can be put level on a new foundation.
//
// What tells it are the undersides of the first logs: their levels less their heights. Every log that ends in
// a corner is lifted by what that corner had sunk, and lies straight between its two ends, so that seams,
// gaps and tails meet one another as they did; what the two first logs of a corner were measured to lie apart
// stays as packing under the higher one.
#pragma once

#include "kernel/record/record.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <map>
#include <optional>
#include <string>

namespace roundlay {

struct Settled {
    /// How much higher than the lowest corner a wall's foundation lay at its two ends, in the middle of the
    /// walls that it meets there, mm.
    struct Ends {
        double left = 0, right = 0;
    };
    std::map<std::string, Ends> walls; ///< by name, partitions among them
    double zero_found = 0;             ///< level of the foundation as it was found: the lowest first log's
    double zero = 0;                   ///< the same once all of `walls` is taken out of the levels
    Shell carried;                     ///< as it was stated over the old foundation
    /// Errors where it cannot be told; else a note of each corner that is lifted.
    Findings findings;
};

/// `measured_on`: the shell that the record goes over; `carried`: that of the state under the one that is
/// levelled, whose openings, floors and packing are carried along where their height is not stated otherwise
/// later.
Settled settled(const Shell &measured_on, const Shell &carried, const Record &record);

} // namespace roundlay
