// What a printer with that bed and nozzle can make at that scale. Private to this room.
#pragma once

#include "exporters/print/print.h"

namespace roundlay {

PrintProblems what_cannot_be_printed(const Layout &layout, const Bodies &bodies, const PrintOptions &options);

/// The body without bores thinner than that; the prisms that stand for the others go round them, so that what
/// they are for goes in.
Body printable(Body body, double thinnest_bore, int sides);

} // namespace roundlay
