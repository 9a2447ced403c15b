// Lengths as they are noted in the field: 3.10.1, 7'-6 1/2", 2,415 m.
//
// What a sheet of notes means by its dots is said once on the sheet and never guessed: 3.10.1 is 46 1/4 in
// where it counts quarters of an inch and 46 1/16 in where it counts sixteenths.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/measure/said.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace roundlay {

/// What 3.10 is: 3 ft 10 in, or 3.10 ft.
enum class TwoFields { feet_and_inches, decimal_feet };

/// What a number without a unit is counted in.
enum class NoteUnit { mm, cm, m, inch, foot };

inline constexpr int note_denominators[] = {4, 8, 16};

/// What a sheet says of its numbers.
struct Notation {
    std::optional<int> denominator; ///< of an inch, that the third field of 3.10.1 counts: 4, 8 or 16
    std::optional<TwoFields> two_fields;
    std::optional<NoteUnit> unit; ///< of numbers that have none beside them
    bool operator==(const Notation &) const = default;
};

/// What a sheet does not say that a note can be read by.
enum class OpenNote { denominator, two_fields, unit };

/// Why a note has no value.
struct NoteTrouble {
    bool open = false;               ///< it can be read once the sheet says how; else it is no length
    Said what;                       ///< one sentence: what, where in the note, and what to do
    OpenNote lacks = OpenNote::unit; ///< of an open one
};

/// So many numbers stay open for want of that; one of them is written so.
Said told_of_all(OpenNote lacks, std::size_t count, const std::string &one);

using NoteValue = std::variant<Length, NoteTrouble>;

/// Takes any bytes. Three fields are feet, inches under 12 and parts of an inch under the denominator; two
/// are what the sheet says; all else is a length with its unit in either system (parse_length), with long
/// dashes, prime marks and a decimal comma as well. A sign may stand in front: heights go up and down from
/// their plane. Exact, rounded once.
NoteValue read_note(std::string_view written, const Notation &notation);

} // namespace roundlay
