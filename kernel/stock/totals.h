// What all pieces come to.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/stock/piece_stock.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace roundlay {

/// Millimetres, mm3, kilograms as worked out: not rounded.
/// What a figure is a figure of, and so in which units it is told.
enum class FigureOf { things, length, sawn_wood, wood };

/// One sum as people read it: its row in the list of totals and, where it has a name there, on the cover of
/// the book.
struct Figure {
    Said what;
    FigureOf of = FigureOf::things;
    double amount = 0;            ///< things counted, mm or mm3
    std::optional<Said> on_cover; ///< its name there
};

struct Totals {
    std::size_t pieces = 0, models = 0, pegs = 0;
    double finished = 0;
    std::vector<Index<Piece>> not_weighed; ///< of whose wood no values are known
    double low_kg = 0, high_kg = 0;        ///< of the finished pieces but those
    std::optional<Index<Piece>> longest;   ///< the first of equals
    std::optional<Index<Piece>> heaviest;  ///< the first of equals; nothing where one is not known
    std::vector<Figure> figures = {}; ///< in the order in which they are told; blanks are the sticks that are
                                      ///< ordered, without rounding up

    /// Of every one: a sum in which one is missing is too low.
    bool weights_known() const { return not_weighed.empty(); }
};

/// Said in place of a weight of all, where some are not known.
Said not_weighed_words(const Totals &totals, const Layout &layout);

Totals totals_of(const Layout &layout, const Indexed<PieceStock, Piece> &stock);
Totals totals_of(const Shell &shell, const Layout &layout, const Bodies &bodies);

} // namespace roundlay
