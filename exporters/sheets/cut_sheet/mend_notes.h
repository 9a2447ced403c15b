// What a cut sheet says of mends: which wood belongs together, who chose the lengths, what is left.
#pragma once

#include "exporters/sheets/drawing/words.h"
#include "kernel/layout/layout.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Of all pieces of the model; nothing where none of them is mended or new wood in a mended log.
std::vector<std::string> mend_notes(const Shell &shell, const Layout &layout, const Model &model,
                                    const Words &words);

/// Of replacements: each face that is fitted to old work, and how clear of it the seams are cut.
std::vector<std::string> fitted_notes(const Shell &shell, const Layout &layout, const Model &model,
                                      const Words &words);

} // namespace roundlay::sheets
