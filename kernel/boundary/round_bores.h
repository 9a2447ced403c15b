// Bores in a border with round faces.
#pragma once

#include "kernel/boundary/border_parts.h"
#include "kernel/boundary/boundary.h"

namespace roundlay {

/// The exact surface that a part of a body's border lies in.
Surface surface_of(const Body &body, const BorderPart &part);

/// Adds the body's bores to its border, whose faces are in the order of the parts. False where one does not
/// open with its whole rim in one face, or comes near another face between its ends.
bool add_bores(Boundary &boundary, const Body &body, const BorderParts &parts);

} // namespace roundlay
