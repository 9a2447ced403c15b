// Which lengths a statement takes.
#pragma once

#include "kernel/document/limits.h"

namespace roundlay {

struct LengthBounds {
    double low_mm, high_mm;
    bool low_is_in; ///< the low bound itself is allowed
    const char *words;
    const char
        *words_in_feet; ///< the same in round figures that lie within: for documents in feet and inches
};

namespace bounds {
inline constexpr LengthBounds long_size{0, limits::long_mm, false, "a length over 0 and up to 100 m",
                                        "a length over 0 and up to 328 ft"};
inline constexpr LengthBounds long_place{0, limits::long_mm, true, "a length from 0 to 100 m",
                                         "a length from 0 to 328 ft"};
inline constexpr LengthBounds short_size{0, limits::short_mm, false, "a length over 0 and up to 2 m",
                                         "a length over 0 and up to 6 ft 6 in"};
inline constexpr LengthBounds short_gap{0, limits::short_mm, true, "a length from 0 to 2 m",
                                        "a length from 0 to 6 ft 6 in"};
inline constexpr LengthBounds short_shift{-limits::short_mm, limits::short_mm, true,
                                          "a length from -2 m to 2 m",
                                          "a length from -6 ft 6 in to 6 ft 6 in"};
} // namespace bounds

} // namespace roundlay
