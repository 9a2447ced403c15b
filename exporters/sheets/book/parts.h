// The pages of a book that come before its drawings.
#pragma once

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/frame/titled.h"

#include <vector>

namespace roundlay::sheets {

/// Name, picture, facts and cautions.
Titled cover_sheets(const Shell &shell, const SheetOptions &options, const BookWords &words);

/// What lines, marks and greys mean, and how the drawings are read.
Titled legend_sheets(const Shell &shell, const SheetOptions &options);

/// One line for each sheet with its page. `before` is how many pages come before the index; those of the
/// index itself are counted here.
Titled index_sheets(const Shell &shell, const SheetOptions &options, const std::vector<Sheet> &sheets,
                    std::size_t before);

} // namespace roundlay::sheets
