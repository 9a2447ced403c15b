// What a person states of a mend, against the log that it is of.
#pragma once

#include "kernel/layout/mends/mend_region.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/finding.h"

#include <optional>

namespace roundlay {

/// The log that a mend names; an error where it names none, or more than one.
std::optional<Index<Piece>> log_of_mend(const Shell &shell, std::size_t mend, const Plan &plan,
                                        const Indexed<Piece> &pieces, Findings &findings);

/// What it takes of that log; an error where it cannot, a warning where practice would replace the log.
std::optional<MendRegion> region_of_mend(const Shell &shell, std::size_t mend, const Piece &log,
                                         Findings &findings);

} // namespace roundlay
