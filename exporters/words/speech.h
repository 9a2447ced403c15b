// How something is told to a person: in which language, with lengths in which units.
#pragma once

#include "kernel/measure/measure.h"

#include <optional>
#include <string_view>

namespace roundlay {

enum class Language { english, french };

/// Its tag as BCP 47 has it: "en". What documents say of themselves, and what a person states.
std::string_view tag_of(Language language);
/// Of a tag or of the name of a locale, by what it begins with: "fr", "fr-CA", "fr_CA.UTF-8". Nothing where
/// the program does not speak it.
std::optional<Language> language_tagged(std::string_view tag);

struct Speech {
    Language language = Language::english;
    UnitSystem units = UnitSystem::metric;
};

/// Where no person has chosen.
inline Speech in_english(UnitSystem units) {
    return {Language::english, units};
}

} // namespace roundlay
