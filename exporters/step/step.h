// STEP files (ISO 10303-21, AP214) of a shell and of its pieces. Millimetres, real closed solids.
//
// Hewn pieces are written straight from their borders in doubles. Where a piece's solid needs a boolean, or
// where asked, the text of that solid is OpenCASCADE's, put in order. Either way: plain ASCII, the same bytes
// for the same shell and time.
#pragma once

#include "exporters/step/options.h"
#include "kernel/layout/wood/body.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay {

/// One assembly, shell over walls over pieces. Equal pieces share one product; every use is named by its tag
/// and coloured by its wall. `bodies` are those of Layout::models, in their order. Throws
/// std::invalid_argument for a layout without pieces, std::runtime_error where the library fails.
std::string write_shell_step(const Shell &shell, const Layout &layout, const Bodies &bodies,
                             const StepOptions &options = {});

/// The same where the pieces stand in files of their own: their paths from this file, by model.
std::string write_linked_step(const Shell &shell, const Layout &layout, const Bodies &bodies,
                              const Indexed<std::string, Model> &files, const StepOptions &options = {});

/// One piece in its own frame. Product id, name and the solid's name are its tag.
std::string write_piece_step(const Shell &shell, const Layout &layout, const Piece &piece, const Body &body,
                             const StepOptions &options = {});

struct PieceStep {
    std::string tag; ///< of the first of the equal pieces
    std::string bytes;
};

/// One file per distinct piece, in the order of Layout::models.
std::vector<PieceStep> write_piece_steps(const Shell &shell, const Layout &layout, const Bodies &bodies,
                                         const StepOptions &options = {});

// The same with the bodies worked out on the way.
std::string write_shell_step(const Shell &shell, const Layout &layout, const StepOptions &options = {});
std::vector<PieceStep> write_piece_steps(const Shell &shell, const Layout &layout,
                                         const StepOptions &options = {});

} // namespace roundlay
