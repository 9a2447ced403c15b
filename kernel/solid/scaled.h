// A solid in another unit of length.
#pragma once

#include "kernel/solid/solid.h"

namespace roundlay {

/// Every length times `factor`, which is more than 0. Throws std::runtime_error where the library cannot.
Solid scaled(const Solid &solid, double factor);

} // namespace roundlay
