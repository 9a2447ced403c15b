// The rows of a survey by what they tell of: of the house, or of which log.
#pragma once

#include "kernel/record/record.h"
#include "kernel/survey/survey_text.h"

#include <optional>
#include <vector>

namespace roundlay {

struct SurveyRows {
    std::optional<std::size_t> head; ///< the row of what is said of the survey as a whole
    std::vector<SurveyOfHouse> house;
    std::vector<SurveyLog> logs; ///< in the order in which they come up
};

/// What cannot be taken is told in the report and left out: a row that says of nothing known, a second one
/// of the same, and all rows of a log that neither `context` nor a row of its own has.
SurveyRows gathered_rows(const CsvTable &table, CsvReport &report, const Record &context);

} // namespace roundlay
