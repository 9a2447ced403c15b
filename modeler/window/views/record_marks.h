// Logs by what their record says: a colour and a pattern for each, so that eyes that tell no colours apart
// read them too.
#pragma once

#include "exporters/registry/job.h"
#include "modeler/window/views/scene_colours.h"

#include <vector>

namespace roundlay::window {

struct RecordMark {
    QColor fill, lines;
    Qt::BrushStyle pattern = Qt::NoBrush;
    QString words;
};

/// By condition, by decision, by measured or proposed, by what is up; others tell nothing of the record.
bool is_of_record(Colouring colouring);

/// What there is of that colouring; the first is for logs of which the record says nothing.
std::vector<RecordMark> record_marks(Colouring colouring);

/// Of each piece, which of these it has. Of several logs in one place, and of several zones of one log, the
/// worst. `job`: whose shell and layout it is.
Indexed<std::size_t, Piece> marked_pieces(const Record &record, const ExportJob &job, Colouring colouring);

RecordMark soundness_mark(Soundness what);

/// Which of record_marks(Colouring::condition) a zone has, and which a log as a whole whose zones are not
/// looked at, or but those whose place is not known.
std::size_t condition_mark(Soundness what);
std::size_t condition_mark(const FoundLog &log, const std::vector<ConditionZone> &zones);

/// `in_model`: as the model paints zones; else as an elevation does.
std::vector<LegendEntry> record_legend(Colouring colouring, bool in_model = false);

} // namespace roundlay::window
