// What a cut sheet says, read off the drawing, and what it must say.
#pragma once

#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/drawing/words.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::test {

/// As if of hemlock.
std::optional<sheets::WeightNote> some_weight(const Piece &, const Body &body);

/// Owner, date and weights filled in.
sheets::CutSheetOptions options_for(std::optional<sheets::Paper> paper = std::nullopt);

/// Of a piece without a house round it.
std::vector<sheets::Sheet> sheets_of(const Piece &piece, const sheets::CutSheetOptions &options,
                                     UnitSystem units = UnitSystem::metric);

bool says(const std::vector<sheets::Sheet> &sheets, const std::string &words);

/// Numbers of all dimensions on the sheets, zeros (the origins) left out.
std::map<std::string, int> dimensions_on(const std::vector<sheets::Sheet> &sheets,
                                         const sheets::Words &words);

/// Those that the sheet of this piece must have.
std::map<std::string, int> dimensions_of(const Piece &piece, const sheets::Words &words);

/// Which numbers are too few or too many; empty where all are as wanted.
std::string compared(const std::map<std::string, int> &found, const std::map<std::string, int> &wanted);

} // namespace roundlay::test
