// The logs of a corner from the bottom up, and what a form asks of each there.
#pragma once

#include "exporters/sheets/form/form_logs.h"
#include "exporters/sheets/form/form_sheets.h"
#include "exporters/sheets/form/proposed.h"

namespace roundlay::sheets {

struct CornerRow {
    std::string tag;
    bool recorded = false; ///< else its tag is only proposed
    Index<Piece> piece;
    std::optional<End> end;        ///< that lies in the corner; none: the log runs on past it
    bool has_stations = false;     ///< it has been measured along its length: told on its wall's form
    std::optional<FoundEnd> found; ///< what the record says of that end
    ProposedEnd proposed;
};

std::vector<CornerRow> corner_rows(const Layout &layout, const FormLogs &logs, Index<CornerPlace> corner);

double corner_row_height(const Words &words, const CornerRow &row, double width);
inline constexpr double corner_heading_height = 2 * print_line + 1;

void draw_corner_heading(FormPen &pen, const Rect &room);
void draw_corner_row(FormPen &pen, const Rect &room, const CornerRow &row);

/// Level, plane, lean and note of the corner itself. `known`: as recorded; null where it is not.
void draw_arris_boxes(FormPen &pen, const Rect &room, const RecordedCorner *known, const std::string &first,
                      const std::string &second);

} // namespace roundlay::sheets
