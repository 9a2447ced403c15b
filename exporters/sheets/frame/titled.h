// Pages and what their title block says.
#pragma once

#include "exporters/sheets/frame/options.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// What one subject's title block says beside what is the same on all sheets of a set.
struct Title {
    std::string title, supplement, document_type, number;
    std::string scale;   ///< as it is said (said_scale)
    bool symbol = false; ///< of the projection: only where something is projected
    std::string note;
};

/// How the finished sheets of one subject are named.
struct SheetNames {
    std::string title;  ///< for bookmarks; ", 2 of 3" is added where there are several
    std::string anchor; ///< ":1" is added
    std::string chapter;
};

struct Titled {
    std::vector<Page> pages;
    Title title;
    SheetNames names;
};

/// One sheet for each page. `shell` is the name that stands beside the title.
std::vector<Sheet> framed(const Titled &titled, PaperSize size, const SheetOptions &options,
                          const std::string &shell);

} // namespace roundlay::sheets
