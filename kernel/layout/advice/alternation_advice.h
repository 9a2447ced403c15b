// Why two logs of one wall follow one another at a corner, and what would mend it: tried before it is said.
#pragma once

#include "kernel/layout/advice/trial.h"
#include "kernel/layout/courses/courses.h"

namespace roundlay {

/// Puts the cause behind each finding of that kind: one log stated too high or too low, else pitches that
/// differ, else the heights stated of single logs together.
void advise_on_alternation(const Shell &shell, Layout &layout, const Courses &courses, const LayOut &try_out);

} // namespace roundlay
