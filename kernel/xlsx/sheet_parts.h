// What the parts of an XLSX file say, one part at a time (ECMA-376, part 1: SpreadsheetML).
#pragma once

#include "kernel/xlsx/number_looks.h"
#include "kernel/xlsx/packed_parts.h"
#include "kernel/xlsx/read_xlsx.h"

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

struct SheetContext {
    const std::vector<std::string> &texts;
    const std::vector<NumberLook> &looks; ///< by the number of a style; further ones are plain numbers
    bool from_1904 = false;               ///< dates are counted from 1904, else from 1900
};

/// Its rows and remarks. False where it is no sheet, or larger than anybody fills in.
bool read_sheet(const std::string &xml, const SheetContext &context, ReadSheet &out);

} // namespace roundlay
