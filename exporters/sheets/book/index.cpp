#include "exporters/sheets/book/parts.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/set/scales.h"

#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5, pitch = 5.2, between_columns = 8, least_column = 75, page_room = 10;

/// A line of the index: a chapter's name, or a sheet and where it is.
struct Entry {
    std::string words;
    std::string anchor;   ///< empty for a chapter
    std::size_t page = 0; ///< among the sheets that the index is of, from 1
};

std::vector<Entry> entries_of(const std::vector<Sheet> &sheets) {
    std::vector<Entry> all;
    std::string chapter, last;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const Sheet &sheet = sheets[i];
        if (sheet.chapter != chapter) {
            chapter = sheet.chapter;
            if (!chapter.empty()) all.push_back({chapter, "", 0});
        }
        const std::string &subject = sheet.subject.empty() ? sheet.title : sheet.subject;
        if (subject.empty() || subject == last) continue; // it goes on from the sheet before
        last = subject;
        all.push_back({subject, sheet.anchor, i + 1});
    }
    return all;
}

std::string cut_to(const std::string &words, double width, bool bold) {
    const auto lines = wrapped(words, width - text_width("\u2026", lettering, bold), lettering, bold);
    return lines.size() > 1 ? lines[0] + "\u2026" : lines[0];
}

/// The free columns of one page of the index.
struct Grid {
    Rect area;
    int columns = 1, lines = 1;
    double width = 0; ///< of a column

    explicit Grid(PaperSize size) {
        area = inner_area(size);
        area.y0 = title_block_area(size).y1 + 4;
        area.y1 -= 10; // the heading
        columns = std::max(
            1, static_cast<int>((area.width() + between_columns) / (least_column + between_columns)));
        width = (area.width() - (columns - 1) * between_columns) / columns;
        lines = std::max(1, static_cast<int>(area.height() / pitch));
    }
    std::size_t room() const { return static_cast<std::size_t>(columns * lines); }
    Vec2 place(std::size_t i) const {
        const auto column = static_cast<double>(i / static_cast<std::size_t>(lines)),
                   line = static_cast<double>(i % static_cast<std::size_t>(lines));
        return {area.x0 + column * (width + between_columns), area.y1 - (line + 1) * pitch};
    }
};

void add_entry(std::vector<Item> &items, const Entry &entry, Vec2 at, double width, std::size_t first) {
    const bool chapter = entry.anchor.empty();
    const double indent = chapter ? 0 : 3;
    Text text;
    text.words = cut_to(entry.words, width - indent - page_room, chapter);
    text.at = at + Vec2{indent, 0};
    text.bold = chapter;
    text.role = Role::cell;
    items.emplace_back(text);
    if (chapter) return;
    Text page = text;
    page.words = std::to_string(first + entry.page);
    page.at = at + Vec2{width, 0};
    page.across = Across::right;
    items.emplace_back(page);
    const double from = at.x + indent + text_width(text.words, lettering) + 1.5,
                 to = at.x + width - text_width(page.words, lettering) - 1.5;
    if (to > from)
        items.emplace_back(Path{{{from, at.y + 0.4}, {to, at.y + 0.4}}, false, Line::dimension, ""});
    items.emplace_back(Link{{at.x, at.y - 1.2, at.x + width, at.y + pitch - 1.2}, entry.anchor});
}

} // namespace

Titled index_sheets(const Shell &shell, const SheetOptions &options, const std::vector<Sheet> &sheets,
                    std::size_t before) {
    const PaperSize size = paper_for(shell, options);
    const Grid grid(size);
    const Words words(shell.units, options.denominator, options.fields.language);
    const std::string title = words.say("Index");
    const std::vector<Entry> entries = entries_of(sheets);
    const std::size_t count = std::max<std::size_t>(1, (entries.size() + grid.room() - 1) / grid.room());
    std::vector<Page> pages;
    for (std::size_t p = 0; p < count; ++p) {
        pages.push_back(empty_page(size));
        std::vector<Item> items{lettered(title, {grid.area.x0, grid.area.y1 + 4}, 5, true, Role::caption)};
        for (std::size_t i = p * grid.room(); i < std::min(entries.size(), (p + 1) * grid.room()); ++i)
            add_entry(items, entries[i], grid.place(i - p * grid.room()), grid.width, before + count);
        pages.back().add(items);
    }
    return {std::move(pages),
            {title, words.say("sheets and their pages in this book"), title, "I-1",
             said_scale(nullptr, words), false, ""},
            {title, "index", ""}};
}

} // namespace roundlay::sheets
