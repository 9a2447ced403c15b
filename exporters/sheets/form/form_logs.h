// Which logs a field form asks about: those of the record where they lie, and those of the plan that nobody
// has recorded yet.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/record/record.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// An end of a log on a form. Told by its name, never as left or right.
struct FormEnd {
    std::string name;                  ///< empty: neither the record nor the plan says which end it is
    std::optional<FoundEnd> found;     ///< what the record says of it
    std::optional<End> of_plan;        ///< the end of the plan's piece that it is
    std::optional<Index<Piece>> piece; ///< that piece
};

struct FormLog {
    FoundLog found;
    bool recorded = false;            ///< else its tag is only proposed
    std::vector<Index<Piece>> pieces; ///< of the plan, that it lies in place of; from left to right
    FormEnd ends[2];                  ///< in the same order
};

struct FormLogs {
    Indexed<std::vector<FormLog>, WallPlace> walls; ///< from the bottom up, from left to right
    std::vector<FormLog> timbers;                   ///< of floors, in the order of Layout::pieces
    std::vector<FormLog> elsewhere;                 ///< of the record, where the plan has no log
};

FormLogs form_logs(const Record &record, const Layout &layout);

/// The tag that a piece of the plan has on forms: of the log that the record says lies there, else its own.
std::string form_tag(const std::vector<FormLog> &logs, Index<Piece> piece, const Layout &layout);

} // namespace roundlay::sheets
