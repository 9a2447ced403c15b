// A report on a house that stands, for its owner and whoever looks after its heritage: what was found, what
// is decided, what is not known. Sums and words, and no verdict.
#pragma once

#include "exporters/sheets/set/subject.h"
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/openings_changed.h"
#include "kernel/record/record.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace roundlay::sheets {

struct ReportSource {
    std::shared_ptr<const Record> record;
    std::filesystem::path folder; ///< that names of photographs start from: the document's
    /// Of the old wood, and of what stayed by the first, the second decision of each log; empty: worked out
    /// of the layout that is drawn, as if nothing were cut out of mended logs.
    std::vector<FabricFigures> fabric = {};
    std::vector<NewWood> mends = {}; ///< of the house as it shall stand
    /// What the state is called that `fabric` and `mends` are of; empty: the one that is drawn.
    std::string counted_in = {};
    /// Openings that this state closes or cuts, with the logs that go and come.
    std::vector<OpeningChange> openings = {};
};

/// On upright A4 or Letter. Logs are shown where the layout that is drawn has them.
SheetSet report_set(const ReportSource &source);

} // namespace roundlay::sheets
