// What cairo cannot say about a document, or says wrongly, is added afterwards.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string>

namespace roundlay::sheets::pdf {

/// Adds the links between sheets and the document's language, asks viewers to show the title and printers
/// not to scale, and packs the file. The only place that sees qpdf. Throws std::runtime_error naming the
/// cause, also where qpdf would have to mend what it was given.
std::string finished(const std::string &pdf, const Book &book);

} // namespace roundlay::sheets::pdf
