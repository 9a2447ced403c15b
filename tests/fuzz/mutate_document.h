// Changes documents as their writers do: a value, a line, a whole entry at a time.
#pragma once

#include <string>

namespace roundlay::test {

/// One to four such strokes, the same for the same seed.
std::string mutated_document(const std::string &text, unsigned seed);

} // namespace roundlay::test
