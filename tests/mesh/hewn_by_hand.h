// Bodies written down by hand, so that these tests need no layout.
#pragma once

#include "kernel/layout/wood/body.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace roundlay::by_hand {

/// Outlines in the x-z plane as the outside of a wall shows them: loops[0] counter-clockwise for who looks
/// along +y, the rest clockwise.
using Outlines = std::vector<std::vector<Vec2>>;

/// The outlines pushed from y = 0 to y = width.
inline Polyhedron pushed(const Outlines &outlines, double width) {
    Polyhedron solid;
    Face outside{{{0, -1, 0}, 0}, {}}, inside{{{0, 1, 0}, width}, {}};
    std::vector<Face> around;
    for (const auto &outline : outlines) {
        const int first = static_cast<int>(solid.vertices.size()), n = static_cast<int>(outline.size());
        for (const double y : {0.0, width})
            for (const Vec2 p : outline)
                solid.vertices.push_back({p.x, y, p.y});
        std::vector<int> front, back;
        for (int i = 0; i < n; ++i) {
            front.push_back(first + i);
            back.push_back(first + n + n - 1 - i);
            const int j = (i + 1) % n;
            const Vec2 run = outline[j] - outline[i];
            const Vec3 normal = unit({run.y, 0, -run.x});
            around.push_back({{normal, dot(normal, solid.vertices[first + i])},
                              {{first + i, first + n + i, first + n + j, first + j}}});
        }
        outside.loops.push_back(front);
        inside.loops.push_back(back);
    }
    solid.faces = {outside, inside};
    solid.faces.insert(solid.faces.end(), around.begin(), around.end());
    return solid;
}

inline double area(const Outlines &outlines) {
    double twice = 0;
    for (const auto &outline : outlines)
        for (std::size_t i = 0; i < outline.size(); ++i)
            twice += cross(outline[i], outline[(i + 1) % outline.size()]);
    return twice / 2;
}

inline Body body(const Outlines &outlines, double width, std::vector<Bore> bores = {}) {
    Body made;
    made.hewn = pushed(outlines, width);
    made.bores = std::move(bores);
    made.volume = area(outlines) * width;
    for (const Bore &b : made.bores)
        made.volume -= std::numbers::pi / 4 * b.diameter * b.diameter * (b.z_to - b.z_from);
    return made;
}

inline Bore bore(double x, double y, double z_from, double z_to, double diameter = 32) {
    return {.x = x, .y = y, .z_from = z_from, .z_to = z_to, .diameter = diameter};
}

inline std::vector<Vec2> rectangle(double x0, double z0, double x1, double z1) {
    return {{x0, z0}, {x1, z0}, {x1, z1}, {x0, z1}};
}

/// A log of 4 m with a tail at each end, a sill cut from above and a window frame's slot right through.
inline Outlines log_outlines() {
    std::vector<Vec2> border{{0, 75},     {200, 50},   {200, 0},    {3800, 0},   {3800, 50},  {4000, 75},
                             {4000, 165}, {3800, 190}, {3800, 220}, {2600, 220}, {2600, 150}, {1800, 150},
                             {1800, 220}, {200, 220},  {200, 190},  {0, 165}};
    std::vector<Vec2> slot = rectangle(900, 80, 1300, 140);
    std::reverse(slot.begin(), slot.end());
    return {border, slot};
}

inline Body log_with_two_tails() {
    return body(log_outlines(), 200,
                {bore(400, 100, 0, 220), bore(700, 100, 0, 220), bore(1500, 100, 90, 220),
                 bore(2200, 100, 0, 150), bore(3000, 90, 0, 110, 38), bore(3500, 110, 0, 220, 25)});
}

} // namespace roundlay::by_hand
