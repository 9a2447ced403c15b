// One plate as 3MF: each part once, by its name, and where it lies.
#pragma once

#include "exporters/print/print.h"

#include <string>

namespace roundlay {

/// 3MF Core Specification 1.x: a ZIP of a model in millimetres. The same plate gives the same bytes.
std::string write_3mf(const PrintJob &job, const PrintPlate &plate, const std::string &title);

} // namespace roundlay
