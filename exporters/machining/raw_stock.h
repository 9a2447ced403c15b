// What a piece is machined from.
#pragma once

#include "exporters/machining/operation.h"
#include "kernel/boundary/face_words.h"
#include "kernel/geometry/cell.h"

namespace roundlay::machining {

RawStock raw_stock(const Piece &piece, const FaceNames &names);

/// The squared stick, in the piece's frame.
Cell cell_of(const Stock &stock);

/// Outward, of the stock's or the blank's side.
Plane plane_of(const Blank &size, const Frame &frame, LogFace side);

/// Do all rounds of the stick end inside that plane, or at it?
bool is_outside_round(const std::vector<RoundStick> &rounds, double length, const Plane &plane);

/// The way out of a piece's side, in its own frame.
Vec3 outward(LogFace side);

inline constexpr LogFace all_sides[] = {LogFace::top,    LogFace::under,     LogFace::outside,
                                        LogFace::inside, LogFace::datum_end, LogFace::far_end};

} // namespace roundlay::machining
