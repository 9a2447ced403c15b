#include "exporters/report/hatch.h"

#include "exporters/sheets/drawing/board.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {

namespace {

constexpr double apart = 2, dense_apart = 0.9; ///< mm of paper

Rect box_of(const std::vector<Vec2> &outline) {
    Rect box = Rect::nothing();
    for (const Vec2 p : outline)
        box = joined(box, p);
    return box;
}

/// Strokes across the way `along`, counted from the paper's corner so that areas side by side go on.
void add_strokes(std::vector<Item> &items, const std::vector<Vec2> &outline, const std::vector<Rect> &texts,
                 Vec2 along, double pitch) {
    constexpr double shortest = 0.3;
    const Vec2 across{-along.y, along.x};
    double low = 1e300, high = -1e300, first = 1e300, last = -1e300;
    for (const Vec2 p : outline) {
        low = std::min(low, dot(p, across)), high = std::max(high, dot(p, across));
        first = std::min(first, dot(p, along)), last = std::max(last, dot(p, along));
    }
    for (double at = std::ceil(low / pitch) * pitch; at < high; at += pitch) {
        const Vec2 base = at * across;
        const auto part = within_outline(base + (first - 1) * along, base + (last + 1) * along, outline);
        if (part.size() != 2) continue;
        for (const auto &[a, b] : outside(part[0], part[1], texts, shortest))
            items.emplace_back(Path{{a, b}, false, Line::dimension, ""});
    }
}

void add_dots(std::vector<Item> &items, const std::vector<Vec2> &outline, const std::vector<Rect> &texts) {
    constexpr double radius = 0.18, edge = 0.3;
    const Rect box = box_of(outline);
    for (double y = std::ceil(box.y0 / apart) * apart; y < box.y1; y += apart)
        for (double x = std::ceil(box.x0 / apart) * apart; x < box.x1; x += apart)
            if (within_outline({x - edge, y}, {x + edge, y}, outline).size() == 2 &&
                std::ranges::none_of(texts, [&](const Rect &text) {
                    return text.grown(edge).holds({x, y, x, y});
                }))
                items.emplace_back(Circle{{x, y}, radius, Line::dimension, ""});
}

} // namespace

std::vector<Vec2> within_outline(Vec2 from, Vec2 to, const std::vector<Vec2> &outline) {
    const Vec2 way = to - from;
    double turn = 0;
    for (std::size_t i = 0; i < outline.size(); ++i)
        turn += cross(outline[i], outline[(i + 1) % outline.size()]);
    double enters = 0, leaves = 1;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i], side = (turn < 0 ? -1.0 : 1.0) * (outline[(i + 1) % outline.size()] - a);
        const double over = cross(side, from - a), by = cross(side, way);
        if (by == 0 && over < 0) return {};
        if (by > 0) enters = std::max(enters, -over / by);
        if (by < 0) leaves = std::min(leaves, -over / by);
    }
    if (leaves <= enters) return {};
    return {from + enters * way, from + leaves * way};
}

std::vector<Item> hatched(const std::vector<Vec2> &outline, Hatch hatch, const std::vector<Rect> &texts) {
    const double half = std::sqrt(0.5);
    const Vec2 up{half, half}, down{half, -half};
    std::vector<Item> items;
    const auto strokes = [&](Vec2 along, double pitch) { add_strokes(items, outline, texts, along, pitch); };
    if (hatch == Hatch::rising || hatch == Hatch::crossed) strokes(up, apart);
    if (hatch == Hatch::falling || hatch == Hatch::crossed) strokes(down, apart);
    if (hatch == Hatch::dense) strokes(up, dense_apart);
    if (hatch == Hatch::level) strokes({1, 0}, apart / 2);
    if (hatch == Hatch::upright) strokes({0, 1}, apart);
    if (hatch == Hatch::dotted) add_dots(items, outline, texts);
    return items;
}

} // namespace roundlay::sheets
