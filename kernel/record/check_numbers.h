// Numbers that look as if they were noted in another unit.
#pragma once

#include "kernel/record/check_record.h"

namespace roundlay {

/// Those that are ten times their neighbours, or a tenth: asked, not refused.
void tell_strange_numbers(const Record &record, std::vector<RecordProblem> &problems);

} // namespace roundlay
