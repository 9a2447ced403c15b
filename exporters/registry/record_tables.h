// The tables of a report, for spreadsheets.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/registry/job.h"

#include <string>
#include <vector>

namespace roundlay {

struct RecordTable {
    const char *name; ///< of the file, without its ending
    Said what;        ///< for people
    Table table;
};

/// Logs with condition and decision, zones of the wood, decisions, sums of the old wood.
std::vector<RecordTable> record_tables(const ExportJob &job);

std::string cell_text(const Entry &entry);

} // namespace roundlay
