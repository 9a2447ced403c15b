#include "exporters/sheets/cut_sheet/parts.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay::sheets {
namespace {

constexpr int looks = 60;            ///< places tried on either side of the wanted one
constexpr double near_division = 12; ///< paper kept between a division and what matters

/// How much paper the log needs up to some place, empty stretches left out where that gains anything.
class Need {
  public:
    Need(double length, std::vector<Place> places, double scale) {
        places.insert(places.end(), {{0, 0}, {length, 0}});
        std::sort(places.begin(), places.end(), [](const Place &a, const Place &b) { return a.x < b.x; });
        double sum = 0;
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (i > 0) {
                const Place &a = places[i - 1], &b = places[i];
                sum += std::min((b.x - a.x) * scale, a.near + b.near + Ruler::gap);
            }
            steps_.push_back({places[i].x, sum});
        }
    }
    double whole() const { return steps_.back().second; }
    /// Where that much is needed.
    double place_of(double need) const {
        for (std::size_t i = 1; i < steps_.size(); ++i) {
            const auto [x0, n0] = steps_[i - 1];
            const auto [x1, n1] = steps_[i];
            if (need <= n1 && n1 > n0) return x0 + (x1 - x0) * (need - n0) / (n1 - n0);
        }
        return steps_.back().first;
    }

  private:
    std::vector<std::pair<double, double>> steps_;
};

double clear_place(double wanted, double least, double most, const std::vector<Place> &places, double near) {
    const auto clear = [&](double x) {
        return std::none_of(places.begin(), places.end(),
                            [&](const Place &p) { return std::abs(p.x - x) < near; });
    };
    for (int i = 0; i <= looks; ++i)
        for (const double x : {wanted - (wanted - least) * i / looks, wanted + (most - wanted) * i / looks})
            if (clear(x)) return x;
    return wanted;
}

} // namespace

std::vector<Shown> divided(Division division, double length, int count, const std::vector<Place> &places,
                           double scale) {
    const Need need(length, places, scale);
    const auto even = [&](double part) {
        return division == Division::evenly ? length * part / count
                                            : need.place_of(need.whole() * part / count);
    };
    std::vector<Shown> parts;
    double from = 0;
    for (int i = 1; i <= count; ++i) {
        double to = length;
        if (i < count) // at most half way to the divisions beside it
            to = clear_place(even(i), even(i - 0.5), even(i + 0.5), places, near_division / scale);
        parts.push_back({from, to});
        from = to;
    }
    return parts;
}

} // namespace roundlay::sheets
