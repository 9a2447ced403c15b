// One piece as a file.
#pragma once

#include "exporters/registry/job.h"

#include <QString>
#include <optional>

class QWidget;

namespace roundlay::window {

/// STEP by the name's ending, or the cut sheet as PDF. A returned text is a sentence that says why it could
/// not be.
std::optional<QString> write_piece(const ExportJob &job, Index<Piece> piece, const QString &path);

/// Asks where to, and says what became of it.
void export_piece(const ExportJob &job, Index<Piece> piece, QWidget *parent);

} // namespace roundlay::window
