// The same job of a house in another condition: with its pegs driven, as it was found.
#pragma once

#include "exporters/registry/job.h"

namespace roundlay {

/// After its shell has been exchanged: what was composed, drawn and worked out was of the other one.
void start_anew(ExportJob &job);

/// The job itself, but for logs that get the holes of their pegs in place: they have them here.
ExportJob as_it_stands(const ExportJob &job);

} // namespace roundlay
