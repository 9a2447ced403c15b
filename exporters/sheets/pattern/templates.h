// Templates at full size of every distinct tail, notch and pocket, for paper and for a plotter, laser or
// router.
#pragma once

#include "exporters/sheets/frame/options.h"
#include "exporters/sheets/pattern/patterns.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// Those of pieces in which something is to be cut: nobody needs the template of a joint that stands. Empty
/// where nothing is cut to a line. `to_make` as in SheetOptions.
std::vector<Pattern> patterns_to_cut(const Layout &layout,
                                     const Indexed<std::optional<std::vector<bool>>, Piece> &to_make,
                                     const Words &words, const OnlyPieces &only = {});

/// On A4 or Letter, each face of each joint by itself, over several sheets where it is larger than one.
std::vector<Sheet> template_sheets(const Shell &shell, const Layout &layout, const SheetOptions &options,
                                   const OnlyPieces &only = {});

/// All faces of these patterns on one sheet without paper's limits, side by side, 20 mm apart: the drawing
/// for a machine. Layers: OUTLINE-THROUGH closed outlines to cut, MARK-LINE shoulders to score, TEXT names.
/// No line twice. The bar BAR-100 on layer CHECK is 100 mm long.
Sheet template_drawing(const std::vector<Pattern> &patterns);

} // namespace roundlay::sheets
