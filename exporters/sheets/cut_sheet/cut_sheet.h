// Cut sheets: everything that the person at the bench needs to make one log.
#pragma once

#include "exporters/sheets/frame/options.h"
#include "kernel/layout/body.h"
#include "kernel/shell/shell.h"

#include <vector>

namespace roundlay::sheets {

using CutSheetOptions = SheetOptions;

/// One cut sheet, of as many paper sheets as it needs, for the pieces of one model. `body` is theirs.
std::vector<Sheet> cut_sheet(const Shell &shell, const Layout &layout, const Model &model, const Body &body,
                             const CutSheetOptions &options);

/// Where the first sheet of the model's cut sheet is found.
std::string cut_sheet_anchor(const Layout &layout, const Model &model);

/// The cut sheets of all distinct pieces, in the order of Layout::models. Empty where there are no pieces.
/// `bodies` are those of the models, in order.
std::vector<Sheet> cut_sheets(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                              const CutSheetOptions &options);
std::vector<Sheet> cut_sheets(const Shell &shell, const Layout &layout, const CutSheetOptions &options);

} // namespace roundlay::sheets
