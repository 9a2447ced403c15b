// A record as a sheet of a spreadsheet: cells that stay text, words to choose from, a header that stays in
// sight.
#pragma once

#include "kernel/survey/survey.h"
#include "kernel/xlsx/write_xlsx.h"

#include <cstdint>
#include <string>

namespace roundlay {

/// Words of the format are offered in the cells of a row that take one of a few.
SheetTable survey_sheet(const SurveyTable &table);

/// The bytes of the file. Throws std::runtime_error where it cannot be made.
std::string survey_xlsx(const SurveyTable &table, const std::string &title, std::int64_t seconds_since_1970);

/// How wide a column must be for what stands in it, in digits, within reason.
double sheet_width(const std::string &heading, const std::vector<std::vector<std::string>> &rows,
                   std::size_t column);

} // namespace roundlay
