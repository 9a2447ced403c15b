// A finding: what a check has to say about a shell, where, and what would fit.
#pragma once

#include <string>
#include <vector>

namespace roundlay {

enum class Weight {
    error,   ///< no right solid can be made: nothing is exported
    warning, ///< can be built as drawn, but a person should decide
    note,    ///< worth knowing
};

struct Finding {
    Weight weight = Weight::error;
    std::string code;    ///< stable, lower case with dashes, e.g. "opening-too-wide"
    std::string place;   ///< for people: "wall C, round 7" or "corner AB"
    std::string message; ///< one sentence: what is wrong, with amounts, and what would fit
    std::string subject; ///< the statement it comes from, as a document path: "opening[2].width", "rounds.pitch"
};

using Findings = std::vector<Finding>;

inline bool has_errors(const Findings &all) {
    for (const Finding &f : all)
        if (f.weight == Weight::error) return true;
    return false;
}

} // namespace roundlay
