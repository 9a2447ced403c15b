// Logs by what their record says: a colour and a pattern for each, so that eyes that tell no colours apart
// read them too.
#pragma once

#include "modeler/window/views/scene_colours.h"

#include <vector>

namespace roundlay::window {

struct RecordMark {
    QColor fill, lines;
    Qt::BrushStyle pattern = Qt::NoBrush;
    QString words;
};

/// By condition, by decision, by measured or proposed; others tell nothing of the record.
bool is_of_record(Colouring colouring);

/// What there is of that colouring; the first is for logs of which the record says nothing.
std::vector<RecordMark> record_marks(Colouring colouring);

/// Of each piece, which of these it has. Of several logs in one place, and of several zones of one log, the
/// worst.
Indexed<std::size_t, Piece> marked_pieces(const Record &record, const Layout &layout, Colouring colouring);

RecordMark soundness_mark(Soundness what);

std::vector<LegendEntry> record_legend(Colouring colouring);

} // namespace roundlay::window
