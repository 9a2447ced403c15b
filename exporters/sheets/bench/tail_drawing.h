// A tail or a notch on paper: outside, end and inside beside one another.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/pattern/joints.h"

namespace roundlay::sheets {

/// `scale`: paper per wood. Waste hatched; heights from the level line at every corner of each cut.
Block tail_drawing(const Joint &joint, const Words &words, double scale);

} // namespace roundlay::sheets
