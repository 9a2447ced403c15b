// Logs that bring a wall's top level may end a hair over a window. Others, as level, may not.
#pragma once

#include "kernel/levelling/levelling.h"

namespace roundlay {

/// Counts the places where the arrangement `after` leaves a sliver of a log beside an opening, and looks for
/// one that leaves fewer, brings no other warning instead, and is as level: its largest error is no larger,
/// or no larger than what a plate takes up. Before that it looks for one whose rounds openings part as they
/// do the stated shell's, without which its logs cannot be laid as they were chosen. If there is one, it
/// becomes `after`, and `most_level` is what was. Deterministic; not every arrangement is tried.
void shun_slivers(const Shell &shell, const std::vector<PileLog> &pile, Levelled &levelled);

} // namespace roundlay
