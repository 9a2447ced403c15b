// Writing logs into a document, for the commands that find them out.
#pragma once

#include "modeler/command_line/load.h"

#include <string>
#include <vector>

namespace roundlay {

/// The document with these logs stated, saved to `to` (`-`: the standard output). What it is like with them
/// is told on stderr.
ExitCode save_with_logs(const Console &console, const Input &input, const Shell &shell,
                        const std::vector<OwnLog> &logs, const std::string &to, bool replace);

} // namespace roundlay
