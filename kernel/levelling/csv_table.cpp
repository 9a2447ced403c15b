#include "kernel/levelling/csv_table.h"

#include <algorithm>

namespace roundlay {

namespace {

char separator_of(std::string_view text) {
    const std::string_view first = text.substr(0, text.find('\n'));
    char best = ',';
    for (const char c : {';', '\t'})
        if (std::count(first.begin(), first.end(), c) > std::count(first.begin(), first.end(), best))
            best = c;
    return best;
}

std::string trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return std::string(text);
}

std::string listed(const std::vector<std::string> &names) {
    std::string text;
    for (const std::string &name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

/// Reads one CSV text from the front.
class Splitter {
  public:
    Splitter(std::string_view text, std::vector<CsvProblem> &problems)
        : text_(text), separator_(separator_of(text)), problems_(problems) {}

    std::vector<CsvRow> rows() {
        while (at_ < text_.size())
            take_row();
        return std::move(rows_);
    }

  private:
    void take_row() {
        CsvRow row{line_, {}};
        bool more = true;
        while (more) {
            row.cells.push_back(take_cell());
            more = at_ < text_.size() && text_[at_] == separator_;
            if (at_ < text_.size()) line_ += text_[at_++] == '\n';
        }
        if (row.cells.size() > 1 || !trimmed(row.cells.front()).empty()) rows_.push_back(std::move(row));
    }

    std::string take_cell() {
        std::size_t start = at_;
        while (start < text_.size() && text_[start] == ' ')
            ++start;
        if (start < text_.size() && text_[start] == '"') return at_ = start, take_quoted();
        const std::size_t end =
            std::min(text_.find_first_of(std::string("\n") + separator_, at_), text_.size());
        const std::string_view cell = text_.substr(at_, end - at_);
        at_ = end;
        return std::string(cell);
    }

    /// `5 1/2"` is an inch mark, not a quote: only a quote at a cell's start counts, and it is doubled
    /// inside.
    std::string take_quoted() {
        const int opened = line_;
        std::string cell;
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] != '"') {
                line_ += text_[at_] == '\n';
                cell += text_[at_];
            } else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
                cell += text_[++at_];
            } else {
                at_ = std::min(text_.find_first_of(std::string("\n") + separator_, at_), text_.size());
                return cell;
            }
        }
        problems_.push_back({opened, "a quote that opens here is never closed"});
        return cell;
    }

    std::string_view text_;
    char separator_;
    std::vector<CsvProblem> &problems_;
    std::vector<CsvRow> rows_;
    std::size_t at_ = 0;
    int line_ = 1;
};

} // namespace

std::vector<CsvRow> split_csv(std::string_view text, std::vector<CsvProblem> &problems) {
    constexpr std::string_view mark = "\xef\xbb\xbf"; // spreadsheets put it in front of UTF-8
    if (text.starts_with(mark)) text.remove_prefix(mark.size());
    if (text.find('\0') != std::string_view::npos) {
        problems.push_back({1, "this is no text; expected CSV with a header line"});
        return {};
    }
    return Splitter(text, problems).rows();
}

CsvTable::CsvTable(std::string_view text, const std::vector<std::string> &known, std::size_t needed,
                   std::vector<CsvProblem> &problems)
    : rows_(split_csv(text, problems)), problems_(&problems) {
    if (rows_.empty()) {
        problems.push_back({1, "there is no header line; expected the columns " + listed(known)});
        return;
    }
    for (const std::string &cell : rows_.front().cells) {
        const std::string name = trimmed(cell);
        if (std::find(known.begin(), known.end(), name) == known.end())
            problem(0, "the column \"" + name + "\" is not known; the columns are " + listed(known));
        else if (std::find(columns_.begin(), columns_.end(), name) != columns_.end())
            problem(0, "the column \"" + name + "\" stands there twice");
        columns_.push_back(name);
    }
    for (std::size_t i = 0; i < needed; ++i)
        if (std::find(columns_.begin(), columns_.end(), known[i]) == columns_.end())
            problem(0, "the column \"" + known[i] + "\" is missing");
    rows_.erase(rows_.begin());
}

std::string CsvTable::cell(std::size_t row, const std::string &column) const {
    const auto at = std::find(columns_.begin(), columns_.end(), column) - columns_.begin();
    const auto &cells = rows_[row].cells;
    return static_cast<std::size_t>(at) < cells.size() ? trimmed(cells[static_cast<std::size_t>(at)])
                                                       : std::string();
}

std::optional<double> CsvTable::length(std::size_t row, const std::string &column, double most,
                                       bool needed) const {
    const std::string text = cell(row, column);
    if (text.empty()) {
        if (needed) problem(row, column + " is missing");
        return {};
    }
    const auto read = parse_length(text);
    if (const auto *error = std::get_if<MeasureError>(&read)) {
        problem(row, column + " \"" + text + "\": " + error->message + "; expected " + error->expected);
        return {};
    }
    const double mm = std::get<Length>(read).mm();
    if (mm > 0 && mm <= most) return mm;
    problem(row, column + " \"" + text + "\" is out of bounds; expected a length over 0 and up to " +
                     print_length(Length::mm(most), {}));
    return {};
}

void CsvTable::problem(std::size_t row, const std::string &message) const {
    problems_->push_back({row < rows_.size() ? rows_[row].line : 1, message});
}

} // namespace roundlay
