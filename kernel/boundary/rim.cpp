#include "kernel/boundary/rim.h"

#include <cmath>

namespace roundlay {

Rim rim_of(const BoundaryBore &bore, bool upper) {
    const BoreEnd &end = upper ? bore.above : bore.below;
    Rim rim;
    rim.centre = {bore.axis.x, bore.axis.y, end.z};
    rim.semi_major = rim.semi_minor = bore.radius;
    if (end.rise == Vec2{}) return rim;
    const double steepness = length(end.rise);
    Vec2 along = (1 / steepness) * end.rise;
    // An ellipse is the same turned by half: the turn that starts nearer to x is taken.
    const double sign = along.x < 0 ? -1 : 1;
    along = sign * along;
    rim.level = false;
    rim.normal = unit({-end.rise.x, -end.rise.y, 1});
    rim.major = unit({along.x, along.y, sign * steepness});
    rim.semi_major = bore.radius * std::hypot(1, steepness);
    rim.start = -std::atan2(along.y, along.x);
    return rim;
}

} // namespace roundlay
