// What a person must state before anything is cut. Private to this room.
#pragma once

#include "exporters/router/router.h"

namespace roundlay {

/// With all that need not be stated filled in. Only where nothing is against it.
RouterOptions completed(RouterOptions options);

} // namespace roundlay
