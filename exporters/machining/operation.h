// What a shop does to the stock of one piece, operation by operation, for no machine in particular.
//
// Plain values. All places are in the piece's own frame, the one of its STEP file: x along the log from its
// datum end, y from its outside face to its inside face, z up as it lies in the house; millimetres. Applied
// to the stock in any order, the operations leave the solid of the STEP file.
#pragma once

#include "kernel/geometry/plane.h"
#include "kernel/layout/cuts/log_sides.h"
#include "kernel/layout/pieces/stock.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::machining {

enum class OperationKind {
    plane,  ///< all beyond one plane
    slot,   ///< between planes, open at two or more sides of the log: a notch, a tail, part of an opening
    pocket, ///< between planes, open at one side only
    bore,
    groove, ///< round, along the log
    saddle  ///< round, across the log
};

/// One plane that bounds what is taken: its normal points out of what is taken, into the wood that stays.
struct TakenSide {
    Plane plane;
    std::string face; ///< what the face that it leaves is called in STEP
};

/// A level cylinder, and all that lies below it straight down, so wide to either side of its axis.
struct TakenRound {
    Vec3 at, along; ///< a point of its axis, and its way: level, unit
    double radius = 0, half_width = 0;
    std::string face, cheek; ///< the round face, and the upright ones at its edges
};

struct Drilled {
    Vec3 entry, along;   ///< where its axis enters, and the unit way into the wood
    double diameter = 0; ///< of the hole
    double depth = 0;    ///< along the axis; where it is through, to where the axis leaves the wood
    bool through = false;
    std::string wall, bottom; ///< names of its faces; no bottom where it is through
};

/// A side that a straight tool reaches the operation from.
struct AccessSide {
    LogFace side = LogFace::top;
    double reach = 0; ///< of the tool, at least: from the stock's face on that side
    double tilt = 0;  ///< degrees that the tool, its end or its flank, is tilted off that way
};

/// An inner edge between two sides of an operation.
struct InsideCorner {
    Vec3 from, to;
    double angle = 90; ///< degrees, of the room between the sides
};

struct Operation {
    std::optional<std::size_t>
        cut;              ///< index into Piece::cuts; none: off a stock that is larger than its blank
    std::string mark;     ///< as on the piece's sheet; empty where it has none
    std::string made_for; ///< corner, opening or neighbour; empty where it stands for several pieces
    OperationKind kind = OperationKind::plane;
    std::vector<TakenSide> sides; ///< takes what lies within all of them
    std::optional<TakenRound> round;
    std::optional<Drilled> bore;
    Box3 box;                       ///< of all that is taken of the stock
    std::vector<AccessSide> access; ///< the first is the best; none: no straight tool reaches it
    std::vector<InsideCorner> corners;
    std::optional<double> inside_radius; ///< least, seen along the tool; 0: sharp; none: no inner corner
    double tolerance = 0;                ///< +/-, a proposal
    std::vector<std::string> makes;      ///< faces of the finished piece, as STEP has them
    int setup = 0;                       ///< from 1; 0: none of them reaches it
    std::optional<LogFace> from;         ///< the side that the tool comes from in that set-up
};

/// Along x.
struct Stretch {
    double from = 0, to = 0;
};

/// What clamps take hold of.
enum class Hold {
    faces,  ///< its two sides as it lies, flat in the half that lies below, over every stretch told
    round,  ///< one of these is no flat face: cradles, dogs or straps, which the shop says
    nowhere ///< the faces are there, and no stretch of them is left long enough: the shop says
};

/// The log lies on one face and is worked from the opposite one, and from its ends.
struct Setup {
    LogFace down = LogFace::under, up = LogFace::top;
    double packing = 0;         ///< under its far end so that x is level; below 0: under its datum end
    std::vector<Stretch> clamp; ///< none but where it is held by faces
    std::vector<Stretch> keep_clear;
    Hold hold = Hold::nowhere;
    bool lies_on_flat = false; ///< else on the round of the log
};

/// The round stick that a log is made of: no wood lies outside.
struct RoundStick {
    Vec3 at, along;
    double radius = 0;
    std::string face;
};

/// A face of the squared stick that is wood: of a round log those that lie outside the round are none.
struct StockFace {
    LogFace side = LogFace::top;
    Plane plane; ///< outward
    std::string face;
};

struct RawStock {
    Stock stock;
    std::vector<RoundStick> rounds;
    std::vector<StockFace> faces;
};

/// Of one distinct piece.
struct OperationList {
    std::string tag;
    std::vector<std::string> pieces; ///< all that are made alike
    RawStock stock;
    std::vector<Setup> setups;
    std::vector<Operation> operations; ///< in working order
    std::optional<double> volume;      ///< of the finished piece, mm3; none where its border does not tell it
    bool faces_named = true;           ///< else its STEP file alone tells them, and `makes` all that may be
};

} // namespace roundlay::machining
