// How a number is written in a language: the mark before its decimals.
#pragma once

#include "exporters/words/speech.h"

#include <string>

namespace roundlay {

/// Digits with a point, as files have them, as they are read in that language: "0.219" is "0,219" in French.
/// For numbers alone; what a person is to type stays as the document reads it.
std::string with_decimal_mark(std::string digits, Language language);

} // namespace roundlay
