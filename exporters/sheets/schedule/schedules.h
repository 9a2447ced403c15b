// Schedules: what is built into the logs and what is ordered for them, as tables on paper. All that stands in
// them is a list's own.
#pragma once

#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/set/subject.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// One schedule, lengths as dimensions have them: its table, without rows where the shell has nothing of its
/// kind, and what is read with it: rules, sources and cautions, each a sentence or some.
struct Schedule {
    Table table;
    std::vector<std::string> notes;
    /// Where the table is too wide for a sheet it goes on under itself from this column on, the first column
    /// again before it; 0: it is made narrower instead.
    std::size_t parted_at = 0;
};

/// Rough size, settle space, what is left for the frame, the logs over and under it.
Schedule opening_schedule(const Draft &draft);
/// By size, with how long they are cut.
Schedule peg_schedule(const Draft &draft);
/// Rods, bolts, wiring and holes as found, a row each, and how long they are in wood.
Schedule bore_schedule(const Draft &draft);
/// By section and length, with weights.
Schedule order_schedule(const Draft &draft);
/// Where each timber of a floor lies, what it spans and how far it bears.
Schedule timber_schedule(const Draft &draft);
/// How those would bend and be pressed, where that is screened; no approval.
Schedule screen_schedule(const Draft &draft);

/// All of these that have rows, one under the other, over as many sheets as they take; the raise is a subject
/// of its own.
Subject schedule_subject();

/// These and the raise, in the order in which they are bound.
SheetSet schedule_set();

} // namespace roundlay::sheets
