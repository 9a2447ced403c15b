// The words of a record in a table that somebody keeps in French.
#pragma once

#include <string>

namespace roundlay {

/// A word of the format (`rotten`), in French where that is wanted. What is no such word stays as it is.
std::string survey_word(const std::string &english, bool in_french);

/// The word of the format for what stands in a cell, in either language, with or without accents and
/// capitals. What is no such word stays as it is.
std::string survey_english(const std::string &cell);

/// What a column is called whose key that is; the key where there is none.
std::string survey_column_name(const std::string &key, bool in_french);

} // namespace roundlay
