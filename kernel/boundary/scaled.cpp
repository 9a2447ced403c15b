#include "kernel/boundary/scaled.h"

namespace roundlay {

namespace {

void scale(BoundaryCurve &curve, double factor) {
    if (curve.arc) curve.arc->centre = factor * curve.arc->centre, curve.arc->radius *= factor;
    for (Vec3 &pole : curve.polynomials.poles)
        pole = factor * pole;
}

/// What it rises for each unit along is the same in any unit.
void scale(BoundaryBore &bore, double factor) {
    bore.axis = factor * bore.axis;
    bore.radius *= factor;
    bore.below.z *= factor;
    bore.above.z *= factor;
}

} // namespace

Boundary scaled(Boundary border, double factor) {
    for (Vec3 &vertex : border.vertices)
        vertex = factor * vertex;
    for (BoundaryFace &face : border.faces)
        face.plane.offset *= factor;
    for (BoundaryBore &bore : border.bores)
        scale(bore, factor);
    for (BoundaryRound &round : border.rounds)
        round.surface.at = factor * round.surface.at, round.surface.radius *= factor;
    for (BoundaryCurve &curve : border.curves)
        scale(curve, factor);
    return border;
}

} // namespace roundlay
