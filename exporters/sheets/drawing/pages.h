// Finds room for blocks on one sheet after another.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/table.h"

#include <optional>
#include <vector>

namespace roundlay::sheets {

/// The free area of one sheet.
class Page {
  public:
    explicit Page(const Rect &area) : area_(area) {}

    void take(const Rect &room) { taken_.push_back(room); }

    /// Room over the whole width, from the top down to what is taken.
    double tallest() const;

    /// Lower left corner of a free place for this size: as high as can be, then as far left.
    std::optional<Vec2> place_for(double width, double height) const;

    /// Puts the block there, if there is room, with `air` on every side but the area's borders.
    bool put(const Block &block);

    /// The same, but as low as can be, then as far right.
    bool put_low(const Block &block);

    /// Puts as many rows of the table as fit in one place, and says how many; 0 where fewer than
    /// `fewest` fit.
    std::size_t put_rows(const LaidTable &table, std::size_t first, std::size_t fewest);

    const std::vector<Item> &items() const { return items_; }
    void add(const std::vector<Item> &items) { items_.insert(items_.end(), items.begin(), items.end()); }

  private:
    double height_below(Vec2 upper_left, double width) const;
    std::vector<Vec2> corners() const;

    Rect area_;
    std::vector<Rect> taken_;
    std::vector<Item> items_;
};

} // namespace roundlay::sheets
