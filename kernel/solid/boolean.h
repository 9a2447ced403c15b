// The few calls of boolean operations.
#pragma once

#include "kernel/layout/cuts/cut.h"

#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>

namespace roundlay {

/// The wood that a bore takes, reaching past the faces it opens in.
TopoDS_Shape bore_tool(const Bore &bore);

/// `wood` less all `tools`, by one boolean. One solid comes back as that solid, more as a compound.
/// Throws std::runtime_error where the operation reports an error, leaves nothing, no valid solid, more wood
/// than there was or less than its tools can leave.
TopoDS_Shape cut(const TopoDS_Shape &wood, const TopTools_ListOfShape &tools);

} // namespace roundlay
