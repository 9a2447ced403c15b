// What cairo cannot say about a document, or says wrongly, is added afterwards.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <string>

namespace roundlay::sheets::pdf {

/// The links between the book's sheets and its language added, the file packed (`packed.h`, which also says
/// what it throws).
std::string finished(const std::string &pdf, const Book &book);

} // namespace roundlay::sheets::pdf
