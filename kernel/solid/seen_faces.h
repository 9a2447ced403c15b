// The faces of a solid that the library made, as values.
#pragma once

#include "kernel/boundary/made_by.h"
#include "kernel/solid/solid.h"

#include <optional>
#include <vector>

namespace roundlay {

/// Each face once, in the order in which the library's map of them has it; nothing for one that is neither
/// plane nor an even cylinder.
std::vector<std::optional<FaceSeen>> seen_faces(const Solid &solid);

} // namespace roundlay
