// What a person must state before anything is cut. Private to this room.
#pragma once

#include "exporters/router/router.h"

namespace roundlay {

/// What is missing or cannot be, each with what is needed.
RouterProblems against(const RouterOptions &options);

/// With all that need not be stated filled in. Only where nothing is against it.
RouterOptions completed(RouterOptions options);

} // namespace roundlay
