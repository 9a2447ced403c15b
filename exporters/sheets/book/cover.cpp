#include "exporters/sheets/book/parts.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/scales.h"

#include <array>
#include <cstdint>

namespace roundlay::sheets {
namespace {

struct Pixels {
    double width = 0, height = 0;
};

/// From the header of a PNG (its first chunk states both in bytes 16 to 23); zeros where it is none.
Pixels pixels_of(const std::string &png) {
    constexpr std::size_t header = 24;
    if (png.size() < header) return {};
    const auto number = [&](std::size_t at) {
        std::uint32_t v = 0;
        for (std::size_t i = 0; i < 4; ++i)
            v = (v << 8U) | static_cast<unsigned char>(png[at + i]);
        return static_cast<double>(v);
    };
    return {number(16), number(20)};
}

double add_name(std::vector<Item> &items, const std::string &name, const std::string &below,
                const Rect &area) {
    double height = 10;
    while (height > 5 && text_width(name, height, true) > area.width())
        height *= 0.7;
    double y = area.y1 - height;
    for (const std::string &line : wrapped(name, area.width(), height, true)) {
        items.emplace_back(lettered(line, {area.x0, y}, height, true, Role::title));
        y -= 1.7 * height;
    }
    Text what;
    what.words = below;
    what.at = {area.x0, y + 0.7 * height - 4};
    what.height = 5;
    what.role = Role::title;
    items.emplace_back(what);
    return what.at.y - 5;
}

void add_picture(std::vector<Item> &items, const BookWords &words, const Rect &room) {
    const Pixels pixels = pixels_of(words.picture_png);
    if (pixels.width <= 0 || pixels.height <= 0 || room.height() < 20) return;
    const double scale = std::min(room.width() / pixels.width, room.height() / pixels.height);
    const double w = pixels.width * scale, h = pixels.height * scale;
    const Rect box{room.centre().x - w / 2, room.y1 - h, room.centre().x + w / 2, room.y1};
    items.emplace_back(Picture{box, words.picture_png, words.pictured});
    items.emplace_back(Path{
        {{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}}, true, Line::dimension, ""});
}

Table facts_table(const BookWords &book, const Words &words) {
    Table table = table_called(words, words.say("The shell"));
    table.columns = {{"", Across::left, 40}, {"", Across::left, 50}};
    for (const auto &[name, value] : book.facts)
        table.rows.push_back({name, value});
    return table;
}

Table cautions_table(const BookWords &book, const Words &words, double width) {
    Table table = table_called(words, words.say("Cautions"));
    table.columns = {{"", Across::left, width}};
    for (const std::string &caution : book.cautions)
        table.rows.push_back({caution});
    return table;
}

} // namespace

Titled cover_sheets(const Shell &shell, const SheetOptions &options, const BookWords &book) {
    const Words words(shell.units, options.denominator, options.fields.language);
    const PaperSize size = paper_for(shell, options);
    const Rect area = inner_area(size);
    const bool lying = size.width > size.height;
    const std::string name = called(shell).empty() ? words.say("Log shell") : called(shell);
    std::vector<Page> pages{empty_page(size)};
    std::vector<Item> items;
    const double below = add_name(items, name, words.say("Drawings, cut sheets, templates and tags"), area);
    pages.back().take({area.x0, below, area.x1, area.y1});
    constexpr double side = 110; // of facts and cautions beside the picture
    const double floor = title_block_area(size).y1 + 6;
    const Rect room = lying ? Rect{area.x0, floor, area.x1 - side, below}
                            : Rect{area.x0, below - (below - floor) * 0.5, area.x1, below};
    add_picture(items, book, room);
    if (!book.picture_png.empty()) pages.back().take(room);
    pages.back().add(items);
    if (!book.facts.empty()) put_on(pages, size, facts_table(book, words));
    if (!book.cautions.empty()) put_on(pages, size, cautions_table(book, words, 98));
    const std::string cover = words.say("Cover");
    return {std::move(pages),
            {name, words.say("book of the shell"), cover, "B-1", said_scale(nullptr, words), false, ""},
            {cover, "cover", ""}};
}

} // namespace roundlay::sheets
