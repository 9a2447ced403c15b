// What a person placed in a wall, as its elevation shows it: rods, bolts, wiring, holes as found.
#pragma once

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/fastenings/bore_marks.h"

namespace roundlay::sheets {

/// Places along the wall on paper: at = origin + scale * place.
struct AlongPaper {
    double origin = 0, scale = 1; ///< the scale is below zero where the wall is seen from inside
    double operator()(double place) const { return origin + scale * place; }
};

class WallBores {
  public:
    WallBores(const Shell &shell, const Layout &layout, Index<WallPlace> wall, AlongPaper along,
              const Words &words);

    /// Log by log, so that a drift shows; a little past both ends.
    void add_lines(Board &board) const;

    /// "rod 1" over the bore's upper end, or beside it further down. What found no room is added to
    /// `without`.
    void add_marks(Board &board, std::vector<std::string> &without) const;

    /// Where they start at their feet, called by their marks: "700  rod 1". Marks nearer than `same` are one.
    void add_places(std::vector<Mark> &marks, const Words &words, double same) const;

  private:
    struct Stretch {
        double x = 0, low = 0, high = 0; ///< on paper
    };
    Stretch stretch_of(const BoredLog &log) const;
    double diameter_of(const PlacedBore &bore) const;
    std::vector<Vec2> places_for(const PlacedBore &bore) const;

    const Shell &shell_;
    const WallPlace &wall_;
    AlongPaper along_;
    double scale_;
    std::vector<PlacedBore> bores_;
};

} // namespace roundlay::sheets
