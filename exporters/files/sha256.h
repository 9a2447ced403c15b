// The SHA-256 digest (FIPS 180-4), for the manifest.
#pragma once

#include <string>
#include <string_view>

namespace roundlay {

/// 64 lower-case hex digits.
std::string sha256_hex(std::string_view bytes);

} // namespace roundlay
