// Logs of a house that stands as rows: what they are like, and what becomes of them.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/record/record.h"

namespace roundlay {

/// One row for each log: place, condition, cause, urgency, its last decision with by whom, when and why.
Table found_table(const Record &record, const Voice &voice);

/// One row for each zone of the wood, its numbers as they were noted and in millimetres.
Table zone_table(const Record &record, const Voice &voice);

/// "keep", "turn end for end"; where nobody has decided "not decided".
std::string decision_word(std::optional<Decision> what, const Voice &voice);

} // namespace roundlay
