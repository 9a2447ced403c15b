// Which outlines are the same template. Private to this room.
#pragma once

#include "kernel/geometry/vec.h"

#include <vector>

namespace roundlay {

/// Without points that say nothing: doubled ones and those within a straight line.
std::vector<Vec2> tidied_outline(const std::vector<Vec2> &outline);

/// The mirror image, counter-clockwise again.
std::vector<Vec2> turned_over(const std::vector<Vec2> &outline);

/// Both tidied: one laid on the other, turned as need be, is nowhere off by more than `by`.
bool are_alike(const std::vector<Vec2> &a, const std::vector<Vec2> &b, double by);

} // namespace roundlay
