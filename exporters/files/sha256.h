// The SHA-256 digest (FIPS 180-4), for the manifest.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace roundlay {

std::array<std::uint8_t, 32> sha256(std::string_view bytes);

/// 64 lower-case hex digits.
std::string sha256_hex(std::string_view bytes);

} // namespace roundlay
