// Booleans are held against what the cuts leave.
#pragma once

#include "kernel/solid/solid.h"

#include <TopTools_ListOfShape.hxx>

namespace roundlay {

/// `wood` less all `tools`, which must leave the body. Throws std::runtime_error where it does not.
Solid cut_and_held(const TopoDS_Shape &wood, const TopTools_ListOfShape &tools, const Body &body);

} // namespace roundlay
