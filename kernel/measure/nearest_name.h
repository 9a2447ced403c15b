// Did you mean ...?
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// Fewest single-letter changes (add, drop, replace, swap two neighbours) from one word to the other.
int changes_between(std::string_view a, std::string_view b);

/// The known name that was most likely meant, where one is near enough (about a third of its letters).
/// Capitals do not matter. The first of equals.
std::optional<std::string> nearest_name(std::string_view typed, const std::vector<std::string> &known);

} // namespace roundlay
