// The four faces under one another, the two ends beside the outside face, and all their dimensions.
#pragma once

#include "exporters/sheets/cut_sheet/face_rows.h"
#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/frame/title_block.h"
#include "kernel/layout/wood/body.h"

#include <array>
#include <map>
#include <optional>
#include <string>

namespace roundlay::sheets {

/// One piece as seen from all sides. Points into the piece and its body, which must outlive it.
struct SeenPiece {
    Features features;
    const Body *body = nullptr;
    std::array<FaceLines, 4> faces;           ///< by View: top, outside, under, inside
    std::array<std::vector<Stretch>, 2> ends; ///< datum end, far end
};

/// The round places of its lines are in those units.
SeenPiece seen_piece(const Piece &piece, const Body &body, UnitSystem units);

/// What the views are drawn from and how.
struct ViewsWanted {
    const SeenPiece *piece = nullptr;
    const Words *words = nullptr;
    Angle angle = Angle::third;
    double scale = 0.1;      ///< paper per wood
    double lettering = 2.5;  ///< of dimension numbers
    double from = 0, to = 0; ///< stretch of the log shown; the whole log, or a part of a very long one
    double width = 0;        ///< of the paper that there is
    int part = 1, parts = 1; ///< which stretch this is
    /// Of a drawing that stands for several pieces: what is put for each printed number. One that has nothing
    /// put for it is not shown, nor what holds for the piece drawn alone, nor heights of joints, which are
    /// told by name.
    const std::map<std::string, std::string> *renamed = nullptr;
};

/// What stands for a printed number; empty where nothing does.
std::string shown_as(const ViewsWanted &wanted, const std::string &number);

struct Views {
    Block block;
    Ruler ruler; ///< how the log was shortened
};

/// What the views must show, with room for its marks and numbers beside it.
std::vector<Place> places_shown(const SeenPiece &piece, const Words &words, double lettering, double scale);

/// Nothing where at this scale the log is too long for the paper or some number finds no free place.
std::optional<Views> face_views(const ViewsWanted &wanted);

} // namespace roundlay::sheets
