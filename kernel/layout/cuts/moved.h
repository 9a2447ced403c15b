// A cut in another piece of the same log, whose frame starts elsewhere in it and lies the same way.
#pragma once

#include "kernel/layout/cuts/blank.h"
#include "kernel/layout/cuts/cut.h"

#include <string>

namespace roundlay {

/// The same place in the world, told in a frame whose origin is at `origin` of the first one. `was` and `now`
/// are the blanks of the two pieces.
Cut moved(const Cut &cut, Vec3 origin, const Blank &was, const Blank &now);

/// The log or timber on the other side of it goes by another tag.
void call_neighbour(Cut &cut, const std::string &tag);

} // namespace roundlay
