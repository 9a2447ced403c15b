// Lists of operations as files.
#pragma once

#include "exporters/lists/table.h"
#include "exporters/machining/operation.h"
#include "exporters/words/voice.h"

#include <span>
#include <string>
#include <string_view>

namespace roundlay::machining {

inline constexpr std::string_view schema_name = "operations.schema.json";

/// The published schema (draft 7) of what operations_json writes, as a file of its own.
std::string_view operations_schema();

/// One piece. Keys are English, numbers plain millimetres and degrees, to the last digit: what is read back
/// is exactly what was written. `shell`: what the house is called.
std::string operations_json(const OperationList &list, const std::string &shell, const Voice &voice);

/// All pieces, a row for each operation in working order, to a thousandth: for people and spreadsheets.
/// Reaches are rounded up.
Table operation_table(std::span<const OperationList> lists, const Voice &voice);

} // namespace roundlay::machining
