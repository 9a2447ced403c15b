#include "kernel/shell/drawn_plan.h"

#include "kernel/measure/tidied.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double straight = 1e-9; // sine of the angle between two walls that are one

struct Way {
    double east = 0, north = 0; // mm
    double length() const { return std::hypot(east, north); }
};

Way way(const PlanPoint &a, const PlanPoint &b) {
    return {b.east.mm() - a.east.mm(), b.north.mm() - a.north.mm()};
}

double cross(const Way &a, const Way &b) {
    return a.east * b.north - a.north * b.east;
}

/// Twice the area, positive where the corners go counter-clockwise.
double turning(const std::vector<PlanPoint> &corners) {
    double sum = 0;
    for (std::size_t i = 0; i < corners.size(); ++i)
        sum +=
            cross(way(corners.front(), corners[i]), way(corners.front(), corners[(i + 1) % corners.size()]));
    return sum;
}

bool is_corner(const PlanPoint &before, const PlanPoint &at, const PlanPoint &after) {
    const Way a = way(before, at), b = way(at, after);
    return std::abs(cross(a, b)) > straight * a.length() * b.length();
}

void drop_straight(std::vector<PlanPoint> &corners) {
    for (std::size_t i = 0; i < corners.size() && corners.size() > 2;) {
        const std::size_t count = corners.size();
        if (is_corner(corners[(i + count - 1) % count], corners[i], corners[(i + 1) % count])) {
            ++i;
            continue;
        }
        corners.erase(corners.begin() + static_cast<std::ptrdiff_t>(i));
        i = 0;
    }
}

/// Degrees counter-clockwise from east; the four quarters exactly.
double heading_of(const Way &w) {
    if (w.north == 0) return w.east >= 0 ? 0 : 180;
    if (w.east == 0) return w.north > 0 ? 90 : 270;
    constexpr double part = 1e9; // of a degree: what corners in millimetres lose is not to be written
    const double degrees = std::round(std::atan2(w.north, w.east) * 180 / std::numbers::pi * part) / part;
    return degrees < 0 ? degrees + 360 : degrees;
}

bool further_south_west(const PlanPoint &a, const PlanPoint &b) {
    return a.north != b.north ? a.north < b.north : a.east < b.east;
}

} // namespace

std::vector<Wall> drawn_plan(std::vector<PlanPoint> corners) {
    drop_straight(corners);
    if (corners.size() < 3 || corners.size() > most_drawn_walls) return {};
    if (turning(corners) < 0) std::reverse(corners.begin(), corners.end());
    std::rotate(corners.begin(), std::min_element(corners.begin(), corners.end(), further_south_west),
                corners.end());
    std::vector<Wall> walls;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Way w = way(corners[i], corners[(i + 1) % corners.size()]);
        Wall wall;
        wall.name = std::string(1, static_cast<char>('A' + i));
        wall.heading = heading_of(w);
        wall.length = tidied(Length::mm(w.length()));
        walls.push_back(std::move(wall));
    }
    return walls;
}

} // namespace roundlay
