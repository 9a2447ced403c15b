#include "exporters/sheets/cut_sheet/ruler.h"

#include <algorithm>
#include <numeric>

namespace roundlay::sheets {
namespace {

constexpr double rounding = 1e-9;

/// A stretch of wood that may be left out.
struct Empty {
    double from = 0, to = 0;
    double length() const { return to - from; }
};

std::vector<Empty> empty_stretches(double from, double to, std::vector<double> points, double near,
                                   double least) {
    points.push_back(from);
    points.push_back(to);
    std::erase_if(points, [&](double p) { return p < from || p > to; });
    std::sort(points.begin(), points.end());
    std::vector<Empty> all;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const Empty e{points[i - 1] + near, points[i] - near};
        if (e.length() > least) all.push_back(e);
    }
    return all;
}

std::vector<Shown> remaining(double from, double to, std::vector<Empty> left_out) {
    std::sort(left_out.begin(), left_out.end(), [](Empty a, Empty b) { return a.from < b.from; });
    std::vector<Shown> shown;
    for (const Empty &e : left_out) {
        shown.push_back({from, e.from});
        from = e.to;
    }
    shown.push_back({from, to});
    return shown;
}

} // namespace

Ruler::Ruler(std::vector<Shown> shown, double scale) : shown_(std::move(shown)), scale_(scale) {
    double start = 0;
    for (const Shown &s : shown_) {
        starts_.push_back(start);
        start += (s.to - s.from) * scale_ + gap;
    }
}

double Ruler::at(double x) const {
    std::size_t i = shown_.size() - 1;
    while (i > 0 && x < shown_[i].from - rounding)
        --i;
    const bool last = i + 1 == shown_.size();
    return starts_[i] + ((last ? x : std::min(x, shown_[i].to)) - shown_[i].from) * scale_;
}

double Ruler::start_of(std::size_t i) const {
    return starts_.at(i);
}

double Ruler::width() const {
    return starts_.back() + (shown_.back().to - shown_.back().from) * scale_;
}

bool Ruler::shows(double x) const {
    return std::any_of(shown_.begin(), shown_.end(),
                       [&](const Shown &s) { return x >= s.from - rounding && x <= s.to + rounding; });
}

std::optional<Ruler> ruler_for(double from, double to, std::vector<double> points, double scale, double width,
                               double near, std::size_t most) {
    double excess = (to - from) * scale - width; // on paper
    if (excess <= 0) return Ruler({{from, to}}, scale);
    // leaving out less than twice the gap would gain nothing worth the reader's trouble
    std::vector<Empty> empty =
        empty_stretches(from, to, std::move(points), near / scale, 2 * Ruler::gap / scale);
    std::stable_sort(empty.begin(), empty.end(), [](Empty a, Empty b) { return a.length() > b.length(); });
    std::vector<Empty> left_out;
    for (Empty e : empty) {
        if (left_out.size() == most) break;
        const double gain = e.length() * scale - Ruler::gap;
        if (gain > excess) { // keep what there is room for, in equal parts at both sides
            const double keep = (gain - excess) / scale / 2;
            e = {e.from + keep, e.to - keep};
        }
        left_out.push_back(e);
        excess -= gain;
        if (excess <= 0) return Ruler(remaining(from, to, left_out), scale);
    }
    return std::nullopt;
}

} // namespace roundlay::sheets
