// How high a shell stands when it is built, beside what its rounds say.
//
// Rounds count the gap over the last log and logs of one height; what stands has no gap on top, and logs as
// they were measured. So people are told both.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// More than this is not taken up by hewing the plate on the wall, mm. Common practice, no source.
inline constexpr double taken_up_by_plate = 10;

struct WallStanding {
    Index<WallPlace> wall;
    int logs = 0;                   ///< one on another, half logs counted
    double lowest = 0, highest = 0; ///< of the tops of its last logs at their ends, from the foundation
};

/// One for each wall; empty where the layout has no pieces.
Indexed<WallStanding, WallPlace> standing_of(const Layout &layout);

/// Of the whole shell: `wall` is the one with the most logs.
WallStanding standing_in_all(const Layout &layout);

/// "2300 mm high", and where the rounds say something else "(2320 mm by its rounds)"; a shell whose walls end
/// at two heights is "2275 to 2300 mm high".
Said height_words(const Layout &layout, UnitSystem units);

/// "9 rounds", and where some walls have more logs than that "(10 logs in walls B and D)".
Said round_words(const Layout &layout);

/// Warns where a shell that is to be closed level ends at more than one height.
std::optional<Finding> check_level_top(const Shell &shell, const Layout &layout);

/// Notes where the walls stand half a round off what the rounds state, since logs' own heights count.
std::optional<Finding> note_pitch_left_out(const Shell &shell, const Layout &layout);

} // namespace roundlay
