// Findings as tests look at them.
#pragma once

#include "exporters/words/words.h"
#include "kernel/shell/finding.h"

#include <algorithm>
#include <string>

namespace roundlay::test {

/// Findings in English, as tests compare them.
inline std::string message(const Finding &finding, UnitSystem units = UnitSystem::metric) {
    return message_of(finding, in_english(units));
}
inline std::string place(const Finding &finding) {
    return words_of(finding.about, in_english(UnitSystem::metric));
}
inline std::string sentence(const Finding &finding, UnitSystem units = UnitSystem::metric) {
    return sentence_of(finding, in_english(units));
}

/// A line for each, for a failing test's log.
inline std::string words(const Findings &findings) {
    std::string text;
    for (const Finding &f : findings)
        text += f.code + " @ " + sentence(f) + "\n";
    return text;
}

inline bool has(const Findings &findings, const std::string &code) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding &f) { return f.code == code; });
}

} // namespace roundlay::test
