// From a changed Shell back to the state of the house that it is: only what differs there is stated.
#pragma once

#include "kernel/document/edit.h"

#include <string>

namespace roundlay {

/// As restated(), in the [[state]] of that name: `before` is what the document reads as in it. What it stands
/// on, and all other states that do not stand on it, stay as they are. The new text reads as `after` in that
/// state; or one problem and no change, where it cannot be stated so.
Document::Edited restated_in_state(const Document &document, const std::string &state, const Shell &before,
                                   const Shell &after);

} // namespace roundlay
