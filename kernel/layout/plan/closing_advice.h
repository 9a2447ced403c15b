// Which walls' lengths would close a walk round the outside that does not.
#pragma once

#include "kernel/measure/said.h"
#include "kernel/shell/shell.h"

#include <functional>
#include <optional>

namespace roundlay {

/// `holds` tells whether the outside of a shell can
/// be walked. Names the one wall, or else the two, whose lengths close it with the least change and may so be
/// left out of the document; nothing where no such lengths hold.
std::optional<Said> closing_advice(const Shell &shell, const std::function<bool(const Shell &)> &holds);

} // namespace roundlay
