// How the log is laid for its operations, as few times as there can be.
#pragma once

#include "exporters/machining/operation.h"

namespace roundlay::machining {

/// Puts the operations into working order and says of each in which set-up it is made and from where. A tool
/// comes from above or from an end; those that no straight tool reaches stay last, in set-up 0.
std::vector<Setup> lay_for(std::vector<Operation> &operations, const RawStock &raw);

inline constexpr double least_clamped = 200; ///< mm along the log: shorter stretches hold nothing
inline constexpr double clear_of_cuts = 50;  ///< mm that clamps keep from what is cut
inline constexpr double least_flat = 30;     ///< mm of a flat face, up and down: less is no hold

} // namespace roundlay::machining
