// Round surfaces as flats, for all that is worked out on convex cells.
//
// The wood of a round log is inscribed in its surface and what is scoped out over a log is drawn round that
// log's surface, both with corners and flats at the same angles: logs that touch never overlap in cells. What
// the flats leave out of the wood is added to volumes in closed form.
#pragma once

#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/cuts/cut.h"

#include <vector>

namespace roundlay {

/// Of a whole turn. A flat is at most 0.5 % of the radius off its surface.
inline constexpr int round_flats = 32;

/// An even cylinder that the wood lies within, or, hollow, over.
struct RoundSurface {
    Vec3 at, along; ///< axis; along is unit
    double radius = 0;
    bool hollow = false;
};

RoundSurface surface_of(const RoundCut &cut);
RoundSurface surface_of(const ScopeCut &cut);

/// Out of the wood. Over a hollow surface's axis only: its sides go straight down below that.
Vec3 normal_on(const RoundSurface &surface, Vec3 point);

/// The flats round the wood, outward, as Plane::round `number`.
std::vector<Plane> flats_of(const RoundCut &cut, int number);

/// The convex region that a scope takes of a blank of this length.
std::vector<Plane> region_of(const ScopeCut &cut, double length, int number);

/// Wood between a face that stands for part of a round surface and that surface.
struct Sagitta {
    double volume = 0; ///< mm3
    Vec3 centre;       ///< of the face
};
Sagitta sagitta_of(const Polyhedron &solid, const Face &face, const RoundSurface &surface);

/// How far a bore's rim lies under its highest point on a round surface, on average, where its axis meets it
/// there at height z; 0 where it does not.
double mean_fall(const RoundSurface &surface, const Bore &bore, double z);

} // namespace roundlay
