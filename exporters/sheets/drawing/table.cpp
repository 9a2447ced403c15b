#include "exporters/sheets/drawing/table.h"

#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double side_air = 1.2;     ///< between a cell's border and its words
constexpr double line_pitch = 1.6;   ///< of one line to the next, in heights of the lettering
constexpr double around_lines = 0.9; ///< above and below the lines of a cell together, in heights
constexpr double title_height = 2.5;
constexpr double title_room = 5.0;
constexpr double rounding = 1e-6; ///< so that the widest cell is not wrapped by a last digit

/// A heading is wrapped word by word rather than making its column wide.
double longest_word(std::string_view heading, double lettering) {
    double longest = 0;
    while (!heading.empty()) {
        const std::size_t space = heading.find(' ');
        longest = std::max(longest, text_width(heading.substr(0, space), lettering, true));
        heading.remove_prefix(space == std::string_view::npos ? heading.size() : space + 1);
    }
    return longest;
}

/// What the words of a column would take unwrapped, and what they take at least.
struct Wish {
    double words = 0, heading = 0;
    double width(double widest, double longest_word) const {
        return std::max(std::min(words, widest), std::min(heading, longest_word)) + 2 * side_air;
    }
};

std::vector<Wish> wishes_of(const Table &table) {
    std::vector<Wish> all;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        Wish wish{0, longest_word(table.columns[c].heading, table.height)};
        for (const auto &row : table.rows)
            wish.words = std::max(wish.words, text_width(row.at(c), table.height));
        all.push_back(wish);
    }
    return all;
}

std::vector<double> widths_by(const std::vector<Wish> &wishes, const Table &table) {
    std::vector<double> widths;
    for (std::size_t c = 0; c < wishes.size(); ++c)
        widths.push_back(wishes[c].width(table.columns[c].widest, table.longest_word));
    return widths;
}

double sum_of(const std::vector<double> &widths) {
    double sum = 0;
    for (const double w : widths)
        sum += w;
    return sum;
}

} // namespace

/// Draws row under row.
struct LaidTable::Pen {
    const LaidTable &table;
    Block &block;
    double y;

    void line(Vec2 from, Vec2 to) { block.items.emplace_back(Path{{from, to}, false, Line::dimension, ""}); }

    void row(const Row &row) {
        double x = 0;
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            cell(row, c, x);
            x += table.widths_[c];
        }
        y -= row.height;
        line({0, y}, {x, y});
    }

    void cell(const Row &row, std::size_t c, double x) {
        const double h = table.lettering_, width = table.widths_[c];
        double base = y - (around_lines / 2 + 1) * h;
        for (const std::string &text : row.cells[c]) {
            Text made = lettered(text, {x + side_air, base}, h, row.bold, Role::cell);
            made.across = table.aligns_[c];
            if (made.across == Across::middle) made.at.x = x + width / 2;
            if (made.across == Across::right) made.at.x = x + width - side_air;
            if (!text.empty()) block.items.emplace_back(made);
            base -= line_pitch * h;
        }
    }

    void uprights(double top) {
        double x = 0;
        line({x, y}, {x, top});
        for (const double w : table.widths_) {
            x += w;
            line({x, y}, {x, top});
        }
    }
};

LaidTable::LaidTable(const Table &table, double tallest)
    : title_(table.title), continued_(table.continued), lettering_(table.height),
      widths_(widths_by(wishes_of(table), table)) {
    for (const Column &column : table.columns)
        aligns_.push_back(column.align);
    std::vector<std::string> headings;
    bool headed = false;
    for (const Column &column : table.columns) {
        headings.push_back(column.heading);
        headed = headed || !column.heading.empty();
    }
    if (headed) heading_.push_back(row_of(headings, true));
    const double for_words = tallest - height(0, 0);
    for (const auto &row : table.rows)
        add_row(row_of(row, false), for_words);
}

/// Parted between its lines where it is too tall.
void LaidTable::add_row(Row row, double tallest) {
    while (row.height > tallest) {
        const double lines =
            std::floor((tallest / lettering_ - 1 - around_lines) / line_pitch + 1 + rounding);
        const auto fit = static_cast<std::ptrdiff_t>(std::max(1.0, lines));
        std::vector<std::vector<std::string>> rest;
        std::ptrdiff_t left = 0;
        for (std::vector<std::string> &cell : row.cells) {
            const std::ptrdiff_t here = std::min(fit, std::ssize(cell));
            rest.emplace_back(cell.begin() + here, cell.end());
            left = std::max(left, std::ssize(rest.back()));
            cell.resize(static_cast<std::size_t>(here));
        }
        if (left == 0) break; // a single line is taller
        rows_.push_back(row_with(std::move(row.cells), row.bold));
        row = row_with(std::move(rest), row.bold);
    }
    rows_.push_back(std::move(row));
}

LaidTable::Row LaidTable::row_of(const std::vector<std::string> &cells, bool bold) const {
    std::vector<std::vector<std::string>> lines;
    for (std::size_t c = 0; c < cells.size(); ++c)
        lines.push_back(wrapped(cells[c], widths_[c] - 2 * side_air + rounding, lettering_, bold));
    return row_with(std::move(lines), bold);
}

LaidTable::Row LaidTable::row_with(std::vector<std::vector<std::string>> cells, bool bold) const {
    Row row{std::move(cells), bold, 0};
    std::size_t lines = 1;
    for (const auto &cell : row.cells)
        lines = std::max(lines, cell.size());
    row.height = (static_cast<double>(lines - 1) * line_pitch + 1 + around_lines) * lettering_;
    return row;
}

double LaidTable::width() const {
    return sum_of(widths_);
}

std::string LaidTable::title(std::size_t first) const {
    return first > 0 && !continued_.empty() ? continued_ : title_;
}

Rect LaidTable::room(std::size_t first, std::size_t last) const {
    const double over = title_.empty() ? 0 : text_width(title(first), title_height, true);
    return {0, 0, std::max(width(), over), height(first, last)};
}

double LaidTable::height(std::size_t first, std::size_t last) const {
    double sum = title_.empty() ? 0 : title_room;
    if (!heading_.empty()) sum += heading_[0].height;
    for (std::size_t i = first; i < last; ++i)
        sum += rows_[i].height;
    return sum;
}

Block LaidTable::drawn(std::size_t first, std::size_t last) const {
    Block block;
    block.room = room(first, last);
    Pen pen{*this, block, block.room.y1};
    if (!title_.empty()) {
        block.items.emplace_back(
            lettered(title(first), {0, pen.y - title_height}, title_height, true, Role::caption));
        pen.y -= title_room;
    }
    const double top = pen.y;
    pen.line({0, top}, {width(), top});
    if (!heading_.empty()) pen.row(heading_[0]);
    for (std::size_t i = first; i < last; ++i)
        pen.row(rows_[i]);
    pen.uprights(top);
    return block;
}

std::size_t LaidTable::rows_that_fit(std::size_t first, double room) const {
    std::size_t last = first;
    double taken = height(first, first);
    while (last < rows() && (taken += rows_[last].height) <= room)
        ++last;
    return last - first;
}

namespace {

/// By its widest columns first, none narrower than its headings let it be, nor its words than `least`. True
/// where that is enough.
bool narrow(Table &table, const std::vector<Wish> &wishes, double width, double least) {
    constexpr double step = 2;
    std::vector<bool> done(table.columns.size(), false);
    for (auto widths = widths_by(wishes, table); sum_of(widths) > width; widths = widths_by(wishes, table)) {
        std::size_t widest = widths.size();
        for (std::size_t i = 0; i < widths.size(); ++i)
            if (!done[i] && (widest == widths.size() || widths[i] > widths[widest])) widest = i;
        if (widest == widths.size()) return false;
        double &allowed = table.columns[widest].widest;
        const double words = widths[widest] - 2 * side_air;
        done[widest] = allowed < words - rounding || words <= least;
        if (!done[widest]) allowed = words - step;
    }
    return true;
}

} // namespace

Table narrowed(Table table, double width) {
    constexpr double narrowest = 8, step = 1;
    const std::vector<Wish> wishes = wishes_of(table);
    Table whole = table; // its headings are not broken
    if (narrow(whole, wishes, width, narrowest)) return whole;
    const double longest = std::ranges::max(wishes, {}, &Wish::heading).heading;
    // Sentences broken at every word are worse to read than broken headings.
    for (const double least : {24.0, 16.0, narrowest})
        for (double word = longest; word > narrowest; word -= step) {
            Table broken = table;
            broken.longest_word = word;
            if (narrow(broken, wishes, width, least)) return broken;
        }
    return whole;
}

} // namespace roundlay::sheets
