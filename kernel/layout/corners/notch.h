// The tail family: what a notch rule means as the slopes of a tail's top plane.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Slopes of a tail's top plane. along = rise per unit outward along the log, across = outward along the
/// crossing log.
struct TailTop {
    double along = 0;
    double across = 0;
};

TailTop tail_top(const NotchRule &rule);

/// The top of a tail, through `middle`. Walls need not be square: it rises by `along` and `across` per unit
/// of each wall's own outward direction.
Plane seam_plane(const TailTop &top, Vec3 middle, Vec3 along, Vec3 across);

/// How much the tail of a log thickens toward its end, per unit of length: own.along - other.across.
/// Above zero it is locked against pulling out lengthwise.
double lock(const TailTop &own, const TailTop &other);

} // namespace roundlay
