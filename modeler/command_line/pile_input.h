// CSV files of logs, for the commands that take one.
#pragma once

#include "kernel/levelling/pile.h"
#include "modeler/command_line/console.h"

#include <optional>
#include <string>

namespace roundlay {

/// Nothing where the file cannot be opened. Every problem was told with its line.
std::optional<CsvRead<PileLog>> pile_from(const Console &console, const std::string &path);
std::optional<CsvRead<RecordedLog>> record_from(const Console &console, const std::string &path);

/// `logs.csv:12: error: …` on stderr, and among the errors that --json prints.
void tell_errors(const Console &console, const std::string &path, const std::vector<CsvProblem> &lines);
/// `logs.csv:12: warning: …` on stderr, unless --quiet.
void tell_warnings(const Console &console, const std::string &path, const std::vector<CsvProblem> &lines);

} // namespace roundlay
