// Measures as they stand in the cells of spreadsheets: with a unit or without one, with a point or a comma.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace roundlay {

/// A column's name as a key, and the unit it states for its numbers: "Butt height (mm)" is butt_height in mm.
struct CsvHeading {
    std::string key;  ///< lower case, words joined by _
    std::string name; ///< as it stands there, without the unit: "Butt height"
    std::string unit; ///< as parse_length reads it; empty = none stated
};
CsvHeading heading_of(std::string_view cell);

/// From `least` up to `most` mm.
struct CsvBounds {
    double least = 0, most = 0;
};

struct CsvFault {
    enum Kind { no_unit, two_ways, out_of_bounds, unreadable } kind = unreadable;
    std::string message; ///< what of the text, without the column
};

/// A length in mm. A comma between digits is a decimal one or stands between thousands, and so is a point
/// followed by three digits where the file writes decimal commas (`commas`): taken is the one that lies
/// within the bounds, refused is what could be either.
std::variant<double, CsvFault> length_in(const std::string &text, const std::string &unit,
                                         const CsvBounds &bounds, bool commas);

} // namespace roundlay
