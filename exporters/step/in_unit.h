// What a STEP file holds, in the file's unit of length.
#pragma once

#include "exporters/step/options.h"
#include "exporters/step/product_writer.h"

namespace roundlay::step {

/// Units to the millimetre.
double per_millimetre(StepUnit unit);

/// Both are given in millimetres.
ProductTree in_unit(ProductTree tree, StepUnit unit);
PartSolid in_unit(PartSolid solid, StepUnit unit);

} // namespace roundlay::step
