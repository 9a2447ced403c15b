// Small words for findings.
#pragma once

#include "kernel/shell/shell.h"

#include <string>

namespace roundlay {

/// A length in the shell's own units, for messages.
inline std::string say(const Shell &shell, double mm) {
    LengthStyle style;
    style.system = shell.units;
    return print_length(Length::mm(mm), style);
}

inline std::string wall_place(const std::string &wall) { return "wall " + wall; }
inline std::string round_place(const std::string &wall, int round) {
    return "wall " + wall + ", round " + std::to_string(round);
}
inline std::string subject(const std::string &list, std::size_t index, const std::string &key) {
    return list + "[" + std::to_string(index) + "]." + key;
}

} // namespace roundlay
