// Sheets without a title block: a frame, a head in words, and what lies under it.
#pragma once

#include "exporters/sheets/drawing/paper.h"
#include "exporters/sheets/drawing/sheet.h"
#include "exporters/sheets/drawing/words.h"

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace roundlay::sheets {

struct PlainSheets {
    std::string subject; ///< their title as well, with ", 2 of 3" where they are several
    std::string chapter; ///< empty: they stand at the top
    std::string anchor;  ///< ":1" is added
    /// Adds head and foot of the sheet of that number, counted from 1.
    std::function<void(std::vector<Item> &items, std::size_t number)> head;
};

/// One sheet of that size for each of the pages, which lie inside drawing_area(size).
std::vector<Sheet> plainly_framed(const std::vector<std::vector<Item>> &pages, PaperSize size,
                                  const PlainSheets &about, const Words &words);

} // namespace roundlay::sheets
