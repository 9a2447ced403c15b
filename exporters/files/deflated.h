// Bytes made smaller.
#pragma once

#include <string>
#include <string_view>

namespace roundlay {

/// A raw deflate stream (RFC 1951).
std::string deflated(std::string_view bytes);

} // namespace roundlay
