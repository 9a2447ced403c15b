// Names one after another.
#pragma once

#include "exporters/sheets/drawing/words.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// "A-05-1, A-06-1".
std::string listed(const std::vector<std::string> &names);

/// The first `most` of them, and how many more: "A-05-1, A-06-1 and 9 more".
std::string first_listed(const std::vector<std::string> &names, std::size_t most, const Words &words);

} // namespace roundlay::sheets
