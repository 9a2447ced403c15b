// One piece by itself, for front ends that offer it apart from the whole export.
#pragma once

#include "exporters/registry/job.h"

#include <string>

namespace roundlay {

/// The bytes of a STEP file of the piece in its own frame, under its own tag. `piece` is an index into
/// Layout::pieces of a shell that stands. Throws std::runtime_error where the library fails.
std::string one_piece_step(const ExportJob &job, int piece);

/// The bytes of a PDF of its cut sheet. Throws as above.
std::string one_piece_pdf(const ExportJob &job, int piece);

} // namespace roundlay
