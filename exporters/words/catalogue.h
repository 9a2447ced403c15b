// The texts of the program by language. English is the key, so it needs no table of its own.
#pragma once

#include "exporters/words/speech.h"

#include <optional>
#include <span>
#include <string_view>

namespace roundlay {

/// A text and its translation, both with the same holes %1 to %9.
struct Entry {
    std::string_view english, translated;
};

/// Nothing where the catalogue does not have it.
std::optional<std::string_view> translation_of(std::string_view english, Language language);

/// All of a language: tables by subject, each sorted by its English. English has none.
std::span<const std::span<const Entry>> catalogue_of(Language language);

/// What stands between what is wrong and what would fit: "; ".
std::string_view semicolon_of(Language language);

} // namespace roundlay
