#include "kernel/geometry/polygon_pairs.h"

#include <algorithm>
#include <utility>

namespace roundlay {

std::vector<SignedPolygon> without_pairs(const std::vector<SignedPolygon> &polygons) {
    std::vector<std::pair<std::vector<int>, std::size_t>> sorted;
    for (std::size_t i = 0; i < polygons.size(); ++i) {
        sorted.emplace_back(polygons[i].ring, i);
        std::sort(sorted.back().first.begin(), sorted.back().first.end());
    }
    std::sort(sorted.begin(), sorted.end());
    std::vector<char> paired(polygons.size(), 0);
    for (std::size_t k = 0; k + 1 < sorted.size(); ++k) {
        const std::size_t i = sorted[k].second, j = sorted[k + 1].second;
        if (sorted[k].first != sorted[k + 1].first || polygons[i].sign == polygons[j].sign) continue;
        paired[i] = paired[j] = 1;
        ++k;
    }
    std::vector<SignedPolygon> rest;
    for (std::size_t i = 0; i < polygons.size(); ++i)
        if (!paired[i]) rest.push_back(polygons[i]);
    return rest;
}

} // namespace roundlay
