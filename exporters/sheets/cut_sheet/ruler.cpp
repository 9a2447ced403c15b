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

/// Between the places: what no place keeps.
std::vector<Empty> empty_stretches(const Place &from, const Place &to, std::vector<Place> places,
                                   double scale, double least) {
    places.insert(places.end(), {from, to});
    std::erase_if(places, [&](const Place &p) { return p.x < from.x || p.x > to.x; });
    std::sort(places.begin(), places.end(), [](const Place &a, const Place &b) { return a.x < b.x; });
    std::vector<Empty> all;
    double kept = from.x;
    for (const Place &p : places) {
        const Empty e{kept, p.x - p.near / scale};
        if (e.length() > least) all.push_back(e);
        kept = std::max(kept, p.x + p.near / scale);
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

std::optional<Ruler> ruler_for(const Place &from, const Place &to, std::vector<Place> places, double scale,
                               double width, std::size_t most) {
    double excess = (to.x - from.x) * scale - width; // on paper
    if (excess <= 0) return Ruler({{from.x, to.x}}, scale);
    // leaving out less than twice the gap would gain nothing worth the reader's trouble
    std::vector<Empty> empty = empty_stretches(from, to, std::move(places), scale, 2 * Ruler::gap / scale);
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
        if (excess <= 0) return Ruler(remaining(from.x, to.x, left_out), scale);
    }
    return std::nullopt;
}

} // namespace roundlay::sheets
