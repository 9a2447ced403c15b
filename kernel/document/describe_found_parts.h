// What stands inside a [[found]]: ends, stations, zones, tests, pegs, later cuts.
#pragma once

#include "kernel/document/key_access.h"

namespace roundlay::format {

std::vector<Section> lists_of_found();

} // namespace roundlay::format
