// What stays of the measured openings of a record where a state of the house says otherwise.
#pragma once

#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Out of `left` go openings that `now` does not have any more, or has in another wall, and of the others the
/// numbers of edges and sizes that it states otherwise than `below`, the shell that `record` was measured on.
/// A size that was measured by its edges stays where only the place is stated anew. Where the length of the
/// wall is stated anew, jambs that were measured from its right end stand where they stood, told from its
/// left.
void leave_out_of_openings(Record &left, const Record &record, const Shell &below, const Shell &now);

} // namespace roundlay
