// How much wood bores take that run into one another or past the wood.
#pragma once

#include "kernel/layout/wood/body.h"

namespace roundlay {

/// mm3 of wood within all bores, none of it counted twice; the parts of bores that reach into air not at all.
/// From upright lines set close to one another: good to some thousandths of itself.
double wood_within_bores(const Body &body);

/// mm3 of the bores taken whole, which Body::volume takes off.
double bores_taken_whole(const Body &body);

} // namespace roundlay
