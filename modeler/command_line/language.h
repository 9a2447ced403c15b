// Which language a person is spoken to in.
#pragma once

#include "exporters/words/speech.h"

#include <string>

namespace roundlay {

/// As typed ("en", "fr"), where anything was; else as the environment asks for it, in the order of gettext:
/// LC_ALL, LC_MESSAGES or LANG, the first that is set, says which locale it is; unless that is C or POSIX,
/// LANGUAGE may name others, the wanted first. English where none of them is spoken here. Throws UsageError.
Language language_value(const std::string &typed);

} // namespace roundlay
