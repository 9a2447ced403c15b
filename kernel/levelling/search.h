// Ways to a good arrangement.
#pragma once

#include "kernel/levelling/stacks.h"

#include <optional>

namespace roundlay {

/// Logs as they come: each place, in order, takes the first log left that is long enough, butts changing ends
/// from round to round. Where that runs out of long logs, the longest places take the longest logs. Nothing
/// where no arrangement holds.
std::optional<std::vector<Seat>> as_they_come(const Stacks &stacks);

/// Turns logs round, swaps them and takes spare ones while that helps; then disturbs what it has and tries
/// again, a stated number of times. Deterministic.
std::vector<Seat> improved(const Stacks &stacks, std::vector<Seat> seats);

/// Goes through all arrangements that could be better than `seats`, where there are few enough. Nothing where
/// there are too many; else the best.
std::optional<std::vector<Seat>> proven_best(const Stacks &stacks, std::vector<Seat> seats);

} // namespace roundlay
