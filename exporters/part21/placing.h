// Points, directions and frames as exchange structures have them: without the last figures' noise.
#pragma once

#include "kernel/geometry/vec.h"

namespace roundlay::part21 {

/// Unit directions closer than this are one: over the longest log they part by less than points are
/// rounded to.
inline constexpr double same_direction = 4e-15;

/// Rounded to 1e-10 mm: rounding noise of the sums before is dropped, and lengths stated in short figures
/// come out in short figures. A log's volume moves by some 1e-13 of itself.
double to_finest(double mm);
Vec3 to_finest(Vec3 point);

/// A unit direction; one that runs along an axis says so exactly.
Vec3 along_axes(Vec3 direction);

/// Where a frame stands, seen from another.
Frame seen_from(const Frame &frame, const Frame &from);

} // namespace roundlay::part21
