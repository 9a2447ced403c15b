// Values as they stand in the text of a document.
#pragma once

#include "kernel/measure/measure.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace roundlay {

/// Text in quotes; in the plainest form that holds it: `"A"`, `'7 ft 6"'`, or with escapes. Takes UTF-8.
std::string toml_text(std::string_view text);
/// `"8 1/2 in"`, exact (see spell_length).
std::string toml_text(Length value, UnitSystem system);
/// `"1:8"`, exact (see spell_slope).
std::string toml_text(Slope value);
/// `0.5`, exact. Finite values only.
std::string toml_text(double value);

/// `{ a = 1, b = "x" }` of keys and the texts of their values.
std::string inline_table(const std::vector<std::pair<std::string, std::string>> &keys);

/// A load in kPa: a number where the units are metric and it may stand without its unit, else text with its
/// unit; the one that is much shorter.
std::string load_text(double kpa, UnitSystem system);

} // namespace roundlay
