// A sheet as a spreadsheet keeps it that knows numbers and formats, not only texts.
#pragma once

#include "kernel/xlsx/temporary_file.h"

#include <xlsxwriter.h>

#include <string>
#include <variant>
#include <vector>

namespace roundlay::test {

/// A number and the format that it is shown in; empty: none.
struct TypedNumber {
    double value = 0;
    const char *format = "";
};
using TypedCell = std::variant<std::string, TypedNumber>;

/// The bytes of a file with that one sheet, "sheet". An empty text is an empty cell.
inline std::string typed_sheet(const std::vector<std::vector<TypedCell>> &rows) {
    const TemporaryFile file;
    lxw_workbook *book = workbook_new(file.path().c_str());
    lxw_worksheet *sheet = workbook_add_worksheet(book, "sheet");
    for (std::size_t r = 0; r < rows.size(); ++r)
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            const auto row = static_cast<lxw_row_t>(r);
            const auto column = static_cast<lxw_col_t>(c);
            if (const auto *text = std::get_if<std::string>(&rows[r][c])) {
                if (!text->empty()) worksheet_write_string(sheet, row, column, text->c_str(), nullptr);
                continue;
            }
            const auto &number = std::get<TypedNumber>(rows[r][c]);
            lxw_format *format = workbook_add_format(book);
            if (*number.format != '\0') format_set_num_format(format, number.format);
            worksheet_write_number(sheet, row, column, number.value, format);
        }
    workbook_close(book);
    return file.bytes();
}

} // namespace roundlay::test
