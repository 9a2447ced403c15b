// Which way a wall runs, in words.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace roundlay {

/// Degrees counter-clockwise from east, 0 to under 360, of `east`, `north-west`, `30 deg north of east`.
std::optional<double> parse_heading(std::string_view text);

/// A text that parse_heading reads back to exactly this heading (0 to under 360).
std::string spell_heading(double degrees);

inline constexpr const char *heading_expected =
    "a compass word such as \"east\" or \"north-west\", or \"30 deg north of east\"";

} // namespace roundlay
