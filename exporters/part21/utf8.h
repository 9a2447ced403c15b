// UTF-8 taken apart into characters and put together again.
#pragma once

#include <string>
#include <string_view>

namespace roundlay::utf8 {

/// Bytes that are no UTF-8 become U+FFFD each; control characters become a space.
std::u32string characters(std::string_view bytes);

std::string bytes(std::u32string_view characters);

} // namespace roundlay::utf8
