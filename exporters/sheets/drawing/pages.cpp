#include "exporters/sheets/drawing/pages.h"

#include <algorithm>
#include <tuple>

namespace roundlay::sheets {
namespace {

constexpr double air = 4; ///< between blocks, millimetres
constexpr double rounding = 1e-6;

} // namespace

/// Upper left corners where a block could start: beside or under what is there. Highest first.
std::vector<Vec2> Page::corners() const {
    std::vector<double> xs{area_.x0}, ys{area_.y1};
    for (const Rect &t : taken_) {
        xs.push_back(t.x1 + air);
        ys.push_back(t.y0 - air);
    }
    std::vector<Vec2> all;
    for (const double y : ys)
        for (const double x : xs)
            all.push_back({x, y});
    std::sort(all.begin(), all.end(),
              [](Vec2 a, Vec2 b) { return std::tuple(-a.y, a.x) < std::tuple(-b.y, b.x); });
    return all;
}

double Page::height_below(Vec2 corner, double width) const {
    if (corner.x < area_.x0 - rounding || corner.x + width > area_.x1 + rounding || corner.y > area_.y1)
        return 0;
    double low = area_.y0;
    for (const Rect &t : taken_) {
        const bool beside = t.x1 + air <= corner.x + rounding || corner.x + width + air <= t.x0 + rounding;
        if (beside || t.y0 - air >= corner.y - rounding) continue;
        low = std::max(low, t.y1 + air);
    }
    return corner.y - low;
}

double Page::tallest() const {
    return height_below({area_.x0, area_.y1}, area_.width());
}

std::optional<Vec2> Page::place_for(double width, double height) const {
    for (const Vec2 corner : corners())
        if (height_below(corner, width) >= height - rounding) return Vec2{corner.x, corner.y - height};
    return std::nullopt;
}

bool Page::put(const Block &block) {
    const auto place = place_for(block.room.width(), block.room.height());
    if (!place) return false;
    const Block there = placed(block, *place);
    take(there.room);
    add(there.items);
    return true;
}

bool Page::put_low(const Block &block) {
    const double w = block.room.width(), h = block.room.height();
    std::vector<double> xs{area_.x1 - w}, ys{area_.y0};
    for (const Rect &t : taken_) {
        xs.push_back(t.x0 - air - w);
        ys.push_back(t.y1 + air);
    }
    std::sort(xs.rbegin(), xs.rend());
    std::sort(ys.begin(), ys.end());
    for (const double y : ys)
        for (const double x : xs) {
            if (x < area_.x0 - rounding || height_below({x, y + h}, w) < h - rounding) continue;
            const Block there = placed(block, {x, y});
            take(there.room);
            add(there.items);
            return true;
        }
    return false;
}

std::size_t Page::put_rows(const LaidTable &table, std::size_t first, std::size_t fewest) {
    const std::size_t left = table.rows() - first;
    const double width = table.drawn(first, first).room.width();
    std::size_t best = 0;
    Vec2 where;
    for (const Vec2 corner : corners()) {
        const std::size_t fit = table.rows_that_fit(first, height_below(corner, width));
        if (fit <= best) continue;
        best = fit;
        where = corner;
        if (best == left) break;
    }
    if (best == 0 || best < fewest) return 0;
    const Block block = table.drawn(first, first + best);
    const Block there = placed(block, {where.x, where.y - block.room.height()});
    take(there.room);
    add(there.items);
    return best;
}

} // namespace roundlay::sheets
