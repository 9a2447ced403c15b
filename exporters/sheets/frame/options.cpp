#include "exporters/sheets/frame/options.h"

#include "kernel/layout/names_given.h"

namespace roundlay::sheets {

namespace {

constexpr double inner_margin = 4; ///< between the frame and what is drawn

} // namespace

std::string FoundNote::words() const {
    std::string all;
    for (const std::string &phrase : phrases)
        all += (all.empty() ? "" : "; ") + phrase;
    return all;
}

const FoundNote *SheetOptions::found_of(Index<Piece> piece) const {
    return found.holds(piece) && !found[piece].is_empty() ? &found[piece] : nullptr;
}

std::vector<Index<Piece>> pieces_of(const Layout &layout, const OnlyPieces &only) {
    if (only) return *only;
    const auto all = layout.pieces.indices();
    return {all.begin(), all.end()};
}

PaperSize paper_for(const Shell &shell, const SheetOptions &options) {
    const Paper standard = shell.units == UnitSystem::metric ? Paper::a3 : Paper::tabloid;
    const PaperSize size = size_of(options.paper.value_or(standard));
    return options.turned ? turned(size) : size;
}

PaperSize office_paper_for(const Shell &shell, const SheetOptions &options) {
    const bool inches = options.paper ? *options.paper == Paper::letter || *options.paper == Paper::tabloid
                                      : shell.units == UnitSystem::imperial;
    return size_of(inches ? Paper::letter : Paper::a4);
}

Words words_for(const Shell &shell, const Layout &layout, const SheetOptions &options) {
    Words words(shell.units, options.denominator, options.fields.language);
    words.know(names_given(shell, layout));
    return words;
}

Rect inner_area(PaperSize size) {
    return drawing_area(size).grown(-inner_margin);
}

Page empty_page(PaperSize size) {
    Page page(inner_area(size));
    page.take(title_block_area(size));
    return page;
}

bool put_on(std::vector<Page> &pages, PaperSize size, const SharedBlock &block) {
    if (pages.back().put(block)) return true;
    pages.push_back(empty_page(size));
    return pages.back().put(block);
}

} // namespace roundlay::sheets
