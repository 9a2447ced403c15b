// The house with its pegs driven, for those who draw or print it as it stands.
#pragma once

#include "exporters/registry/job.h"

namespace roundlay {

/// The job itself, but for logs that get the holes of their pegs in place: they have them here.
ExportJob as_it_stands(const ExportJob &job);

} // namespace roundlay
