// Names that the record refers to: tags, sheets, planes, corners, places.
#pragma once

#include "kernel/record/check_record.h"

namespace roundlay {

void tell_wrong_names(const Record &record, std::vector<RecordProblem> &problems);

} // namespace roundlay
