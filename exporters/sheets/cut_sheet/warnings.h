// What the checks have to say about the piece on a sheet.
#pragma once

#include "exporters/words/speech.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/finding.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// For each of Layout::models: errors and warnings about its pieces in few words, the place and what is wrong
/// without the advice, each once, in the order of the findings. What is about the shell as a whole stands on
/// no sheet. Where no person has chosen a language it is English.
Indexed<std::vector<std::string>, Model> warnings_by_model(const Findings &findings, const Shell &shell,
                                                           const Layout &layout,
                                                           Language language = Language::english);

} // namespace roundlay::sheets
