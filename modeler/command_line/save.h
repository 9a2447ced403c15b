// Where a command's one output goes: a file or the standard output.
#pragma once

#include "modeler/command_line/console.h"

#include <string>
#include <string_view>

namespace roundlay {

/// Writes the bytes whole or not at all. `-` is the standard output, for bytes that a terminal can show or
/// that go into a pipe.
ExitCode save(const Console &console, const std::string &path, std::string_view bytes, bool replace);

} // namespace roundlay
