// What a cut sheet says in tables and words.
#pragma once

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/drawing/words.h"

#include <vector>

namespace roundlay::sheets {

/// Of a piece of old wood: which of Piece::cuts it has already.
struct OldCuts {
    bool old = false;
    bool known = true;      ///< else nobody can say
    std::vector<bool> make; ///< those that are still to be made, where it is known
};

/// Of all pieces of a sheet, which must be cut alike: what one of them lacks is to be made.
OldCuts old_cuts(const SheetOptions &options, const Layout &layout, const Model &model);

/// Number, cut and where it is, slopes; in cutting order. Of old wood what is to be made, then what it has.
std::vector<Table> steps_tables(const Features &features, const OldCuts &old, const Words &words);

/// The numbers that the faces would carry, for a piece that no listed scale can show legibly.
Table numbers_table(const Features &features, const Words &words);

/// Places where the saw does not go square across: where each lies on the outside and on the inside face.
Table slant_table(const Features &features, const Words &words);

/// Where each pocket is and how it is cut: its mark on the faces is K and its number.
Table pocket_table(const Features &features, const Words &words);

/// No., from the datum end, from the outside face, diameter, depth, from which face.
Table peg_table(const Features &features, const Words &words);

/// Every tag that is cut to this sheet, which piece it meets at each numbered cut, over it and under it, and
/// how high its level line comes.
Table tag_table(const Layout &layout, const Model &model, const Features &features, const Words &words);

/// Blank, volume, weight, balance point, butt.
Table data_table(const Features &features, const Body &body, const Model &model, const Words &words,
                 const std::optional<WeightNote> &weight);

/// What the check warns of about the pieces of this sheet.
Table warnings_table(const std::vector<std::string> &warnings, const Words &words);

/// Sentences that hold for the sheet: how it is read, cautions, letters that the font lacks.
Table notes_table(const Shell &shell, const Layout &layout, const Features &features, const Model &model,
                  const Words &words, const std::optional<WeightNote> &weight);

} // namespace roundlay::sheets
