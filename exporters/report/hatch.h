// Hatches: what tells areas apart without colour. Each also has a letter on it, as far as that has room.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <vector>

namespace roundlay::sheets {

enum class Hatch { none, rising, falling, crossed, level, upright, dotted, dense };

/// Lines, or small circles, inside a convex outline in either sense and outside the boxes of texts.
std::vector<Item> hatched(const std::vector<Vec2> &outline, Hatch hatch, const std::vector<Rect> &texts = {});

/// The part of the stroke inside the convex outline; nothing where it runs beside it.
std::vector<Vec2> within_outline(Vec2 from, Vec2 to, const std::vector<Vec2> &outline);

} // namespace roundlay::sheets
