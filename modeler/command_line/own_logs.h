// Writing logs into a document, for the commands that find them out.
#pragma once

#include "kernel/levelling/pile.h"
#include "modeler/command_line/load.h"

#include <string>
#include <vector>

namespace roundlay {

/// A document with logs stated, and what the shell is like with them.
struct StatedLogs {
    Input made;
    ExportJob job;
};

/// Where a log's statement comes from: a line of a CSV file.
struct LogSource {
    std::string file;
    const std::vector<OwnLog> *logs = nullptr;
    std::vector<int> lines; ///< of each of the logs
};

/// Nothing is written. What cannot be read with these logs is told on stderr. `to` is what the document will
/// be called.
std::variant<StatedLogs, ExitCode> state_logs(const Console &console, const Input &input, const Shell &shell,
                                              const std::vector<OwnLog> &logs, const std::string &to);

/// Saves the document to `to` (`-`: the standard output) and tells what it is like on stderr: what is found
/// of a log whose source is known, with its line there.
ExitCode save_with_logs(const Console &console, const StatedLogs &stated, const std::string &to, bool replace,
                        const LogSource &source = {});

} // namespace roundlay
