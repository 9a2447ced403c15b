#include "exporters/sheets/drawing/table.h"

#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double side_air = 1.2;      ///< between a cell's border and its words
constexpr double line_pitch = 1.6;    ///< of one line to the next, in heights of the lettering
constexpr double around_lines = 0.9;  ///< above and below the lines of a cell, in heights
constexpr double title_height = 2.5;
constexpr double title_room = 5.0;

struct Row {
    std::vector<std::vector<std::string>> cells; ///< wrapped
    bool bold = false;
    double height = 0;
};

class Layouter {
  public:
    explicit Layouter(const Table &table) : table_(table) {
        const bool headed = std::any_of(table.columns.begin(), table.columns.end(),
                                        [](const Column &c) { return !c.heading.empty(); });
        measure(headed);
        if (headed) {
            std::vector<std::string> headings;
            for (const Column &c : table.columns) headings.push_back(c.heading);
            rows_.push_back(row_of(headings, true));
        }
        for (const auto &row : table.rows) rows_.push_back(row_of(row, false));
    }

    Block draw() const {
        Block block;
        double y = height();
        if (!table_.title.empty()) {
            block.items.emplace_back(words(table_.title, {0, y - title_height}, title_height, true, Role::caption));
            y -= title_room;
        }
        const double top = y;
        block.items.emplace_back(line({0, y}, {width(), y}));
        for (const Row &row : rows_) {
            draw_row(block, row, y);
            y -= row.height;
            block.items.emplace_back(line({0, y}, {width(), y}));
        }
        double x = 0;
        block.items.emplace_back(line({x, y}, {x, top}));
        for (const double w : widths_) {
            x += w;
            block.items.emplace_back(line({x, y}, {x, top}));
        }
        block.room = {0, 0, std::max(width(), title_width()), height()};
        return block;
    }

    double height() const {
        double sum = table_.title.empty() ? 0 : title_room;
        for (const Row &row : rows_) sum += row.height;
        return sum;
    }

  private:
    double title_width() const { return text_width(table_.title, title_height, true); }

    double width() const {
        double sum = 0;
        for (const double w : widths_) sum += w;
        return sum;
    }

    void measure(bool headed) {
        for (std::size_t c = 0; c < table_.columns.size(); ++c) {
            const Column &column = table_.columns[c];
            double w = 0;
            for (const auto &row : table_.rows) w = std::max(w, text_width(row.at(c), table_.height));
            w = std::min(w, column.widest);
            if (headed) w = std::max(w, longest_word(column.heading));
            widths_.push_back(w + 2 * side_air);
        }
    }

    /// A heading is wrapped word by word rather than making its column wide.
    double longest_word(std::string_view heading) const {
        double longest = 0;
        while (!heading.empty()) {
            const std::size_t space = heading.find(' ');
            longest = std::max(longest, text_width(heading.substr(0, space), table_.height, true));
            heading.remove_prefix(space == std::string_view::npos ? heading.size() : space + 1);
        }
        return longest;
    }

    Row row_of(const std::vector<std::string> &cells, bool bold) const {
        Row row;
        row.bold = bold;
        std::size_t lines = 1;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            row.cells.push_back(wrapped(cells[c], widths_[c] - 2 * side_air + rounding, table_.height, bold));
            lines = std::max(lines, row.cells.back().size());
        }
        row.height = (static_cast<double>(lines - 1) * line_pitch + 1 + around_lines) * table_.height;
        return row;
    }

    void draw_row(Block &block, const Row &row, double top) const {
        double x = 0;
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            double y = top - (around_lines / 2 + 1) * table_.height;
            for (const std::string &text : row.cells[c]) {
                if (!text.empty()) block.items.emplace_back(cell(text, x, y, c, row.bold));
                y -= line_pitch * table_.height;
            }
            x += widths_[c];
        }
    }

    Text cell(const std::string &text, double x, double y, std::size_t column, bool bold) const {
        Text made = words(text, {x + side_air, y}, table_.height, bold, Role::cell);
        made.across = table_.columns[column].align;
        if (made.across == Across::middle) made.at.x = x + widths_[column] / 2;
        if (made.across == Across::right) made.at.x = x + widths_[column] - side_air;
        return made;
    }

    static Text words(const std::string &text, Vec2 at, double height, bool bold, Role role) {
        Text made;
        made.words = text;
        made.at = at;
        made.height = height;
        made.bold = bold;
        made.role = role;
        return made;
    }

    static Path line(Vec2 from, Vec2 to) { return {{from, to}, false, Line::dimension, ""}; }

    static constexpr double rounding = 1e-6; ///< so that the widest cell is not wrapped by a last digit

    const Table &table_;
    std::vector<double> widths_;
    std::vector<Row> rows_;
};

} // namespace

Block drawn(const Table &table) { return Layouter(table).draw(); }

Table part_of(const Table &table, std::size_t first, std::size_t last) {
    Table part = table;
    const auto begin = table.rows.begin();
    part.rows.assign(begin + static_cast<std::ptrdiff_t>(first), begin + static_cast<std::ptrdiff_t>(last));
    if (first > 0 && !part.title.empty()) part.title += ", continued";
    return part;
}

std::size_t rows_that_fit(const Table &table, std::size_t first, double height) {
    std::size_t fitting = 0;
    for (std::size_t last = first + 1; last <= table.rows.size(); ++last) {
        if (Layouter(part_of(table, first, last)).height() > height) break;
        fitting = last - first;
    }
    return fitting;
}

} // namespace roundlay::sheets
