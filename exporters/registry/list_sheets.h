// Lists as the sheets of an XLSX file.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/words/voice.h"
#include "kernel/xlsx/write_xlsx.h"

#include <string>

namespace roundlay {

/// Columns by their keys, which hold their units; numbers where anything that stands in them is one. The
/// first column and the header stay in sight.
SheetTable sheet_of(const Table &list, const std::string &name);

/// The same to be worked with: rows can be filtered, and what can be added up is, by formulas: counts,
/// volumes and weights, `each` of them times its quantity where the list counts equal things.
SheetTable summed_sheet(const Table &list, const std::string &name, const Voice &voice);

} // namespace roundlay
