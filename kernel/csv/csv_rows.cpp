#include "kernel/csv/csv_rows.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr std::string_view no_break = "\xc2\xa0";

/// Reads one text from the front.
class Splitter {
  public:
    Splitter(std::string_view text, char separator)
        : text_(text), separator_(separator), ends_(std::string("\n") + separator) {}

    CsvRows take() {
        while (at_ < text_.size())
            take_row();
        return std::move(all_);
    }

  private:
    void take_row() {
        CsvRow row{
            line_,
            {},
            text_.substr(std::min(text_.find_first_not_of(" \"", at_), text_.size())).starts_with('#')};
        if (row.remark) return take_remark(std::move(row));
        bool more = true;
        while (more) {
            row.cells.push_back(take_cell());
            more = at_ < text_.size() && text_[at_] == separator_;
            if (at_ < text_.size()) line_ += text_[at_++] == '\n';
        }
        add(std::move(row));
    }

    /// A comment may hold any quotes: it ends where its line does.
    void take_remark(CsvRow row) {
        const std::size_t end = std::min(text_.find('\n', at_), text_.size());
        Splitter line(text_.substr(at_, end - at_), separator_);
        do
            row.cells.push_back(line.take_cell());
        while (line.at_++ < line.text_.size());
        at_ = end + 1;
        ++line_;
        add(std::move(row));
    }

    void add(CsvRow row) {
        if (std::ranges::any_of(row.cells, [](const std::string &c) { return !trimmed(c).empty(); }))
            all_.rows.push_back(std::move(row));
    }

    std::string take_cell() {
        const std::size_t start = std::min(text_.find_first_not_of(' ', at_), text_.size());
        if (start < text_.size() && text_[start] == '"') return at_ = start, take_quoted();
        const std::size_t end = std::min(text_.find_first_of(ends_, at_), text_.size());
        const std::string_view cell = text_.substr(at_, end - at_);
        at_ = end;
        return std::string(cell);
    }

    /// `5 1/2"` is an inch mark, not a quote: only a quote at a cell's start counts, and it is doubled
    /// inside.
    std::string take_quoted() {
        const int opened = line_;
        const std::size_t start = at_;
        std::string cell;
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] != '"') {
                line_ += text_[at_] == '\n';
                cell += text_[at_];
            } else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
                cell += text_[++at_];
            } else {
                return closed(start, std::move(cell));
            }
        }
        if (all_.unclosed == 0) all_.unclosed = opened;
        return cell;
    }

    /// What stands behind the closing quote belongs to the cell, whose quotes are then its own: `"clou"
    /// forgé`.
    std::string closed(std::size_t start, std::string cell) {
        const std::size_t behind = at_ + 1;
        at_ = std::min(text_.find_first_of(ends_, at_), text_.size());
        const bool more = behind < at_ && !trimmed(text_.substr(behind, at_ - behind)).empty();
        if (more) cell = text_.substr(start, at_ - start);
        return cell;
    }

    std::string_view text_;
    char separator_;
    std::string ends_;
    CsvRows all_;
    std::size_t at_ = 0;
    int line_ = 1;
};

} // namespace

CsvRows split_csv(std::string_view text, char separator) {
    return Splitter(text, separator).take();
}

std::string trimmed(std::string_view text) {
    for (bool cut = true; cut;) {
        cut = false;
        for (const std::string_view blank :
             {std::string_view(" "), std::string_view("\t"), std::string_view("\n"), no_break}) {
            if (text.starts_with(blank)) text.remove_prefix(blank.size()), cut = true;
            if (text.ends_with(blank)) text.remove_suffix(blank.size()), cut = true;
        }
    }
    return std::string(text);
}

} // namespace roundlay
