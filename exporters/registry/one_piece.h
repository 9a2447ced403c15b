// One piece by itself, for front ends that offer it apart from the whole export.
#pragma once

#include "exporters/registry/job.h"

#include <string>

namespace roundlay {

/// The bytes of a STEP file of the piece in its own frame, under its own tag, of a shell that stands. Throws
/// std::runtime_error where the library fails.
std::string one_piece_step(const ExportJob &job, Index<Piece> piece);

/// The bytes of a PDF of its cut sheet. Throws as above.
std::string one_piece_pdf(const ExportJob &job, Index<Piece> piece);

} // namespace roundlay
