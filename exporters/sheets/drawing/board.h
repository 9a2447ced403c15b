// A drawing in the making that knows what is already on it, so that a text is only put where it is free.
#pragma once

#include "exporters/sheets/drawing/block.h"

#include <vector>

namespace roundlay::sheets {

class Board {
  public:
    /// Puts the item down as it is.
    void add(Item item);

    /// Keeps texts out of an area where nothing is drawn yet.
    void keep_out(const Rect &area) { kept_out_.push_back(area); }

    /// Whether a text could stand there: no other text, no filled or kept area, and no line runs through.
    /// Lines that yield to text count only when `strict`.
    bool is_free(const Rect &box, bool strict) const;

    /// Whether a leader could run there through no other leader.
    bool is_clear(const Path &leader) const;

    /// Puts the text at the first of its places that is free, first looking for one that no line crosses at
    /// all. False, and nothing added, where there is none.
    bool put(Text text, const std::vector<Vec2> &places, double air = 0.4);

    const std::vector<Item> &items() const { return items_; }

    /// What has been put down, with the lines that yield left out where they would run under a text. The
    /// board is then used up.
    std::vector<Item> finished() &&;

  private:
    struct Stroke {
        Vec2 from, to;
        bool yields, leader;
    };
    std::vector<Item> items_;
    std::vector<Rect> texts_, kept_out_;
    std::vector<Stroke> strokes_;
};

/// The parts of the straight stroke outside all boxes, in order. Parts shorter than `shortest` are left out.
std::vector<std::pair<Vec2, Vec2>> outside(Vec2 from, Vec2 to, const std::vector<Rect> &boxes,
                                           double shortest);

} // namespace roundlay::sheets
