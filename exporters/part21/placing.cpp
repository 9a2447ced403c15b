#include "exporters/part21/placing.h"

#include <cmath>

namespace roundlay::part21 {

namespace {
constexpr double finest = 1e-10; ///< mm
}

double to_finest(double mm) {
    return std::round(mm / finest) / (1 / finest);
}

Vec3 to_finest(Vec3 point) {
    return {to_finest(point.x), to_finest(point.y), to_finest(point.z)};
}

Vec3 along_axes(Vec3 direction) {
    const auto snap = [](double c) {
        if (std::abs(c) < same_direction) return 0.0;
        return std::abs(std::abs(c) - 1) < same_direction ? std::copysign(1.0, c) : c;
    };
    return {snap(direction.x), snap(direction.y), snap(direction.z)};
}

Frame seen_from(const Frame &frame, const Frame &from) {
    return {from.to_local(frame.origin), from.direction_to_local(frame.x), from.direction_to_local(frame.y),
            from.direction_to_local(frame.z)};
}

} // namespace roundlay::part21
