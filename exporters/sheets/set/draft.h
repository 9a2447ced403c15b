// What a set of sheets is drafted from.
#pragma once

#include "exporters/sheets/frame/options.h"

namespace roundlay::sheets {

/// Refers to all of it, which must outlive it. `bodies` are those of Layout::models, in order.
struct Draft {
    const Shell &shell;
    const Layout &layout;
    const Bodies &bodies;
    const SheetOptions &options;

    PaperSize size() const { return paper_for(shell, options); }
    Words words() const { return words_for(shell, layout, options); }
};

} // namespace roundlay::sheets
