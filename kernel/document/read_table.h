// Reads what the description says may stand in a document.
#pragma once

#include "kernel/document/key.h"
#include "kernel/document/table_reading.h"

namespace roundlay {

/// The table or the entries of a section, each into its place in `around`: the Shell, or the entry that it
/// stands in.
void read_section(Reading &reading, TableReader &table, const format::Section &section, void *around,
                  const Shell &shell);

/// The keys of a table alone, with no word on what else stands in it.
void read_keys(Reading &reading, TableReader &table, const format::Table &described, void *owner);

} // namespace roundlay
