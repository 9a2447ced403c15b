// What the kernel says, as tests look at it.
#pragma once

#include "exporters/words/words.h"

#include <string>

namespace roundlay::test {

/// In English.
inline std::string english(const Said &said, UnitSystem units = UnitSystem::metric) {
    return words_of(said, in_english(units));
}

} // namespace roundlay::test
