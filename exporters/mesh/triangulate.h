// Triangles for a flat region with holes.
#pragma once

#include "kernel/geometry/vec.h"

#include <array>
#include <span>
#include <vector>

namespace roundlay {

/// Fills the region between closed loops with triangles whose corners are corners of the loops only, so that
/// neighbours which share an edge stay closed. The region lies on the left of every loop: the outer border
/// runs counter-clockwise, holes clockwise. Loops may be many and in any order, but do not cross.
///
/// `points` holds all loops one after another, `loop_sizes` how many points each has (3 or more). Returned
/// triangles are counter-clockwise indices into `points`; there are always points + 2 * holes - 2 of them
/// for one region. Corners that lie on a straight line are allowed and give no triangle without area.
/// Throws std::logic_error where loops cross or run the wrong way and it is noticed.
/// O(n log n + n * k), k = the most pieces of the region that one sweep position cuts (2 to 10 here).
std::vector<std::array<int, 3>> triangulated(std::span<const Vec2> points, std::span<const int> loop_sizes);

} // namespace roundlay
