// Letters of square dots that a nozzle can leave out of a face. Private to this room.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace roundlay {

/// In dots: x to the right, y down from the top of the letters.
struct DotBox {
    int x0 = 0, y0 = 0, x1 = 0, y1 = 0;
};

inline constexpr int letter_dots = 7; ///< high

/// How many dots wide a text is.
int dots_wide(std::string_view text);

/// The text as boxes, none of which overlaps another, and no two of which meet in a corner alone: what is cut
/// by them is a solid. None where it has a letter that there is no shape for.
std::optional<std::vector<DotBox>> dotted(std::string_view text);

} // namespace roundlay
