// How the rows of a card are spaced, millimetres on paper.
#pragma once

#include "exporters/sheets/form/form_pen.h"

namespace roundlay::sheets {

inline constexpr double tag_width = 27;
inline constexpr double line_height = print_line + box_height + print_line; ///< label, box, what is proposed
inline constexpr double zone_label = print_line;
inline constexpr double between_cards = 1.4;

} // namespace roundlay::sheets
