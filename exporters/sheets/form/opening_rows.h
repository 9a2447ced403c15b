// The openings of a wall, and what a form asks of each.
#pragma once

#include "exporters/sheets/form/form_sheets.h"
#include "exporters/sheets/set/draft.h"

#include <optional>
#include <vector>

namespace roundlay::sheets {

struct FormOpening {
    RecordedOpening found;       ///< as recorded; else its name, its wall and the corner to measure from
    std::optional<Opening> plan; ///< what the plan has there; nothing where it has none of that name
    bool from_left = true;       ///< the corner that it is measured from lies at the left end of the wall
    double wall_length = 0;      ///< outside face, corner to corner
};

/// Those of the plan from left to right, then those of the record that are noted in that wall and that the
/// plan does not have.
std::vector<FormOpening> form_openings(const Record &record, const Draft &draft, Index<WallPlace> wall);

/// How each is measured, drawn once, and two rows of boxes for each. Nothing where there are none.
void add_opening_rows(FormSheets &sheets, const std::vector<FormOpening> &openings);

/// What the letters of these boxes mean.
std::string opening_letters(const Words &words);

} // namespace roundlay::sheets
