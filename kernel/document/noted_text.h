// A number of the record as it stands in a document.
#pragma once

#include "kernel/record/noted_length.h"

#include <string>
#include <utility>
#include <vector>

namespace roundlay {

/// Its parts and the text of each: note, is, by, on. Of those that may be left out only what says something.
std::vector<std::pair<std::string, std::string>> noted_parts(const NotedLength &noted);

/// `"3.10.1"`; with its parts in braces where more is said of it than the number.
std::string noted_text(const NotedLength &noted);

/// The words for how certain it is.
std::vector<std::string> certainty_words();

} // namespace roundlay
