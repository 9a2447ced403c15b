// Where walls stand and meet.
#pragma once

#include "kernel/geometry/vec.h"
#include "kernel/layout/index.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

enum class CornerKind {
    corner,  ///< both walls end here
    tee,     ///< a partition ends against a wall that runs on
    crossing ///< both walls run on
};

struct WallPlace;

/// Where two walls meet. Each has an outward direction there: `ends` to the right seen from its outside,
/// `starts` to the left, whether it ends there or runs on.
struct CornerPlace {
    std::string name; ///< "AB": wall A ends here and wall B starts (seen from outside, left to right)
    Index<WallPlace> ends, starts;
    bool reentrant = false; ///< an inside corner of an L: log ends show indoors
    Vec2 centre;            ///< where the two centre lines cross
    CornerKind kind = CornerKind::corner;
    std::optional<Index<WallPlace>> runs_on =
        std::nullopt; ///< of a tee: the wall that does not end here, `ends` or `starts`
};

/// What a wall sees of one place where it meets another, in its own x on its centre line.
struct WallMeeting {
    Index<CornerPlace> corner;
    Index<WallPlace> other;
    double x = 0;             ///< where the centre lines cross
    double low = 0, high = 0; ///< the crossing wall's two faces
    bool ends = true;         ///< this wall ends here, else it runs on
    double skew = 0; ///< how far those faces run toward +x per unit of y; 0 where the walls are square
};

/// A wall where it stands. Frame: origin at the wall's left outside corner at the foundation, x along the
/// wall to the right seen from outside, y inward, z up. A partition's origin lies in the near face of the
/// wall it starts in, and its length is the clear one between the two.
struct WallPlace {
    std::string name;
    Frame frame;
    double length = 0; ///< outside face, corner to corner; of a partition: face to face
    double thickness = 0;
    bool starts_full = true;
    Index<CornerPlace> start_corner, end_corner;
    std::vector<WallMeeting> meetings; ///< from left to right: the first and the last are its two ends
};

/// The plan of a shell: its walls and where they meet. Nothing is known of heights yet.
struct Plan {
    Indexed<WallPlace> walls;     ///< in the order of Shell::walls, then of Shell::partitions
    Indexed<CornerPlace> corners; ///< in walking order, counter-clockwise seen from above
};

/// None: there is no such wall.
std::optional<Index<WallPlace>> wall_named(const Plan &plan, const std::string &name);

} // namespace roundlay
