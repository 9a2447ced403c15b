// A screen of joists, beams and trimmers by textbook formulas: how they would deflect, and how hard they are
// pressed.
#pragma once

#include "kernel/layout/layout.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// Of one timber, in newtons, millimetres and megapascals; by its longest span as a simple one under an even
/// load, with its least section and the elasticity of green clear wood. A stated dead load holds the timber's
/// own weight.
struct TimberScreen {
    int timber = 0;  ///< index into Layout::timbers
    double span = 0; ///< from middle to middle of its bearings
    double width = 0, height = 0;
    double live = 0, total = 0;                 ///< N/mm
    double elasticity = 0;                      ///< MPa
    double deflection = 0;                      ///< under the live load, bending and no shear
    double bending = 0, shear = 0, bearing = 0; ///< stresses under the whole load
};

struct FloorScreen {
    std::vector<TimberScreen> timbers; ///< those of floors with a stated live load, of a known species
    std::vector<int> unscreened; ///< timbers that carry others at single points, or of an unknown species
    std::string basis;           ///< formulas, inputs, sources
};

/// The share of its span that a floor joist may deflect under the live load: IRC R301.7, from memory.
inline constexpr double deflection_limit = 360;

/// The least length of a joist's end on wood: 38 mm, OBC joist end bearing article; 1.5 in, IRC R502.6 (from
/// memory).
inline constexpr double least_bearing = 38;

FloorScreen screen_floors(const Shell &shell, const Layout &layout);

} // namespace roundlay
