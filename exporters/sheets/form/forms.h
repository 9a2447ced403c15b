// The kinds of field forms; each in a file of its own.
#pragma once

#include "exporters/sheets/form/form_logs.h"
#include "exporters/sheets/form/form_sheets.h"

namespace roundlay::sheets {

/// Walls from corner to corner, diagonals, level planes, and where north is. None where there is no wall.
std::vector<Sheet> house_form(const Draft &draft, const Record &record);

/// A sketch of the wall with the tags of its logs, how each number is taken, and a card for each log.
std::vector<Sheet> wall_form(const Draft &draft, const Record &record, Index<WallPlace> wall);

/// Where two walls meet: level and lean, and the end of each log in the corner.
std::vector<Sheet> corner_form(const Draft &draft, const Record &record, Index<CornerPlace> corner);

/// The timbers of a floor and what their ends lie in, in one table.
std::vector<Sheet> floor_form(const Draft &draft, const Record &record, Index<FloorPlace> floor);

/// Cards for logs of the record that lie nowhere in the plan. None where all do.
std::vector<Sheet> elsewhere_form(const Draft &draft, const Record &record);

} // namespace roundlay::sheets
