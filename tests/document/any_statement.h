// Random statements: every key that the format describes, over the whole range that it takes.
#pragma once

#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

namespace roundlay::test {

/// Inside a rapidcheck property. Reads back from a document; most of these shells cannot be built.
Shell any_statements();

/// The same over walls that are given: its parts fit those of any other shell over the same walls.
Shell any_statements(const std::vector<Wall> &walls);
std::vector<Wall> any_walls();

/// A record that holds no contradiction that is refused, its numbers read. Some stay open.
Record any_record();

} // namespace roundlay::test
