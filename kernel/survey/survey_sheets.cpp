#include "kernel/survey/survey_sheets.h"

#include "kernel/csv/csv_header.h"
#include "kernel/survey/survey_parts.h"

#include <algorithm>

namespace roundlay {

namespace {

/// Does the column hold a value of that kind, in any part?
template <typename Kind> bool holds(const std::string &column) {
    const auto is_one = [&](const SurveyPart &part) {
        const format::Key *key = survey_key(part, column);
        return key && std::holds_alternative<Kind>(key->kind);
    };
    return std::ranges::any_of(survey_parts(), is_one) || std::ranges::any_of(house_parts(), is_one);
}

/// The columns of a sheet by what they are called.
class Columns {
  public:
    explicit Columns(const ReadSheet &sheet) : known_(known_columns()) {
        const CsvLayout layout = csv_layout(sheet.rows, known_);
        if (layout.header >= layout.split.rows.size()) return;
        header_ = layout.split.rows[layout.header].line;
        for (const std::string &cell : layout.split.rows[layout.header].cells) {
            const CsvColumn *column = column_named(known_, heading_of(cell).key);
            keys_.push_back(column ? column->key : "");
        }
    }
    bool is_under_header(int row) const { return !keys_.empty() && row > header_; }
    /// Empty where no such column is known.
    std::string key(std::size_t column) const { return column < keys_.size() ? keys_[column] : ""; }

  private:
    std::vector<CsvColumn> known_;
    std::vector<std::string> keys_;
    int header_ = 0;
};

void empty_cell(ReadSheet &sheet, const SheetDate &date) {
    const auto row = std::ranges::find(sheet.rows.rows, date.row, &CsvRow::line);
    if (row != sheet.rows.rows.end() && date.column < row->cells.size()) row->cells[date.column].clear();
}

void take_day(ReadSheet &sheet, const SheetDate &date, const std::string &column) {
    constexpr const char *dated = "on"; // of whoever says something
    if (column == dated) {
        if (!date.whole)
            sheet.doubts.push_back({date.row, date.cell,
                                    "the spreadsheet shows only a part of this date, and holds " + date.iso +
                                        ": that is taken, look whether day and year were meant"});
    } else if (column != survey_tag && holds<format::Text>(column)) {
        sheet.doubts.push_back(
            {date.row, date.cell,
             "the spreadsheet holds a date here, and " + date.iso +
                 " is taken: if something else was typed, format the cell as text and type "
                 "it again"});
    } else {
        sheet.remarks.push_back({date.row, date.cell,
                                 "the spreadsheet has made a date or a time of what was typed (it holds " +
                                     date.iso +
                                     "), and it is left out: format the cell as text and type it again"});
        empty_cell(sheet, date);
    }
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
    const Columns columns(sheet);
    for (const SheetNumber &number : sheet.one_decimal)
        if (columns.is_under_header(number.row) && holds<format::Noted>(columns.key(number.column)))
            doubtful.push_back({number.row, number.cell,
                                number.written +
                                    " was typed as a number, of which nobody knows whether it was " +
                                    number.written + "0: is it as on the sheet? Cells of notes are text"});
    return doubtful;
}

void take_days(ReadSheet &sheet) {
    if (sheet.dates.empty()) return;
    const Columns columns(sheet);
    for (const SheetDate &date : sheet.dates)
        if (const std::string column = columns.key(date.column);
            columns.is_under_header(date.row) && !column.empty())
            take_day(sheet, date, column);
}

} // namespace roundlay
