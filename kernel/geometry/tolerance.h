// The few tolerances of the kernel, named. All in millimetres.
#pragma once

namespace roundlay::tolerance {

inline constexpr double weld = 1e-6;     ///< points closer than this are one point
inline constexpr double thinnest = 1e-5; ///< a cell thinner than this is no wood
inline constexpr double clear = 0.5;     ///< a bore keeps this far from every edge it does not cut
inline constexpr double overlap = 1e-3;  ///< mm3: pieces sharing less than this do not overlap

} // namespace roundlay::tolerance
