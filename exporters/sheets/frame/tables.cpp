#include "exporters/sheets/frame/tables.h"

#include "exporters/sheets/drawing/columns.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay::sheets {
namespace {

constexpr std::size_t fewest_rows = 2; ///< a table is not begun for less

bool put_whole(std::vector<Page> &pages, const SharedTable &table, std::size_t first) {
    return std::any_of(pages.begin() + static_cast<std::ptrdiff_t>(first), pages.end(),
                       [&](Page &page) { return page.put_rows(table, 0, table->rows()) > 0; });
}

/// How many rows an empty page takes from there on. A row is never taller than that.
std::size_t put_on_fresh(std::vector<Page> &pages, PaperSize size, const SharedTable &table,
                         std::size_t done) {
    Page fresh = empty_page(size);
    const std::size_t placed = fresh.put_rows(table, done, 1);
    if (placed == 0) throw std::logic_error("a table's row is larger than a sheet");
    if (pages.back().empty())
        pages.back() = std::move(fresh);
    else
        pages.push_back(std::move(fresh));
    return placed;
}

void put_in_parts(std::vector<Page> &pages, PaperSize size, const SharedTable &table, std::size_t first) {
    std::size_t done = 0;
    for (std::size_t i = first; i < pages.size() && done < table->rows(); ++i)
        done += pages[i].put_rows(table, done, std::min(fewest_rows, table->rows() - done));
    while (done < table->rows())
        done += put_on_fresh(pages, size, table, done);
}

} // namespace

Table note_table(const Words &words, const std::string &note, double width) {
    Table table = table_called(words, words.say("Notes"));
    table.columns = {{"", Across::left, width}};
    table.rows = {{note}};
    return table;
}

Table not_drawn(const Words &words, const std::string &what) {
    Table table = table_called(words, words.say("Not drawn"));
    table.columns = {{"", Across::left, 120}};
    table.rows = {{words.say("%1 does not fit this paper at any scale that is drawn to.", what)}};
    return table;
}

std::vector<Page> pages_not_drawn(PaperSize size, const Words &words, const std::string &what) {
    std::vector<Page> pages{empty_page(size)};
    put_on(pages, size, not_drawn(words, what));
    return pages;
}

Table left_over_table(const Words &words, const std::string &title, const std::vector<std::string> &tags) {
    Table table = table_called(words, title);
    table.columns = {{"", Across::left, 150}};
    std::string all;
    for (const std::string &tag : tags)
        all += (all.empty() ? "" : ", ") + tag;
    table.rows = {{all}};
    return table;
}

FittedTable::FittedTable(const Table &table, PaperSize size) {
    Table narrow = narrowed(table, inner_area(size).width());
    laid = std::make_shared<const LaidTable>(narrow, empty_page(size).tallest());
    if (narrow.columns.size() != 1) return;
    for (const double part : {0.35, 0.5, 0.98}) {
        narrow.columns[0].widest = part * inner_area(size).width();
        auto next = std::make_shared<const LaidTable>(narrow);
        if (next->width() > laid->width()) wider.push_back(std::move(next));
    }
}

void put_fitted(std::vector<Page> &pages, PaperSize size, const FittedTable &table, std::size_t first) {
    if (put_whole(pages, table.laid, first)) return;
    for (const SharedTable &wider : table.wider)
        if (put_whole(pages, wider, first)) return;
    Page fresh = empty_page(size);
    if (fresh.put_rows(table.laid, 0, table.laid->rows()) > 0)
        pages.push_back(std::move(fresh));
    else
        put_in_parts(pages, size, table.laid, first);
}

void put_on(std::vector<Page> &pages, PaperSize size, const Table &table) {
    put_fitted(pages, size, {table, size}, pages.size() - 1);
}

} // namespace roundlay::sheets
