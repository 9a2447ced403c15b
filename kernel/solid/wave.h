// The rim of a slanted bore on the unrolled wall of its cylinder: one wave of a cosine.
#pragma once

#include "kernel/boundary/boundary.h"

#include <Geom2d_BSplineCurve.hxx>

namespace roundlay {

/// u runs evenly from 0 to 2 pi while t runs from `first` to `first` + 2 pi; v is the rim's height over
/// `foot`. Four polynomials end to end, off the true wave by some 1e-13 of its height.
Handle(Geom2d_BSplineCurve) wave_of(const BoreEnd &end, double radius, double foot, double first);

} // namespace roundlay
