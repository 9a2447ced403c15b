// The TOML parser as it is used here: compiled once (in toml.cpp), errors as values, shallow nesting only.
#pragma once

#define TOML_EXCEPTIONS 0
#define TOML_HEADER_ONLY 0
#define TOML_ENABLE_FORMATTERS 0
#define TOML_MAX_NESTED_VALUES 16 // lists in lists; keeps its recursion, and that of its destructors, small
#include <toml++/toml.h>
