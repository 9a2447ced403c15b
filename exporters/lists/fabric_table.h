// What becomes of the logs that were found, and how much old wood stays.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/fabric/fabric.h"

namespace roundlay {

/// One row for each found log: where it was found, what is decided, by whom, when and why.
Table decision_table(const Record &record, const Layout &layout, const Voice &voice);

/// Rows by decision, of what stays, of all; and, where somebody changed his mind, of what stayed by the
/// earlier decisions. Logs by count, their wood by volume and by outside face, each also as a part of all
/// that was found. No verdict.
Table fabric_table(const FabricFigures &figures, const std::vector<FabricFigures> &earlier,
                   const Voice &voice);

/// How the figures are worked out, and what they do not say.
std::vector<std::string> fabric_words(const FabricFigures &figures, const Voice &voice);

} // namespace roundlay
