// How something is told to a person: in which language, with lengths in which units.
#pragma once

#include "kernel/measure/measure.h"

namespace roundlay {

enum class Language { english, french };

struct Speech {
    Language language = Language::english;
    UnitSystem units = UnitSystem::metric;
};

/// What files and the command line speak.
inline Speech in_english(UnitSystem units) {
    return {Language::english, units};
}

} // namespace roundlay
