// The tables of a report, for spreadsheets.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/registry/job.h"
#include "kernel/fabric/fabric.h"

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

/// Sums over the house as it was found, less what the shell that the job shows has cut out of mended logs;
/// then those by the first, the second decision of each log.
std::vector<FabricFigures> fabric_of(const ExportJob &job);

/// Is it the state that the job shows that says which old wood stays, and not the house as it was found
/// alone?
bool counts_by_state(const ExportJob &job);

/// The state by which the old wood is counted.
const Shell &counted_shell(const ExportJob &job);

/// The same by the first `decisions` of each log alone. `record`: of that job.
FabricFigures fabric_by(const ExportJob &job, const Record &record,
                        std::optional<std::size_t> decisions = {});

std::string cell_text(const Entry &entry);

} // namespace roundlay
