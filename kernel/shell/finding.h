// A finding: what a check has to say about a shell, where, and what would fit.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/shell/about.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

enum class Weight {
    error,   ///< no right solid can be made: nothing is exported
    warning, ///< can be built as drawn, but a person should decide
    note,    ///< worth knowing
};

/// Values, no sentences: the words are made by whoever shows them, in the person's language and units (room
/// `words`).
struct Finding {
    Weight weight = Weight::error;
    std::string code;           ///< stable, lower case with dashes, e.g. "opening-too-wide"
    About about;                ///< what it is about: wall C, round 7
    Said what;                  ///< what is wrong, with amounts
    std::optional<Said> advice; ///< what would fit, or who decides: behind a semicolon where all is told
    std::string
        subject; ///< the statement it comes from, as a document path: "opening[2].width", "rounds.pitch"
};

using Findings = std::vector<Finding>;

inline bool has_errors(const Findings &all) {
    for (const Finding &f : all)
        if (f.weight == Weight::error) return true;
    return false;
}

} // namespace roundlay
