// One value of a record in a cell, and back.
#pragma once

#include "kernel/document/key.h"

#include <string>

namespace roundlay {

/// As a person types it: texts without quotes, lists with a semicolon between, numbers of the field as they
/// were noted, and behind them in brackets what is said of them: `3.10.1 (proposed; by the teacher; on 3
/// May)`.
std::string cell_of(const format::Kind &kind, const format::Value &value, bool in_french);

/// The same as the value stands in a document. `unit`: of the column, for bare numbers of the field; may be
/// empty. What is no value of that kind becomes a text, which the document's reader refuses with a reason.
std::string statement_of(const format::Kind &kind, const std::string &cell, const std::string &unit);

} // namespace roundlay
