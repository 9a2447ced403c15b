// What the stages of a layout work out, one after the other.
#pragma once

#include "kernel/layout/corners/corners.h"
#include "kernel/layout/courses/courses.h"
#include "kernel/layout/fastenings/bores.h"
#include "kernel/layout/fastenings/pegs.h"
#include "kernel/layout/floors/floors.h"
#include "kernel/layout/found.h"
#include "kernel/layout/foundation.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/pieces/pieces.h"
#include "kernel/layout/walls.h"

namespace roundlay {

/// In their order. Each is worked out from those before it; where one of these has an error, it says what is
/// true all the same.
struct Stages {
    Found<Plan> plan;
    Found<Courses> courses;
    Found<Foundation> foundation;
    Found<Corners> corners;
    Found<Openings> openings;
    Findings logs_on_steps;
    Found<Slivers> slivers;
    Findings level_sills;
    Found<Pieces> pieces;
    Found<Floors> floors;
    Found<Bores> bores;
    Found<Pegs> pegs;
    Findings mends; ///< told once all pieces are put together
};

Stages work_out(const Shell &shell);

/// Whether there is a shell to build.
inline bool all_stand(const Stages &s) {
    return stand(s.plan, s.courses, s.foundation, s.corners, s.openings, s.pieces, s.floors, s.bores, s.pegs);
}

} // namespace roundlay
