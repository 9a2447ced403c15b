// Values typed on the command line, read the way the document reads them.
#pragma once

#include "kernel/measure/measure.h"

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

/// What a person typed wrong: ends the command with ExitCode::usage and this sentence.
class UsageError : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

Length length_value(std::string_view option, const std::string &text);      ///< over 0
Length length_or_0_value(std::string_view option, const std::string &text); ///< 0 with or without a unit
Slope slope_value(std::string_view option, const std::string &text);
UnitSystem units_value(const std::string &text); ///< metric, imperial

/// One of the names, else a UsageError with the nearest: `there is no view "sout"; did you mean "south"?`
std::string one_of(std::string_view kind, const std::string &typed, const std::vector<std::string> &names);

} // namespace roundlay
