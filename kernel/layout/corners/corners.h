// Corners: the seam planes that part the tails going up, and which cuts each log gets from them.
#pragma once

#include "kernel/layout/corners/notch.h"
#include "kernel/layout/courses/courses.h"
#include "kernel/layout/foundation.h"
#include "kernel/layout/plan/reach.h"

#include <optional>

namespace roundlay {

/// What a meeting of two walls does to one course: at its end, or where it runs on.
struct EndNotch {
    std::optional<Plane> top, under; ///< seam planes in the world, normals out of this log's wood
    std::optional<int> above, below; ///< rounds of the crossing wall's logs on the other side of the seams
    bool saddle = false; ///< scoped over the crossing wall's log below instead of parted by a seam
    bool butts = false;  ///< too thin for a tail: ends at the crossing wall's near face, on both sides of it
                         ///< where the log would run on
    bool locked = false; ///< cannot be pulled out lengthwise
};

/// By meeting of the wall, then by course.
using WallNotches = std::vector<std::vector<EndNotch>>;

struct Corners {
    Indexed<WallNotches, WallPlace> notches;
};

/// Finds every seam, tails under the least thickness and seams outside the wood. On an error there are no
/// notches.
Found<Corners> lay_out_corners(const Shell &shell, const Plan &plan, const Foundation &foundation,
                               const Courses &courses);

} // namespace roundlay
