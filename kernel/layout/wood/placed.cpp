#include "kernel/layout/wood/placed.h"

#include <algorithm>
#include <limits>

namespace roundlay {

namespace {

Box3 joined(const std::vector<Box3> &boxes) {
    constexpr double big = std::numeric_limits<double>::max();
    Box3 all{{big, big, big}, {-big, -big, -big}};
    for (const Box3 &b : boxes) {
        all.low = {std::min(all.low.x, b.low.x), std::min(all.low.y, b.low.y), std::min(all.low.z, b.low.z)};
        all.high = {std::max(all.high.x, b.high.x), std::max(all.high.y, b.high.y),
                    std::max(all.high.z, b.high.z)};
    }
    return all;
}

} // namespace

PlacedPiece placed(const Body &body, const Frame &frame) {
    PlacedPiece p;
    for (const Cell &cell : body.cells) {
        p.cells.push_back(moved(cell, frame));
        p.boxes.push_back(bounds(p.cells.back()));
    }
    p.box = joined(p.boxes);
    return p;
}

bool boxes_meet(const Box3 &a, const Box3 &b) {
    return a.high.x > b.low.x && b.high.x > a.low.x && a.high.y > b.low.y && b.high.y > a.low.y &&
           a.high.z > b.low.z && b.high.z > a.low.z;
}

} // namespace roundlay
