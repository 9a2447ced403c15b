// Writes a boundary down as a B-rep, with no boolean and no sewing.
#pragma once

#include "kernel/boundary/boundary.h"

#include <TopoDS_Solid.hxx>

namespace roundlay {

/// One solid with one closed shell. Plane faces carry no curves of their own plane; bore walls do.
/// Tolerances cover how far the vertices lie off their planes. Throws what OpenCASCADE throws.
TopoDS_Solid written_down(const Boundary &boundary);

} // namespace roundlay
