// Which lengths a statement takes.
#pragma once

#include "kernel/document/limits.h"

namespace roundlay {

struct LengthBounds {
    double low_mm, high_mm;
    bool low_is_in; ///< the low bound itself is allowed
    const char *words;
};

namespace bounds {
inline constexpr LengthBounds long_size{0, limits::long_mm, false, "a length over 0 and up to 100 m"};
inline constexpr LengthBounds long_place{0, limits::long_mm, true, "a length from 0 to 100 m"};
inline constexpr LengthBounds short_size{0, limits::short_mm, false, "a length over 0 and up to 2 m"};
inline constexpr LengthBounds short_gap{0, limits::short_mm, true, "a length from 0 to 2 m"};
inline constexpr LengthBounds short_shift{-limits::short_mm, limits::short_mm, true,
                                          "a length from -2 m to 2 m"};
} // namespace bounds

} // namespace roundlay
