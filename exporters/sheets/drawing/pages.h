// Finds room for blocks on one sheet after another.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/table.h"

#include <memory>
#include <optional>
#include <vector>

namespace roundlay::sheets {

using SharedBlock = std::shared_ptr<const Block>;
using SharedTable = std::shared_ptr<const LaidTable>;

/// The free area of one sheet, and what has been given a place on it. That is drawn when the items are asked
/// for: trying many arrangements costs no drawing, and pages that share a block share its drawing.
class Page {
  public:
    explicit Page(const Rect &area) : area_(area) {}

    void take(const Rect &room) { taken_.push_back(room); }

    /// Room over the whole width, from the top down to what is taken.
    double tallest() const;

    /// Lower left corner of a free place for this size: as high as can be, then as far left.
    std::optional<Vec2> place_for(double width, double height) const;

    /// Puts the block there, if there is room, with `air` on every side but the area's borders.
    bool put(SharedBlock block);
    bool put(Block block) { return put(std::make_shared<const Block>(std::move(block))); }

    /// The same, but as low as can be, then as far right.
    bool put_low(SharedBlock block);

    /// Puts as many rows of the table as fit in one place, and says how many; 0 where fewer than
    /// `fewest` fit.
    std::size_t put_rows(const SharedTable &table, std::size_t first, std::size_t fewest);

    bool empty() const { return put_.empty(); } ///< nothing has been put on it
    std::vector<Item> items() const;            ///< drawn, in the order in which they were put there
    /// Items where they stand.
    void add(std::vector<Item> items);

  private:
    /// A block, or some rows of a table, and by how much it is moved from where it was drawn.
    struct Put {
        SharedBlock block{}; ///< null = the table's rows
        SharedTable table{};
        std::size_t first = 0, last = 0;
        Vec2 by{};
        bool moves = true;
    };

    double height_below(Vec2 upper_left, double width) const;
    template <typename Try> void at_corners(Try &&stop) const;
    void put_at(Put what, const Rect &room, Vec2 lower_left);

    Rect area_;
    std::vector<Rect> taken_;
    std::vector<Put> put_;
};

} // namespace roundlay::sheets
