// What the parts of an XLSX file say, one part at a time (ECMA-376, part 1: SpreadsheetML).
#pragma once

#include "kernel/xlsx/packed_parts.h"
#include "kernel/xlsx/read_xlsx.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace roundlay {

/// Another part that a part refers to.
struct PartReference {
    std::string id, kind, part; ///< kind: the last word of its type, "worksheet"
};
std::vector<PartReference> references_of(PackedParts &parts, const std::string &part);

/// Texts that cells refer to by their number.
std::vector<std::string> shared_texts(const std::string &xml);

/// The styles, by number, in which a number is shown as a date or a time.
std::set<std::size_t> date_styles(const std::string &xml);

struct SheetContext {
    const std::vector<std::string> &texts;
    const std::set<std::size_t> &dates;
};

/// Its rows and remarks. False where it is no sheet, or larger than anybody fills in.
bool read_sheet(const std::string &xml, const SheetContext &context, ReadSheet &out);

} // namespace roundlay
