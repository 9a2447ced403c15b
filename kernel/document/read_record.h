// The record of a document, once all of it was read.
#pragma once

#include "kernel/document/reading.h"
#include "kernel/record/record.h"
#include "kernel/shell/shell.h"

namespace roundlay {

/// Gives the numbers of the record what they say, and reports what it says against itself, each at its place.
void check_record(Reading &reading, Record &record, const Shell &shell);

} // namespace roundlay
