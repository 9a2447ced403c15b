// The squared stick that is ordered and hewn for a piece.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// It lies along the log, where Piece::blank lies level: of a log that slants in its wall the blank is higher
/// by all that the log rises. Holds the log as hewn, before joints and openings are cut, and each of its
/// faces touches that wood.
struct Stock {
    Blank size;      ///< length with slanted ends, width, height square to it
    Frame frame;     ///< in the piece's frame: origin at its corner, x along it, y to the inside face
    double lean = 0; ///< how much it rises per unit of the piece's x; 0 where a level stick is no higher
};

Stock stock_of(const Piece &piece);

/// Is the blank, which the piece's numbers are measured in, another stick than the stock: at a slant to it,
/// or larger because the log is cut at a slant where it is thickest?
bool is_boxed(const Piece &piece, const Stock &stock);

/// How much the hewing of a face takes off the stock at x of the piece, on the log's middle line.
double hewn_off(const Piece &piece, const Stock &stock, const FaceCut &cut, double x);

} // namespace roundlay
