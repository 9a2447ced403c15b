// Decisions about found logs, and what is ticked as done, held against the shell that is shown.
#pragma once

#include "modeler/command_line/load.h"

namespace roundlay {

/// Adds what a decision cannot be to the problems of the document, as warnings at their lines. The document's
/// own shell, where there are other states, is the house as it was found, which says nothing of where logs
/// are to go: nothing is added then.
void add_decision_problems(Input &input, const ExportJob &job);

/// Adds ticks that cannot be, or that name no piece of this shell, in the same way.
void add_tick_problems(Input &input, const ExportJob &job);

/// The state that is measured, or the document's own shell where none is. Null where that is the one asked
/// for. Bodies only where they are asked for.
std::shared_ptr<const FoundHouse> found_house(const Input &input, bool bodies);

} // namespace roundlay
