// Which state of a house a list shows.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// The table and, where the shell is one state of a house, a last column `state` that says which, in every
/// row, for rows are put together in spreadsheets. It has no title: on a terminal it is said over the table.
Table with_state(Table table, const Shell &shell);

/// "State: as found" as a paragraph; empty where the shell is no state of a house.
std::string state_words(const Shell &shell, const Voice &voice);

} // namespace roundlay
