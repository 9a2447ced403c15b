#include "tests/sheets/support/paper_table.h"

#include "kernel/measure/measure.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <sstream>

namespace roundlay::test {
namespace {

constexpr double line_pitch = 4.0, row_pitch = 4.75; ///< of lettering 2.5 mm high
constexpr double air = 1.2;                          ///< in a cell, beside its words

/// One part of a table, as it stands on a page.
class Part {
  public:
    Part(const std::vector<PaperWord> &words, const PaperWord &title, const std::vector<PaperColumn> &columns)
        : words_(words), title_(title), columns_(columns) {
        find_headings();
    }
    bool found() const { return starts_.size() == columns_.size(); }

    std::vector<std::vector<std::string>> rows(const std::regex &first) const {
        std::vector<std::vector<std::string>> all;
        auto y = first_row(first);
        while (y) {
            const int lines = lines_of(*y);
            all.push_back(cells(*y, lines));
            y = row_at(*y + (lines - 1) * line_pitch + row_pitch, first);
        }
        return all;
    }

  private:
    bool on_page(const PaperWord &w) const { return w.page == title_.page && !w.upright; }

    std::vector<PaperWord> line(double y) const {
        std::vector<PaperWord> all;
        for (const PaperWord &w : words_)
            if (on_page(w) && std::abs(w.y() - y) < 0.6 && w.x0 > title_.x0 - 0.5) all.push_back(w);
        std::sort(all.begin(), all.end(), [](const PaperWord &a, const PaperWord &b) { return a.x0 < b.x0; });
        return all;
    }

    /// The heading's first line is the next one under the title.
    void find_headings() {
        double y = 1e9;
        for (const PaperWord &w : words_)
            if (on_page(w) && w.text == columns_[0].heading && w.y() > title_.y() + 2 &&
                w.y() < title_.y() + 8 && w.x0 > title_.x0 && w.x0 < title_.x0 + 12)
                y = std::min(y, w.y());
        for (const PaperWord &w : line(y)) {
            if (starts_.size() < columns_.size() && w.text == columns_[starts_.size()].heading) {
                starts_.push_back(w.x0);
                ends_.push_back(w.x1);
            } else if (!ends_.empty() && w.x0 - ends_.back() < 1.5)
                ends_.back() = w.x1;
        }
        heading_y_ = y;
    }

    std::size_t column_of(const PaperWord &w) const {
        for (std::size_t i = 0; i + 1 < columns_.size(); ++i) {
            const bool number = columns_[i].numbers, next_number = columns_[i + 1].numbers;
            if (number        ? w.x0 < ends_[i]
                : next_number ? !w.is_length() && w.x0 < starts_[i + 1]
                              : w.x0 < starts_[i + 1] - air)
                return i;
        }
        return columns_.size() - 1;
    }

    /// Words on that line within the table: what stands beside it belongs to another.
    std::vector<PaperWord> words_at(double y) const {
        std::vector<PaperWord> all;
        for (const PaperWord &w : line(y)) {
            const bool last = column_of(w) + 1 == columns_.size();
            if (last && columns_.back().numbers && w.x0 > ends_.back()) break;
            if (last && !columns_.back().numbers && w.x0 > starts_.back() + air &&
                (all.empty() || w.x0 - all.back().x1 > 1.5))
                break;
            all.push_back(w);
        }
        return all;
    }

    std::optional<double> first_row(const std::regex &first) const {
        std::optional<double> y;
        for (const PaperWord &w : words_)
            if (on_page(w) && w.y() > heading_y_ + 2 && w.y() < heading_y_ + 25 && w.x0 > title_.x0 &&
                column_of(w) == 0 && w.x1 < starts_[1] && std::regex_match(w.text, first))
                y = std::min(y.value_or(1e9), w.y());
        return y;
    }

    std::optional<double> row_at(double y, const std::regex &first) const {
        const auto there = words_at(y);
        if (there.empty() || column_of(there[0]) != 0 || !std::regex_match(there[0].text, first)) return {};
        return there[0].y();
    }

    int lines_of(double y) const {
        int lines = 1;
        while (!words_at(y + lines * line_pitch).empty() && is_next(y + (lines - 1) * line_pitch))
            ++lines;
        return lines;
    }
    bool is_next(double y) const {
        const auto next = words_at(y + line_pitch);
        return std::any_of(next.begin(), next.end(),
                           [&](const PaperWord &w) { return std::abs(w.y() - y - line_pitch) < 0.35; });
    }

    std::vector<std::string> cells(double y, int lines) const {
        std::vector<std::string> all(columns_.size());
        for (int i = 0; i < lines; ++i)
            for (const PaperWord &w : words_at(y + i * line_pitch)) {
                std::string &cell = all[column_of(w)];
                cell += (cell.empty() ? "" : " ") + w.text;
            }
        return all;
    }

    const std::vector<PaperWord> &words_;
    const PaperWord &title_;
    const std::vector<PaperColumn> &columns_;
    std::vector<double> starts_, ends_;
    double heading_y_ = 0;
};

} // namespace

std::vector<std::vector<std::string>> table_rows(const std::vector<PaperWord> &words,
                                                 const std::string &title,
                                                 const std::vector<PaperColumn> &columns,
                                                 const std::regex &first) {
    std::vector<std::vector<std::string>> all;
    for (const PaperWord &w : words) {
        if (w.text != title || w.upright) continue;
        const Part part(words, w, columns);
        if (!part.found()) continue;
        for (auto &row : part.rows(first))
            all.push_back(std::move(row));
    }
    return all;
}

const char *const a_length = R"((?:[+-]?(?:[0-9]+' )?[0-9]+(?: [0-9]+/[0-9]+|/[0-9]+)?"|[+-]?[0-9]+))";

double printed_mm(const std::string &length) {
    if (length.starts_with("+")) return printed_mm(length.substr(1));
    if (length.find('"') == std::string::npos && length.find('\'') == std::string::npos)
        return std::stod(length);
    return std::get<Length>(parse_length(length)).mm();
}

} // namespace roundlay::test
