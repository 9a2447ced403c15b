// A border in another unit of length.
#pragma once

#include "kernel/boundary/boundary.h"

namespace roundlay {

/// Every length times `factor`, which is more than 0; directions and angles stay.
Boundary scaled(Boundary border, double factor);

} // namespace roundlay
