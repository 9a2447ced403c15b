// Globally unique identifiers that are the same each time the same thing is written.
#pragma once

#include <string>
#include <string_view>

namespace roundlay::building {

/// 22 characters as ISO 16739-1 spells a UUID. The UUID is made of names (RFC 4122, version 5): of the house,
/// and of what is meant in it.
std::string guid_of(std::string_view house, std::string_view what);

} // namespace roundlay::building
