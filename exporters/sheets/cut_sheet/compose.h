// Fits views, picture and tables on as few sheets as the lettering allows.
#pragma once

#include "exporters/sheets/cut_sheet/face_views.h"
#include "exporters/sheets/drawing/pages.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/set/scales.h"

#include <vector>

namespace roundlay::sheets {

struct Composed {
    std::vector<Page> pages;
    const Scale *scale = nullptr; ///< of the faces; nullptr where they could not be drawn at any scale, and
                                  ///< the table of their numbers stands instead
};

struct ComposeWanted {
    PaperSize size;
    Angle angle = Angle::third;
    const SeenPiece *piece = nullptr;
    const Words *words = nullptr;
    std::vector<Table> tables; ///< in the order in which they are given room
    Table instead;             ///< all the numbers of the faces, where those cannot be drawn
};

Composed composed(const ComposeWanted &wanted);

} // namespace roundlay::sheets
