// Words as they stand in HTML and XML.
#pragma once

#include <string>
#include <string_view>

namespace roundlay {

/// As text or within the quotes of an attribute: the five signs that mean something there by their names.
std::string in_markup(std::string_view words);

} // namespace roundlay
