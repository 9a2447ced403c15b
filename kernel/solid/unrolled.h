// Edges as the library wants them: polynomials in space, and curves on a cylinder's unrolled wall.
#pragma once

#include "kernel/boundary/boundary.h"

#include <Geom2d_Curve.hxx>
#include <Geom_BSplineCurve.hxx>

namespace roundlay {

/// Over t in [0, 1].
Handle(Geom_BSplineCurve) spline_of(const Polynomials &curve);

/// An edge of a round face: u is the angle, v the way along the axis from the surface's own point. Runs with
/// the edge's own parameter: the length of a line, the turn of an arc, t of a polynomial.
Handle(Geom2d_Curve)
    unrolled_on(const BoundaryRound &round, const Boundary &boundary, const BoundaryEdge &edge);

/// A rim in a round surface, on the wall of its bore, v over `foot`.
Handle(Geom2d_Curve) unrolled_rim(const Polynomials &rim, double foot);

} // namespace roundlay
