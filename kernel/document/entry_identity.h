// Which entry of a list a state means.
#pragma once

#include "kernel/document/key.h"
#include "kernel/document/toml.h"

#include <cstddef>
#include <string>
#include <vector>

namespace roundlay {

/// The values by which its section tells an entry; entries that say the same have the same, however it is
/// spelled (`3 m`, `3000 mm`; two walls in either order). Empty where none of them is stated.
std::string identity_of(const format::Section &section, const toml::table &entry);

/// The entries of the list that have it.
std::vector<std::size_t> entries_told(const format::Section &section, const toml::array &list,
                                      const std::string &identity);

/// `"name = ..."`: what a state states to say which entry it means.
std::string told_by_in_words(const format::Section &section);

} // namespace roundlay
