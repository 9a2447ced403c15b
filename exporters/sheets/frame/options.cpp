#include "exporters/sheets/frame/options.h"

#include <stdexcept>

namespace roundlay::sheets {

namespace {

constexpr double inner_margin = 4; ///< between the frame and what is drawn

} // namespace

PaperSize paper_for(const Shell &shell, const SheetOptions &options) {
    const Paper standard = shell.units == UnitSystem::metric ? Paper::a3 : Paper::tabloid;
    const PaperSize size = size_of(options.paper.value_or(standard));
    return options.turned ? turned(size) : size;
}

Rect inner_area(PaperSize size) {
    return drawing_area(size).grown(-inner_margin);
}

Page empty_page(PaperSize size) {
    Page page(inner_area(size));
    page.take(title_block_area(size));
    return page;
}

void put_on(std::vector<Page> &pages, PaperSize size, const Block &block) {
    if (pages.back().put(block)) return;
    pages.push_back(empty_page(size));
    if (!pages.back().put(block)) throw std::logic_error("a block is larger than a sheet");
}

std::vector<Sheet> framed(const std::vector<Page> &pages, PaperSize size, const TitleFields &fields,
                          const SheetNames &names) {
    std::vector<Sheet> sheets;
    const int count = static_cast<int>(pages.size());
    for (int i = 0; i < count; ++i) {
        Sheet sheet = framed_sheet(size, fields, i + 1, count);
        const auto &items = pages[static_cast<std::size_t>(i)].items();
        sheet.items.insert(sheet.items.end(), items.begin(), items.end());
        const std::string part = std::to_string(i + 1);
        sheet.title = names.title + (count > 1 ? ", " + part + " of " + std::to_string(count) : "");
        sheet.anchor = names.anchor + ":" + part;
        sheet.chapter = names.chapter;
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
