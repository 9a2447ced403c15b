#include "exporters/sheets/drawing/spread.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

struct Pool {
    double sum = 0;
    int count = 0;
    double mean() const { return sum / count; }
};

} // namespace

// With i * pitch taken off, the labels only have to be in order: isotonic regression by pooling neighbours
// that are in the wrong order.
std::vector<double> spread(const std::vector<double> &wanted, double pitch) {
    std::vector<Pool> pools;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        pools.push_back({wanted[i] - static_cast<double>(i) * pitch, 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            pools[pools.size() - 2].sum += pools.back().sum;
            pools[pools.size() - 2].count += pools.back().count;
            pools.pop_back();
        }
    }
    std::vector<double> places;
    for (const Pool &pool : pools)
        for (int k = 0; k < pool.count; ++k)
            places.push_back(pool.mean() + static_cast<double>(places.size()) * pitch);
    return places;
}

std::vector<double> spread(const std::vector<double> &wanted, double pitch, double low, double high) {
    std::vector<double> places = spread(wanted, pitch);
    const std::size_t count = places.size();
    for (std::size_t i = 0; i < count; ++i) {
        const double under = low + static_cast<double>(i) * pitch;
        const double over = high - static_cast<double>(count - 1 - i) * pitch;
        places[i] = std::max(under, std::min(over, places[i]));
    }
    return places;
}

} // namespace roundlay::sheets
