// Partitions that come, move and go in a shell, with what hangs on them.
#pragma once

#include "kernel/shell/shell.h"

#include <optional>
#include <string>

namespace roundlay {

/// The first letter that names no wall, partition or floor, which share their names; else `otherwise` with a
/// number.
std::string free_part_name(const Shell &shell, char otherwise);

/// The shell with one more partition, square to the outer wall `from`, its middle `from_left` along that
/// wall's outside, up to the outer wall across. Its name is the first letter that no wall has. Nothing where
/// there is no such wall, or the place is not on it, or no wall across.
/// `to`: up to that wall or partition instead, where somebody points at one.
std::optional<Shell> with_partition(const Shell &shell, const std::string &from, Length from_left,
                                    const std::string &to = {});

/// The shell with a partition moved along the wall that it starts in, so that it starts at `from_left`. A
/// partition square to that wall ends in the wall that is across then. Nothing as for with_partition.
std::optional<Shell> partition_moved(const Shell &shell, std::size_t partition, Length from_left);

/// The shell without a partition and without its openings, corners, own logs, bores and steps, the floors
/// that lie on it and the partitions that start or end in it. As it was where there is none of that name.
Shell without_partition(const Shell &shell, const std::string &name);

} // namespace roundlay
