// What the lists' JSON looks like, for whoever reads it by a program.
#pragma once

#include <string_view>

namespace roundlay {

/// JSON Schema (draft 07) of any list; that of one by its name in the command line is #/definitions/NAME.
std::string_view lists_schema();

} // namespace roundlay
