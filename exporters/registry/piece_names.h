// File names for distinct pieces.
#pragma once

#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay {

/// One name without ending for each of layout.models, from the tag of its first piece: safe on every file
/// system and different from the others even where capitals do not count.
Indexed<std::string, Model> piece_file_names(const Layout &layout);

} // namespace roundlay
