// Writes a book as PDF: vector lines, real text in an embedded font, bookmarks, links, title, language.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string>

namespace roundlay::sheets {

/// The bytes of the file. The same book (with the same `created`) gives the same bytes. A book without
/// sheets gives one blank page. Throws std::runtime_error naming the cause when the library cannot.
std::string write_pdf(const Book &book);

} // namespace roundlay::sheets
