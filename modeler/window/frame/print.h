// Cut sheets on a printer, after a look at them.
#pragma once

#include "exporters/sheets/drawing/sheet.h"
#include "modeler/window/desk/state.h"

#include <vector>

class QPrinter;
class QProgressDialog;
class QWidget;

namespace roundlay::window {

constexpr std::optional<Index<Model>> all_models;

/// Draws the sheets of one model, or of all, aside with a way to stop, then shows them as they will be
/// printed. The state is its own: another may take its place on the desk while it waits. `name` is what a
/// file of them is proposed to be called.
void preview_sheets(StatePtr state, std::optional<Index<Model>> model, const QString &name, QWidget *parent);

/// A printer for sheets of that name: printed into a file, this is what the file is called.
void name_sheets(QPrinter &printer, const QString &name);

/// One page a sheet, to scale. Tells how far it is and stops where asked; false where it was stopped.
bool print_sheets(QPrinter &printer, const std::vector<sheets::Sheet> &all, QProgressDialog &progress);

} // namespace roundlay::window
