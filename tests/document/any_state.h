// States written by a machine, so that a test can have any number of them.
#pragma once

#include "kernel/document/document.h"

#include <string>

namespace roundlay::test {

/// A shell whose entries can be told apart by what a state tells them by, in an order that does not depend on
/// the way that they came: what a state adds stands last.
Shell in_order(Shell shell);

/// Inside a rapidcheck property: a shell in order over these walls, which may be of other sizes.
Shell any_state_of(const std::vector<Wall> &walls);

/// `[[state]]` with all in which `after` differs from what the document reads as.
std::string state_text(const std::string &name, const std::string &on, const ReadResult &before,
                       const Shell &after);

} // namespace roundlay::test
