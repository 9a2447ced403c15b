// Figures as a hand writes them into a box: strokes, nothing of the program's lettering.
#pragma once

#include "exporters/sheets/drawing/rect.h"

#include <string>
#include <utility>
#include <vector>

namespace roundlay::test {

using HandStroke = std::pair<Vec2, Vec2>;

/// Digits, points, primes, slashes, dashes and blanks from the lower left corner on, digits of that height.
std::vector<HandStroke> written_by_hand(const std::string &figures, Vec2 lower_left, double height);

} // namespace roundlay::test
