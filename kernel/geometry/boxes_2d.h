// Boxes in a plane, and which of many lie at a place.
#pragma once

#include "kernel/geometry/vec.h"

#include <algorithm>
#include <numeric>
#include <utility>
#include <vector>

namespace roundlay {

struct Box2 {
    Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
    void add(Vec2 p) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    bool holds(Vec2 p, double room) const {
        return p.x >= low.x - room && p.x <= high.x + room && p.y >= low.y - room && p.y <= high.y + room;
    }
    bool meets(const Box2 &other) const {
        return low.x <= other.high.x && other.low.x <= high.x && low.y <= other.high.y &&
               other.low.y <= high.y;
    }
};

/// Finds which of many boxes may hold a point, by strips across the axis along which they lie apart best.
class Strips {
  public:
    explicit Strips(const std::vector<Box2> &boxes) {
        if (boxes.empty()) return;
        Box2 all;
        Vec2 extents;
        for (const Box2 &b : boxes) {
            all.add(b.low);
            all.add(b.high);
            extents = extents + (b.high - b.low);
        }
        const Vec2 size = all.high - all.low;
        along_x_ = extents.x * size.y < extents.y * size.x;
        const double range = along_x_ ? size.x : size.y;
        const std::size_t count = std::max<std::size_t>(1, boxes.size() / 4);
        low_ = along_x_ ? all.low.x : all.low.y;
        per_mm_ = range > 0 ? static_cast<double>(count) / range : 0;
        strips_.resize(count);
        for (std::size_t i = 0; i < boxes.size(); ++i)
            for (std::size_t k = strip_of(boxes[i].low); k <= strip_of(boxes[i].high); ++k)
                strips_[k].push_back(i);
    }

    const std::vector<std::size_t> &near(Vec2 p) const { return strips_[strip_of(p)]; }

  private:
    std::size_t strip_of(Vec2 p) const {
        const double at = ((along_x_ ? p.x : p.y) - low_) * per_mm_,
                     last = static_cast<double>(strips_.size()) - 1;
        return static_cast<std::size_t>(std::clamp(at, 0.0, last));
    }

    bool along_x_ = true;
    double low_ = 0, per_mm_ = 0;
    std::vector<std::vector<std::size_t>> strips_;
};

/// Swept along x; in the order of the edges.
inline std::vector<std::pair<std::size_t, std::size_t>> pairs_that_meet(const std::vector<Box2> &boxes) {
    std::vector<std::size_t> order(boxes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return boxes[a].low.x < boxes[b].low.x; });
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < order.size(); ++i)
        for (std::size_t j = i + 1; j < order.size() && boxes[order[j]].low.x <= boxes[order[i]].high.x; ++j)
            if (boxes[order[i]].meets(boxes[order[j]])) pairs.push_back(std::minmax(order[i], order[j]));
    std::sort(pairs.begin(), pairs.end());
    return pairs;
}

} // namespace roundlay
