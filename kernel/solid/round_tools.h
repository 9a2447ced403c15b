// What the library is given to cut round surfaces with.
#pragma once

#include "kernel/layout/cuts/cut.h"
#include "kernel/layout/layout.h"

#include <TopoDS_Shape.hxx>

namespace roundlay {

/// Everything outside the stick within `room` of its axis, from end to end and past both.
TopoDS_Shape stick_tool(const RoundCut &cut, double room);

/// The lower log from its highest point straight down, far past a blank of this size.
TopoDS_Shape scope_tool(const ScopeCut &cut, const Blank &blank);

} // namespace roundlay
