// A screen of joists, beams and trimmers by textbook formulas: how they would deflect, and how hard they are
// pressed.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/trade/joist.h"
#include "kernel/trade/span_load.h"

#include <string>
#include <vector>

namespace roundlay {

/// Of one timber, in newtons, millimetres and megapascals: the worst of its spans, each as a simple one, with
/// its least section and the elasticity of green clear wood. A span runs from the middle of one bearing to
/// that of the next, which is not less than the NDS asks (3.2.1, from memory): clear span and half the
/// bearing needed at each end.
struct TimberScreen {
    Index<Timber> timber;
    double span = 0;
    double width = 0, height = 0;
    double live = 0, total = 0; ///< even load, N/mm; total: with the dead load and its own weight
    double sure = 0; ///< of the total what is always there: its least own weight, and the dead load if stated
    std::vector<PointLoad> points; ///< from other timbers, in all; along its clear length from its `from`
    double elasticity = 0;         ///< MPa
    double deflection = 0;         ///< under the live load, bending and no shear
    double bending = 0, shear = 0, bearing = 0; ///< largest stresses under the whole load
    /// How hard it pulls up at each of its supports, N, from its `from` on: as it runs on over all of them
    /// (statics, equation of three moments), what is sure on all spans and the rest on those alone that lift
    /// it. 0: it does not.
    std::vector<double> lifts;
};

struct FloorScreen {
    std::vector<TimberScreen>
        timbers;           ///< those of floors with a stated live load; none of an unknown species
    Said formulas, inputs; ///< with their sources
    Said basis;            ///< both, and the caution
};

/// Said beside every stress.
inline constexpr const char *no_allowable = "none published for such logs: a licensed person judges";

FloorScreen screen_floors(const Shell &shell, const Layout &layout);

} // namespace roundlay
