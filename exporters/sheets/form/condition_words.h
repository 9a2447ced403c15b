// Condition and faces as words to tick.
#pragma once

#include "exporters/sheets/form/form_pen.h"
#include "kernel/record/found_log.h"

namespace roundlay::sheets {

std::vector<std::vector<FormPen::Tick>> condition_ticks(const Words &words, const ConditionZone *zone);
std::vector<std::vector<FormPen::Tick>> face_ticks(const Words &words, const ConditionZone *zone);

/// Where the parts of a zone's row begin.
struct ZoneColumns {
    double what = 0, from = 0, to = 0, faces = 0, depth = 0, note = 0;
};
ZoneColumns zone_columns(const Words &words, double left);

} // namespace roundlay::sheets
