#include "kernel/xlsx/write_xlsx.h"

#include "kernel/xlsx/temporary_file.h"

#include <xlsxwriter.h>

#include <algorithm>
#include <charconv>
#include <optional>
#include <stdexcept>

namespace roundlay {

namespace {

constexpr std::size_t most_listed = 255; ///< characters of a list of choices, commas counted

void must(lxw_error error, const char *what) {
    if (error != LXW_NO_ERROR)
        throw std::runtime_error(std::string("an XLSX file cannot be made: ") + what + ": " +
                                 lxw_strerror(error));
}

lxw_row_t row_at(std::size_t under_header) {
    return static_cast<lxw_row_t>(under_header + 1);
}
lxw_col_t column_at(std::size_t column) {
    return static_cast<lxw_col_t>(column);
}

std::optional<double> number_in(const std::string &cell) {
    double value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc() || end != cell.data() + cell.size()) return {};
    return value;
}

/// The library's lists of words are arrays of letters that may be written to.
class WordList {
  public:
    explicit WordList(std::vector<std::string> words) : words_(std::move(words)) {
        for (std::string &word : words_)
            pointers_.push_back(word.data());
        pointers_.push_back(nullptr);
    }
    char **pointers() { return pointers_.data(); }
    bool fits() const {
        std::size_t characters = words_.size();
        for (const std::string &word : words_)
            characters += word.size();
        return characters <= most_listed;
    }

  private:
    std::vector<std::string> words_;
    std::vector<char *> pointers_;
};

class Workbook {
  public:
    explicit Workbook(const std::string &path)
        : book_(workbook_new(path.c_str())), heading_(workbook_add_format(book_)),
          text_(workbook_add_format(book_)), total_(workbook_add_format(book_)) {
        format_set_bold(total_);
        format_set_top(total_, LXW_BORDER_THIN);
        format_set_bold(heading_);
        format_set_bottom(heading_, LXW_BORDER_THIN);
        format_set_num_format(heading_, "@");
        format_set_num_format(text_, "@");
    }

    void describe(std::string title, std::int64_t created) {
        lxw_doc_properties properties{};
        properties.title = title.data();
        properties.created = static_cast<time_t>(created);
        must(workbook_set_properties(book_, &properties), "its title");
    }

    void add(const SheetTable &table) {
        lxw_worksheet *sheet = workbook_add_worksheet(book_, table.name.c_str());
        if (sheet == nullptr)
            throw std::runtime_error("an XLSX file cannot have a sheet called \"" + table.name + "\"");
        add_columns(sheet, table);
        for (std::size_t r = 0; r < table.rows.size(); ++r)
            for (std::size_t c = 0; c < table.rows[r].size(); ++c)
                add_cell(sheet, table.columns.at(c), row_at(r), column_at(c), table.rows[r][c]);
        for (const SheetChoice &choice : table.choices)
            add_choice(sheet, choice);
        if (table.filter && !table.rows.empty())
            must(worksheet_autofilter(sheet, 0, 0, row_at(table.rows.size() - 1),
                                      column_at(table.columns.size() - 1)),
                 "a filter");
        add_sums(sheet, table);
        worksheet_freeze_panes(sheet, 1, column_at(table.stays));
        worksheet_repeat_rows(sheet, 0, 0);
        worksheet_set_landscape(sheet);
        const std::string all = "A1:" + last_cell(table);
        must(worksheet_ignore_errors(sheet, LXW_IGNORE_NUMBER_STORED_AS_TEXT, all.c_str()), "a range");
    }

    void close() { must(workbook_close(book_), "it cannot be written"); }

  private:
    void add_columns(lxw_worksheet *sheet, const SheetTable &table) {
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            const SheetColumn &column = table.columns[c];
            must(worksheet_set_column(sheet, column_at(c), column_at(c), column.width,
                                      column.numbers ? nullptr : text_),
                 "a column");
            must(worksheet_write_string(sheet, 0, column_at(c), column.name.c_str(), heading_), "a heading");
        }
    }

    void add_cell(lxw_worksheet *sheet, const SheetColumn &column, lxw_row_t row, lxw_col_t at,
                  const std::string &cell) {
        if (cell.empty()) return;
        const auto number = column.numbers ? number_in(cell) : std::nullopt;
        must(number ? worksheet_write_number(sheet, row, at, *number, nullptr)
                    : worksheet_write_string(sheet, row, at, cell.c_str(), column.numbers ? nullptr : text_),
             "a cell");
    }

    /// One row left free under the table, so that sorting and filtering leave the sums alone.
    void add_sums(lxw_worksheet *sheet, const SheetTable &table) {
        const lxw_row_t row = row_at(table.rows.size() + 1);
        bool any = false;
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            const SheetColumn &column = table.columns[c];
            const auto sum = column.summed || column.times ? sum_of(table, c) : std::nullopt;
            if (!sum) continue;
            const std::string cells = cells_of(table, c);
            const std::string formula =
                column.times ? "=SUMPRODUCT(" + in_sight(table, *column.times) + "," + cells + ")"
                             : "=SUBTOTAL(109," + cells + ")";
            must(worksheet_write_formula_num(sheet, row, column_at(c), formula.c_str(), total_, *sum),
                 "a sum");
            any = true;
        }
        if (any && !table.total.empty() && !table.columns.front().summed)
            must(worksheet_write_string(sheet, row, 0, table.total.c_str(), heading_), "a heading");
        if (any && !table.note.empty())
            must(worksheet_write_string(sheet, row + 1, 0, table.note.c_str(), text_), "a note");
    }

    /// Nothing where a row has no number there, but for those that stand in others.
    static std::optional<double> sum_of(const SheetTable &table, std::size_t column) {
        double sum = 0;
        for (std::size_t r = 0; r < table.rows.size(); ++r) {
            const std::vector<std::string> &row = table.rows[r];
            const auto cell = [&](std::size_t at) {
                return at < row.size() ? number_in(row[at]) : std::nullopt;
            };
            const std::optional<std::size_t> times = table.columns[column].times;
            const auto value = cell(column), by = times ? cell(*times) : std::optional(1.0);
            if (!value && std::ranges::find(table.in_others, r) != table.in_others.end()) continue;
            if (!value || !by) return {};
            sum += *value * *by;
        }
        return table.rows.empty() ? std::nullopt : std::optional(sum);
    }

    /// Each cell of the column alone as a sum of what is in sight: itself, or 0 where a filter hides its row.
    static std::string in_sight(const SheetTable &table, std::size_t column) {
        char first[LXW_MAX_CELL_NAME_LENGTH];
        lxw_rowcol_to_cell(first, row_at(0), column_at(column));
        return "SUBTOTAL(109,OFFSET(" + std::string(first) + ",ROW(" + cells_of(table, column) + ")-ROW(" +
               first + "),0))";
    }

    static std::string cells_of(const SheetTable &table, std::size_t column) {
        char range[LXW_MAX_CELL_RANGE_LENGTH];
        lxw_rowcol_to_range(range, row_at(0), column_at(column), row_at(table.rows.size() - 1),
                            column_at(column));
        return range;
    }

    /// Left out where the words are more than a spreadsheet offers: any word may be typed anyway.
    static void add_choice(lxw_worksheet *sheet, const SheetChoice &choice) {
        WordList words(choice.words);
        if (!words.fits()) return;
        lxw_data_validation rule{};
        rule.validate = LXW_VALIDATION_TYPE_LIST;
        rule.value_list = words.pointers();
        rule.error_type = LXW_VALIDATION_ERROR_TYPE_WARNING;
        must(worksheet_data_validation_range(sheet, row_at(choice.first_row), column_at(choice.column),
                                             row_at(choice.last_row), column_at(choice.column), &rule),
             "a list of words");
    }

    static std::string last_cell(const SheetTable &table) {
        char name[LXW_MAX_CELL_NAME_LENGTH];
        const std::size_t columns = std::max<std::size_t>(table.columns.size(), 1);
        lxw_rowcol_to_cell(name, row_at(table.rows.size() + table.room), column_at(columns - 1));
        return name;
    }

    lxw_workbook *book_; ///< frees itself and its formats when it is closed
    lxw_format *heading_, *text_, *total_;
};

} // namespace

std::string xlsx_of(const std::vector<SheetTable> &sheets, const std::string &title,
                    std::int64_t seconds_since_1970) {
    const TemporaryFile file;
    Workbook book(file.path());
    book.describe(title, seconds_since_1970);
    for (const SheetTable &sheet : sheets)
        book.add(sheet);
    book.close();
    return file.bytes();
}

} // namespace roundlay
