// What a newcomer adds next, worked out for the shell at hand.
#pragma once

#include "kernel/shell/shell.h"

#include <vector>

namespace roundlay {

enum class SampleKind { door, partition, floor };

/// The shell with this one thing more.
struct Sample {
    SampleKind kind = SampleKind::door;
    Shell shell;
};

/// A door, a partition and a floor, in this order. Each was tried: alone or all together, the shell has no
/// errors and no warnings. What fits nowhere is left out. Lays the shell out some hundreds of times.
std::vector<Sample> samples_for(const Shell &shell);

} // namespace roundlay
