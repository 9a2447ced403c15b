// What a plane cut takes away: the wood within all of these planes, each outward of the region. Planes on the
// blank's own faces are left out, for they would only make slivers: the cut is open there. Bores and round
// surfaces are no such regions (wood/round_flats.h).
#pragma once

#include "kernel/layout/cuts/blank.h"
#include "kernel/layout/cuts/cut.h"

#include <vector>

namespace roundlay {

std::vector<Plane> region_of(const FaceCut &cut);
std::vector<Plane> region_of(const SeamCut &cut, const Blank &blank);
std::vector<Plane> region_of(const BoxCut &cut);
std::vector<Plane> region_of(const PocketCut &cut, const Blank &blank);
std::vector<Plane> region_of(const CheekCut &cut, const Blank &blank);
std::vector<Plane> region_of(const MendCut &cut, const Blank &blank);

} // namespace roundlay
