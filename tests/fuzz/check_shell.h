// What must hold for any shell whatever that a document states: through layout, bodies, review, lists and
// sheets.
#pragma once

#include "kernel/shell/shell.h"

#include <optional>
#include <string>

namespace roundlay::test {

/// How far to go: what takes long is only made of shells with fewer pieces than this.
struct FuzzDepth {
    std::size_t reviewed = 400, drawn = 60; ///< pieces; distinct ones
};

/// What broke a promise, in words; nothing if none did.
std::optional<std::string> broken_shell(const Shell &shell, const FuzzDepth &depth = {});

} // namespace roundlay::test
