#pragma once

#include <string>
#include <string_view>

namespace roundlay::sheets {

/// RFC 4648 with padding, no line breaks.
std::string base64(std::string_view bytes);

} // namespace roundlay::sheets
