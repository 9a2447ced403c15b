// Cut sheets: everything that the person at the bench needs to make one log.
#pragma once

#include "exporters/sheets/drawing/sheet.h"
#include "exporters/sheets/frame/title_block.h"
#include "kernel/layout/body.h"
#include "kernel/shell/shell.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// What a piece weighs and how that is known; worked out elsewhere.
struct WeightNote {
    double low_kg = 0, high_kg = 0;
    std::string basis; ///< one sentence
};

struct CutSheetOptions {
    std::optional<Paper> paper; ///< not stated = A3 for metric, Tabloid for feet and inches
    bool turned = false;        ///< the paper's other way round
    Angle angle = Angle::third; ///< which decides the order of the faces and where the ends stand
    TitleFields fields;         ///< owner, creator, approved, date, revision, language: the rest is filled in
    int denominator = 16;       ///< smallest part of an inch
    std::function<std::optional<WeightNote>(const Piece &, const Body &)>
        weight; ///< empty = no weight is shown
};

/// One cut sheet, of as many paper sheets as it needs, for the pieces of one model. `body` is theirs.
std::vector<Sheet> cut_sheet(const Shell &shell, const Layout &layout, const Model &model, const Body &body,
                             const CutSheetOptions &options);

/// The cut sheets of all distinct pieces, in the order of Layout::models. Empty where there are no pieces.
std::vector<Sheet> cut_sheets(const Shell &shell, const Layout &layout, const CutSheetOptions &options);

} // namespace roundlay::sheets
