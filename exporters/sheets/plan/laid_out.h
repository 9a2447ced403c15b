// What a foundation is laid out and checked by: door gaps, angles of corners, diagonals.
#pragma once

#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Where no sill log lies because a door stands there, from the wall's left outside corner, mm.
struct DoorGap {
    std::string name;
    Index<WallPlace> wall;
    double from = 0, to = 0;
};
/// Of doors that no log lies under, in the order of Shell::openings.
std::vector<DoorGap> door_gaps(const Shell &shell, const Layout &layout);

struct CornerAngle {
    std::string name;    ///< "AB"
    std::size_t at = 0;  ///< of outside_corners
    double degrees = 90; ///< between the inside faces, 0 to 360
};
/// Corners of the outer walls that are neither 90 nor 270 degrees, to a twentieth of one.
std::vector<CornerAngle> odd_angles(const Layout &layout);
/// "112.5°"
std::string said_angle(double degrees, const Words &words);

struct Diagonal {
    std::string from, to; ///< corners, "AB"
    double length = 0;    ///< mm, outside corner to outside corner
};
/// Between all corners that are no neighbours; of plans with many corners from two of them alone, which with
/// the walls' lengths is enough.
std::vector<Diagonal> diagonals(const Layout &layout);

} // namespace roundlay::sheets
