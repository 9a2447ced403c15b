// Names that the record refers to: tags, sheets, planes, corners, places.
#pragma once

#include "kernel/record/check_record.h"

namespace roundlay {

void tell_wrong_names(const Record &record, std::vector<RecordProblem> &problems);

/// The same piece for the same deed: the first tick counts.
void tell_ticked_twice(const Record &record, std::vector<RecordProblem> &problems);

} // namespace roundlay
