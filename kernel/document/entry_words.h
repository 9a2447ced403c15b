// What an entry of a document is called in a message, and which units the document speaks.
#pragma once

#include "kernel/document/toml.h"

#include <string>
#include <string_view>

namespace roundlay {

/// `opening "front door" in wall "A"` of "opening[2]", `beam 1 of floor "G"` of "floor[0].beam[0]"; an entry
/// without a name by its number, from 1. Empty for a table that stands once. `key`: which of its statements
/// is spoken of, so that a log is not named by a round that is out of bounds.
std::string entry_in_words(const toml::table &root, std::string_view path, std::string_view key);

/// The same of an entry of a list by itself, without what it stands in.
std::string entry_in_words(const std::string &list, std::size_t index, const toml::table &entry);

/// The document states that lengths are shown in feet and inches.
bool speaks_feet(const toml::table &root);

} // namespace roundlay
