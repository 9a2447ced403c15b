#include "exporters/sheets/book/book.h"

#include "exporters/sheets/book/parts.h"
#include "exporters/sheets/elevation/elevation.h"
#include "exporters/sheets/elevation/section.h"
#include "exporters/sheets/plan/floor_plan.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/pole/story_pole.h"

namespace roundlay::sheets {
namespace {

void append(std::vector<Sheet> &all, std::vector<Sheet> more) {
    for (Sheet &sheet : more)
        all.push_back(std::move(sheet));
}

} // namespace

std::vector<Sheet> shell_drawings(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                                  const SheetOptions &options) {
    std::vector<Sheet> all = foundation_plan(shell, layout, options);
    append(all, wall_elevations(shell, layout, bodies, options));
    append(all, wall_sections(shell, layout, bodies, options));
    append(all, round_plans(shell, layout, bodies, options));
    append(all, floor_plans(shell, layout, bodies, options));
    append(all, story_poles(shell, layout, options));
    return all;
}

void number_pages(std::vector<Sheet> &sheets) {
    const std::string of = " / " + std::to_string(sheets.size());
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        constexpr double from_edge = 10, over_edge = 5;
        Text number;
        number.words = std::to_string(i + 1) + of;
        number.at = {sheets[i].size.width - from_edge, over_edge};
        number.across = Across::right;
        number.role = Role::page;
        sheets[i].items.emplace_back(number);
    }
}

Book bound_book(const Shell &shell, const SheetOptions &options, const BookWords &words,
                std::vector<Sheet> sheets) {
    Book book;
    book.title = shell.name.empty() ? "Log shell" : shell.name;
    book.author = options.fields.creator;
    book.subject = "cover, index, legend and all sheets of the shell";
    book.language = options.fields.language;
    book.sheets = cover_sheets(shell, options, words);
    append(book.sheets, legend_sheets(shell, options));
    append(book.sheets, index_sheets(shell, options, sheets, book.sheets.size()));
    append(book.sheets, std::move(sheets));
    number_pages(book.sheets);
    return book;
}

} // namespace roundlay::sheets
