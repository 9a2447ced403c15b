// CSV files of logs, for the commands that take one.
#pragma once

#include "kernel/levelling/pile.h"
#include "modeler/command_line/console.h"

#include <optional>
#include <string>

namespace roundlay {

/// The rows, or nothing after every problem was told with its line.
std::optional<std::vector<PileLog>> pile_from(const Console &console, const std::string &path);
std::optional<std::vector<RecordedLog>> record_from(const Console &console, const std::string &path);

/// `logs.csv:12: warning: …` on stderr.
void tell_csv(const std::string &path, const char *weight, const std::vector<CsvProblem> &lines);

} // namespace roundlay
