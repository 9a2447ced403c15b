// Small words for findings.
#pragma once

#include "kernel/layout/rounded.h"
#include "kernel/measure/said.h"
#include "kernel/shell/about.h"
#include "kernel/shell/shell.h"

#include <algorithm>
#include <string>

namespace roundlay {

/// A length in the shell's own units, for messages.
inline std::string say(const Shell &shell, double mm) {
    LengthStyle style;
    style.system = shell.units;
    return print_length(Length::mm(mm), style);
}

/// Advice that many a finding gives: the most that would do, or the least.
inline Said at_most(const Shell &shell, double mm) {
    return said("%1 at most", no_more(shell, std::max(0.0, mm)));
}
inline Said at_least(const Shell &shell, double mm) {
    return said("%1 at least", no_less(shell, mm));
}

inline std::string subject(const std::string &list, std::size_t index, const std::string &key) {
    return list + "[" + std::to_string(index) + "]." + key;
}

} // namespace roundlay
