// Where the header of a CSV file stands, and what separates its columns: found out from the names that are
// looked for.
#pragma once

#include "kernel/csv/csv_rows.h"
#include "kernel/csv/csv_table.h"

namespace roundlay {

inline constexpr char no_separator = '\0'; ///< of rows that a spreadsheet has as cells

struct CsvLayout {
    CsvRows split;
    std::size_t header = 0; ///< index into split.rows; as many as there are rows: there is none
    bool commas = false;    ///< numbers have decimal commas
    char separator = ',';   ///< between cells
};

CsvLayout csv_layout(std::string_view text, const std::vector<CsvColumn> &known);
/// Of rows that are cells already.
CsvLayout csv_layout(CsvRows rows, const std::vector<CsvColumn> &known);

/// The column of that name, in English or in French, its words in any order; none: null.
const CsvColumn *column_named(const std::vector<CsvColumn> &known, const std::string &key);
/// Is that the column's English name?
bool is_english(const CsvColumn &column, const std::string &key);

} // namespace roundlay
