#include "kernel/geometry/packing.h"

#include <algorithm>
#include <numeric>

namespace roundlay {

namespace {

constexpr double rounding = 1e-9; // of sums: a part as long as the bed lies on it

struct Row {
    std::size_t plate;
    double y, depth, used;
};

class Packer {
  public:
    Packer(double bed_x, double bed_y, double air) : bed_x_(bed_x), bed_y_(bed_y), air_(air) {}

    std::optional<Packed> put(const Footprint &part) {
        const bool turned = part.x > bed_x_ + rounding || (part.y > part.x && part.y <= bed_x_);
        const double x = turned ? part.y : part.x, y = turned ? part.x : part.y;
        if (x > bed_x_ + rounding || y > bed_y_ + rounding) return {};
        for (Row &row : rows_)
            if (y <= row.depth + rounding && row.used + air_ + x <= bed_x_ + rounding) {
                const Packed place{row.plate, row.used + air_, row.y, turned};
                row.used = place.x + x;
                return place;
            }
        return in_new_row(x, y, turned);
    }

  private:
    Packed in_new_row(double x, double y, bool turned) {
        for (std::size_t plate = 0; plate < tops_.size(); ++plate)
            if (tops_[plate] + air_ + y <= bed_y_ + rounding) {
                const Packed place{plate, 0, tops_[plate] + air_, turned};
                rows_.push_back({plate, place.y, y, x});
                tops_[plate] = place.y + y;
                return place;
            }
        rows_.push_back({tops_.size(), 0, y, x});
        tops_.push_back(y);
        return {tops_.size() - 1, 0, 0, turned};
    }

    double bed_x_, bed_y_, air_;
    std::vector<Row> rows_;
    std::vector<double> tops_;
};

} // namespace

std::vector<std::optional<Packed>> packed(const std::vector<Footprint> &parts, double bed_x, double bed_y,
                                          double air) {
    std::vector<std::size_t> order(parts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        const auto depth = [&](std::size_t i) { return std::min(parts[i].x, parts[i].y); };
        const auto along = [&](std::size_t i) { return std::max(parts[i].x, parts[i].y); };
        return depth(a) != depth(b) ? depth(a) > depth(b) : along(a) > along(b);
    });
    std::vector<std::optional<Packed>> places(parts.size());
    Packer packer(bed_x, bed_y, air);
    for (const std::size_t part : order)
        places[part] = packer.put(parts[part]);
    return places;
}

} // namespace roundlay
