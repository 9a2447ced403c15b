// What is wrong with a document, and where.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/measure/said.h"
#include "kernel/shell/finding.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// A place in a text. Lines and columns count from 1, columns in characters; 0 = the file as a whole.
struct Place {
    int line = 0;
    int column = 0;
    std::size_t offset = 0; ///< in bytes from the start of the file
    bool operator==(const Place &) const = default;
};

struct Problem {
    Weight weight =
        Weight::error; ///< error: no shell can be read; warning: it is read, but a person should look
    std::string file;  ///< as the caller named it
    Place place;
    std::string message;  ///< one sentence: what is wrong
    std::string expected; ///< what would have been right; may be empty
    /// The message as a value, where the record says it as one: other languages have it in their catalogue.
    std::optional<Said> said = {};
    UnitSystem units = UnitSystem::metric; ///< of what is said
};

using Problems = std::vector<Problem>;

/// `one-room.roundlay:12:9: error: the length has no unit; expected a length such as ...`
std::string to_text(const Problem &problem);

bool has_errors(const Problems &problems);

} // namespace roundlay
