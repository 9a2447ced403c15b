// One number of a record: as it was noted, and what it says.
#pragma once

#include "kernel/measure/measure.h"

#include <optional>
#include <string>

namespace roundlay {

/// Proposed: put in by a rule where nobody has measured. Contradicted: another measure says otherwise.
enum class Certainty { measured, proposed, contradicted };

struct NotedLength {
    std::string written;         ///< as it was noted, and it stays so; empty: not taken
    std::optional<Length> value; ///< what it says by its sheet (read_numbers); nothing while that is open
    Certainty certainty = Certainty::measured;
    std::string by, on; ///< who says so, and when, in any words; empty: as is said of its log

    bool is_taken() const { return !written.empty(); }
    bool operator==(const NotedLength &) const = default;
};

} // namespace roundlay
