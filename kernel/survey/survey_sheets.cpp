#include "kernel/survey/survey_sheets.h"

#include "kernel/csv/csv_header.h"
#include "kernel/survey/survey_parts.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Does a column hold lengths as they were noted, in any part?
bool holds_notes(const std::string &column) {
    return std::ranges::any_of(survey_parts(), [&](const SurveyPart &part) {
        const format::Key *key = survey_key(part, column);
        return key && std::holds_alternative<format::Noted>(key->kind);
    });
}

bool counts_inches(const Record &record) {
    return record.notation.two_fields == TwoFields::feet_and_inches ||
           std::ranges::any_of(record.sheets, [](const FieldSheet &sheet) {
               return sheet.notation.two_fields == TwoFields::feet_and_inches;
           });
}

} // namespace

std::vector<CsvColumn> known_columns() {
    std::vector<CsvColumn> known;
    for (const SurveyColumn &column : survey_columns()) {
        known.push_back({column.name, column.name == survey_tag, {column.french}, column.name == survey_tag});
        known.back().french.insert(known.back().french.end(), column.also.begin(), column.also.end());
    }
    return known;
}

bool has_tags(const ReadSheet &sheet) {
    const auto known = known_columns();
    const CsvLayout layout = csv_layout(sheet.rows, known);
    return layout.header < layout.split.rows.size() &&
           std::ranges::any_of(layout.split.rows[layout.header].cells, [&](const std::string &cell) {
               const CsvColumn *column = column_named(known, heading_of(cell).key);
               return column && column->key == survey_tag;
           });
}

std::vector<SheetRemark> doubtful_numbers(const ReadSheet &sheet, const Record &record) {
    std::vector<SheetRemark> doubtful;
    if (!counts_inches(record)) return doubtful;
    const auto known = known_columns();
    const CsvLayout layout = csv_layout(sheet.rows, known);
    if (layout.header >= layout.split.rows.size()) return doubtful;
    const auto &header = layout.split.rows[layout.header].cells;
    for (const SheetNumber &number : sheet.one_decimal) {
        if (number.column >= header.size()) continue;
        const CsvColumn *column = column_named(known, heading_of(header[number.column]).key);
        if (column && holds_notes(column->key))
            doubtful.push_back({number.row, number.cell,
                                number.written +
                                    " was typed as a number, of which nobody knows whether it was " +
                                    number.written + "0: is it as on the sheet? Cells of notes are text"});
    }
    return doubtful;
}

} // namespace roundlay
