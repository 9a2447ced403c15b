// What the sheets of a spreadsheet say to somebody who looks for the rows of a survey in them.
#pragma once

#include "kernel/csv/csv_table.h"
#include "kernel/record/record.h"
#include "kernel/xlsx/read_xlsx.h"

#include <vector>

namespace roundlay {

/// The columns that a survey may have.
std::vector<CsvColumn> known_columns();

/// Has it a header with a column `tag`?
bool has_tags(const ReadSheet &sheet);

/// Where a cell that holds a day may stand. In a column of dates it is taken as it is; where any text may
/// stand it is taken and told in the sheet's doubts, for 3/4 and 3-10 become days too; elsewhere it is told
/// in its remarks and its cell emptied.
void take_days(ReadSheet &sheet);

/// Cells of lengths that were typed as numbers with one digit behind the point, where two fields are feet and
/// inches: 3.1 may have been 3.10.
std::vector<SheetRemark> doubtful_numbers(const ReadSheet &sheet, const Record &record);

} // namespace roundlay
