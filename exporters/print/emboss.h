// Tags pressed into the undersides of printed pieces. Private to this room.
#pragma once

#include "exporters/print/print.h"

#include <optional>
#include <string>
#include <variant>

namespace roundlay {

/// The body with that tag left out of its underside, to be read from below; or why there is none. `scale`: of
/// the print. `nozzle`: mm, no stroke and nothing between two is thinner.
std::variant<Body, Said> embossed(const Body &body, const std::string &tag, double scale, double nozzle);

} // namespace roundlay
