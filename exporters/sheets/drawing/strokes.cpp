#include "exporters/sheets/drawing/clash.h"

#include <cmath>
#include <numbers>

namespace roundlay::sheets {
namespace {

using Strokes = std::vector<std::pair<Vec2, Vec2>>;

constexpr double chord_degrees = 10;

Strokes of(const Path &path) {
    Strokes all;
    each_stroke(path, [&](Vec2 from, Vec2 to) { all.emplace_back(from, to); });
    return all;
}

Strokes of(const Arc &arc) {
    const double sweep = arc.to - arc.from;
    const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(sweep) / chord_degrees)));
    const auto at = [&](int i) {
        const double a = (arc.from + sweep * i / steps) * std::numbers::pi / 180;
        return arc.centre + arc.radius * Vec2{std::cos(a), std::sin(a)};
    };
    Strokes all;
    for (int i = 0; i < steps; ++i)
        all.emplace_back(at(i), at(i + 1));
    return all;
}

Strokes of(const Circle &circle) {
    return of(Arc{circle.centre, circle.radius, 0, 360, circle.line});
}

template <typename Other> Strokes of(const Other &) {
    return {};
}

} // namespace

Strokes strokes_of(const Item &item) {
    return std::visit([](const auto &it) { return of(it); }, item);
}

// Clips the segment against the rectangle's four sides (parametric, after Liang and Barsky).
std::pair<double, double> span_within(const Rect &box, Vec2 from, Vec2 to) {
    constexpr std::pair<double, double> nowhere{1, 0};
    double enters = 0, leaves = 1;
    const Vec2 d = to - from;
    const auto within = [&](double step, double room) { // step * t < room
        if (step == 0) return room > 0;
        const double t = room / step;
        step > 0 ? leaves = std::min(leaves, t) : enters = std::max(enters, t);
        return true;
    };
    const bool beside = !within(-d.x, from.x - box.x0) || !within(d.x, box.x1 - from.x) ||
                        !within(-d.y, from.y - box.y0) || !within(d.y, box.y1 - from.y);
    return beside ? nowhere : std::pair(enters, leaves);
}

bool crosses(const Rect &box, Vec2 from, Vec2 to) {
    const auto [enters, leaves] = span_within(box, from, to);
    return enters < leaves;
}

} // namespace roundlay::sheets
