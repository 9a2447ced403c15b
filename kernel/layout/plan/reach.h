// Where a wall meets others, along the wall's own x, and by which rule it is notched there.
#pragma once

#include "kernel/layout/cuts/log_sides.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// All on the wall's centre line.
struct CornerReach {
    double prism_low = 0, prism_high = 0; ///< the crossing wall's two faces
    double cut_low = 0,
           cut_high = 0; ///< what the notch takes: the prism, and past its shoulders where they are deep
    double skew = 0;     ///< how far those faces run toward +x per unit of y
    double shoulder = 0; ///< of an end: where the log's body stops
    double tip = 0;      ///< of an end: of the logs, far face and overhang included
};

/// The meeting at an end of a wall.
std::size_t meeting_at(const WallPlace &wall, End end);

/// Of one log at one meeting. deep: how far shoulders are cut behind the crossing wall's faces.
CornerReach reach_at(const WallPlace &wall, std::size_t meeting, double overhang, double deep);

/// Without overhang and with shoulders in the crossing wall's near face.
CornerReach bare_reach_at(const Plan &plan, Index<WallPlace> wall, End end);

/// The notch rule of a corner: its own, else the shell's.
NotchRule notch_at(const Shell &shell, const Plan &plan, Index<CornerPlace> corner);

/// The rule for one log there: what the log itself states counts before the corner's.
NotchRule notch_at(const Shell &shell, const Plan &plan, Index<CornerPlace> corner, Index<WallPlace> wall,
                   int round);

/// Of one log, by its own rule and overhang.
CornerReach reach_of(const Shell &shell, const Plan &plan, Index<WallPlace> wall, int round,
                     std::size_t meeting);

/// Of the corner's rule: what a log without anything of its own has.
CornerReach full_reach_at(const Shell &shell, const Plan &plan, Index<WallPlace> wall, End end);

/// The stretch between a wall's two ends that is free of notches across its whole thickness.
struct FreeStretch {
    double from = 0, to = 0;
};
FreeStretch free_between(const Plan &plan, Index<WallPlace> wall);

} // namespace roundlay
