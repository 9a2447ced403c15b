// The reference of the document on a terminal.
#pragma once

#include "kernel/document/key.h"

#include <string>

namespace roundlay {

std::string words_of_tables();                              ///< which there are
std::string words_of_table(const format::Section &section); ///< its keys

std::string json_of_tables();
std::string json_of_table(const format::Section &section);

} // namespace roundlay
