// What stands on the page's buttons, and what it says of itself. Private to this room.
#pragma once

#include "exporters/page/page.h"
#include "exporters/words/voice.h"

#include <vector>

namespace roundlay {

std::vector<YardLabel> page_labels(const Voice &voice, std::size_t steps);

} // namespace roundlay
