// Sheets of operations: what a shop does to the stock of one piece, as tables on paper.
//
// They say what the operations' JSON says, in the person's language and units, with the same caution.
#pragma once

#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

/// One of each distinct piece that is made from a stick: old wood that stays in the house is not. Empty where
/// there is none.
SheetSet operation_sheet_set(const Layout &layout);

} // namespace roundlay::sheets
