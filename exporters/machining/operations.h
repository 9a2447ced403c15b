// From a piece to its list of operations.
#pragma once

#include "exporters/machining/operation.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/body.h"

namespace roundlay::machining {

/// Of one of Layout::models, and its body. Throws std::invalid_argument where there is no such model.
OperationList operations_of(const Layout &layout, Index<Model> model, const Body &body);

} // namespace roundlay::machining
