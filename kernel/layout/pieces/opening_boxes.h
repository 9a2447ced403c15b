// Square cuts in pieces of logs: for openings and the splines in their jambs, and over steps of the
// foundation.
#pragma once

#include "kernel/layout/pieces/pieces.h"

namespace roundlay {

/// How far an open cut reaches past the blank, so that no skin of wood is left by rounding.
inline constexpr double past_blank = 10;

class OpeningBoxes {
  public:
    OpeningBoxes(const Shell &shell, const WallPlace &place, Findings &findings)
        : shell_(shell), place_(place), findings_(findings) {}

    /// The underside over a step, cut level.
    void add_step(Piece &p, PieceSpan &s, const StepPlace &step) const;
    /// What an opening takes of a piece that runs on past it.
    void add_opening(Piece &p, PieceSpan &s, const OpeningCut &c) const;
    /// In the ends of a piece that are jambs; none: that end is no jamb.
    void add_jamb_grooves(Piece &p, const OpeningCut *left, const OpeningCut *right) const;

  private:
    Trim trim(std::size_t opening) const;
    void add_groove(Piece &p, const Span &along, double low, double high, std::size_t opening) const;
    void refuse_grooves(const Piece &p, double both) const;

    const Shell &shell_;
    const WallPlace &place_;
    Findings &findings_;
};

} // namespace roundlay
