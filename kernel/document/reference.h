// The description in words: rows of the tables in FORMAT.md, and what `roundlay format` prints.
#pragma once

#include "kernel/document/key.h"

namespace roundlay::format {

/// Neighbours that say the same stand in one row. Names and words of the format are in backquotes.
struct ReferenceRow {
    std::vector<std::string> keys;
    std::string takes, what;
    std::string left_out; ///< what is understood then
    bool needed = false;  ///< it cannot be left out
    std::string shared;   ///< else `[notch]`: all keys of that table stand here too
};

std::vector<ReferenceRow> reference_rows(const Section &section);

/// The same as a table in Markdown.
std::string markdown_table(const Section &section);

} // namespace roundlay::format
