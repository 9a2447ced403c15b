// Cut sheets: everything that the person at the bench needs to make one log.
#pragma once

#include "exporters/sheets/set/subject.h"
#include "kernel/layout/wood/body.h"
#include "kernel/shell/shell.h"

#include <vector>

namespace roundlay::sheets {

using CutSheetOptions = SheetOptions;

/// One cut sheet, of as many paper sheets as it needs, for the pieces of one model. `body` is theirs.
std::vector<Sheet> cut_sheet(const Shell &shell, const Layout &layout, const Model &model, const Body &body,
                             const CutSheetOptions &options);

/// Where a piece belongs: "Wall A, round 3, island".
std::string piece_words(const Layout &layout, const Piece &piece, const Words &words);

/// That of one of Layout::models.
Subject cut_sheet_subject(const Layout &layout, Index<Model> model);

/// Those of all distinct pieces, in the order of Layout::models. Empty where there are no pieces.
SheetSet cut_sheet_set(const Layout &layout);

/// Those of these alone.
SheetSet cut_sheet_set(const Layout &layout, const std::vector<Index<Model>> &models);

/// What holds for all of them, and stands on none: lines to snap, how faces are drawn, what weights rest on.
Subject common_notes_subject();

/// The notes, then the cut sheets; empty where there are no pieces.
SheetSet cut_sheets_with_notes(const Layout &layout);

} // namespace roundlay::sheets
