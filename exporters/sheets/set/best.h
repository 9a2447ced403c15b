// Of drawings that are tried at one scale after another: which is kept.
#pragma once

#include "exporters/sheets/set/scales.h"

#include <compare>
#include <cstddef>
#include <optional>
#include <utility>

namespace roundlay::sheets {

/// What a drawing costs whoever reads it: first what found no room on it, then how many sheets it takes.
struct Cost {
    std::size_t left_over = 0, sheets = 1;
    auto operator<=>(const Cost &) const = default;
};

inline constexpr Cost least_cost{};

/// Keeps the cheapest drawing that it is offered, of equal ones the first: what is wanted most is tried
/// first.
template <typename Drawing> class Best {
  public:
    /// `scale` is nullptr where it is drawn to none.
    void offer(Drawing drawing, const Scale *scale, Cost cost) {
        if (found_ && cost >= cost_) return;
        found_ = std::move(drawing);
        scale_ = scale;
        cost_ = cost;
    }
    /// Pages on which everything found room.
    void offer_pages(Drawing pages, const Scale &scale) {
        const Cost cost{0, pages.size()};
        offer(std::move(pages), &scale, cost);
    }
    /// Whether what costs so much would be kept.
    bool would_keep(Cost cost) const { return !found_ || cost < cost_; }
    /// Nothing can be better.
    bool is_perfect() const { return found_ && cost_ <= least_cost; }
    bool is_empty() const { return !found_; }
    const Scale *scale() const { return scale_; }
    const Cost &cost() const { return cost_; }
    const Drawing &drawing() const { return *found_; }
    std::optional<Drawing> take() { return std::move(found_); }

  private:
    std::optional<Drawing> found_;
    const Scale *scale_ = nullptr;
    Cost cost_;
};

/// The one place that chooses scales. Calls draw(scale) from the largest down, which offers what it draws,
/// until enough() says that nothing better is to come.
template <typename Draw, typename Enough>
void try_scales(std::span<const Scale> all, Draw &&draw, Enough &&enough) {
    for (const Scale &scale : all) {
        if (enough(scale)) return;
        draw(scale);
    }
}

} // namespace roundlay::sheets
