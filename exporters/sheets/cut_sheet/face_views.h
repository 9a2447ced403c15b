// The four faces under one another, the two ends beside the outside face, and all their dimensions.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/cut_sheet/ruler.h"
#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/frame/title_block.h"
#include "kernel/layout/body.h"

#include <optional>

namespace roundlay::sheets {

/// What the views are drawn from and how.
struct ViewsWanted {
    const Features *features = nullptr;
    const Body *body = nullptr;
    const Words *words = nullptr;
    Angle angle = Angle::third;
    double scale = 0.1;        ///< paper per wood
    double lettering = 2.5;    ///< of dimension numbers
    double from = 0, to = 0;   ///< stretch of the log shown; the whole log, or a part of a very long one
    double width = 0;          ///< of the paper that there is
};

struct Views {
    Block block;
    Ruler ruler; ///< how the log was shortened
};

/// Nothing where at this scale the log is too long for the paper or some number finds no free place.
std::optional<Views> face_views(const ViewsWanted &wanted);

} // namespace roundlay::sheets
