// A body in the form its solid is written from.
#pragma once

#include "exporters/step/options.h"
#include "exporters/step/product_writer.h"
#include "kernel/layout/layout.h"

namespace roundlay::step {

/// Of that piece, in its frame, millimetres. `alone`: the solid stands for no other piece, so that its faces
/// are named with corners and tags.
PartSolid part_solid(const Piece &piece, const Body &body, bool alone,
                     StepRoute route = StepRoute::automatic);

} // namespace roundlay::step
