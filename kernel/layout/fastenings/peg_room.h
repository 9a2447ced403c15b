// Where openings leave a log whole for pegs.
#pragma once

#include "kernel/layout/fastenings/pegs.h"

namespace roundlay {

/// A face of a log over the foundation, at x of its wall.
using FaceHeight = double (*)(const Course &, double);

/// Whether an opening of its wall cuts through that face of a log, within its width.
bool cuts_through(const Opening &opening, const Course &course, FaceHeight face);

/// Less where an opening cuts through that face of the log over or under a joint: what is bored there opens
/// into it, though it may take nothing of the joint's own logs.
std::vector<Span> clear_of_openings(const Shell &shell, const std::string &wall, const Course &course,
                                    FaceHeight face, std::vector<Span> free);

/// Whether pegs end well over what an opening took from the underside of a lower log, of that piece at that
/// height over the foundation.
bool pegs_end_over(const PegRule &rule, const Piece &log, const PieceSpan &lower, const Span &taken,
                   double height);

} // namespace roundlay
