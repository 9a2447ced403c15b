// Findings as tests look at them.
#pragma once

#include "kernel/shell/finding.h"

#include <algorithm>
#include <string>

namespace roundlay::test {

/// A line for each, for a failing test's log.
inline std::string words(const Findings &findings) {
    std::string text;
    for (const Finding &f : findings)
        text += f.code + " @ " + f.place + ": " + f.message + "\n";
    return text;
}

inline bool has(const Findings &findings, const std::string &code) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding &f) { return f.code == code; });
}

} // namespace roundlay::test
