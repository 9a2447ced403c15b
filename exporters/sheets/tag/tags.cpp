#include "exporters/sheets/tag/tags.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/tag/qr.h"

namespace roundlay::sheets {
namespace {

constexpr int columns = 2, rows = 4;
constexpr double margin = 10;
constexpr double code_size = 34; ///< quiet zone included: the code itself is over 25 mm

/// The largest lettering in which the words are no wider than `width`.
double fitting(const std::string &words, double width) {
    for (const double height : {14.0, 10.0, 7.0, 5.0, 3.5})
        if (text_width(words, height, true) <= width) return height;
    return least_lettering;
}

void add_arrow(std::vector<Item> &items, Vec2 from, Vec2 to, const std::string &name, Vec2 at) {
    const Vec2 d = to - from;
    items.emplace_back(Path{{from, to}, false, Line::frame, ""});
    const Vec2 way = (1 / length(d)) * d, side{-way.y, way.x};
    items.emplace_back(Fill{{{to, to - 4.5 * way + 1.8 * side, to - 4.5 * way - 1.8 * side}}, 0});
    items.emplace_back(lettered(name, at, 3.5, true, Role::mark));
}

std::string wall_words(const Layout &layout, const Piece &piece, const Words &words) {
    const std::string &part = part_letter(layout, part_of(layout, piece));
    if (!piece.timber) return words.say("Wall %1, round %2", part, piece.round);
    return words.say("Floor %1, %2", part, words.word(name_of(layout.timbers.at(*piece.timber).use)));
}

void add_tag(std::vector<Item> &items, const Rect &box, const Layout &layout, const Piece &piece,
             const Words &words, const std::string &revision) {
    items.emplace_back(Path{
        {{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}}, true, Line::dimension, ""});
    const double left = box.x0 + 5, right = box.x1 - 3;
    const double height = fitting(piece.tag, right - left);
    double y = box.y1 - 6 - height;
    for (const std::string &line : wrapped(piece.tag, right - left, height, true)) {
        items.emplace_back(lettered(line, {left, y}, height, true, Role::mark));
        y -= height * 1.6;
    }
    const Rect code{box.x1 - code_size - 1, box.y0 + 1, box.x1 - 1, box.y0 + 1 + code_size};
    if (const auto fill = qr_code(tag_code(piece, revision), code)) items.emplace_back(*fill);
    const double column = code.x0 - left - 1;
    y = code.y1 - 4;
    for (const std::string &line : wrapped(wall_words(layout, piece, words), column, 3.5)) {
        items.emplace_back(lettered(line, {left, y}, 3.5, false, Role::mark));
        y -= 5.6;
    }
    for (const std::string &line : wrapped(layout.name, column, 2.5)) {
        if (y < box.y0 + 20.5) break;
        items.emplace_back(lettered(line, {left, y}, 2.5, false, Role::mark));
        y -= 4;
    }
    items.emplace_back(lettered(piece_hash(piece) + (revision.empty() ? "" : " r." + revision),
                                {left, box.y0 + 2.6}, 2.5, false, Role::mark));
    // seen at the datum end with the log lying as in the wall, the outside face is to the right
    add_arrow(items, {left + 3, box.y0 + 9}, {left + 3, box.y0 + 18.5}, words.say("up"),
              {left + 5.5, box.y0 + 15});
    add_arrow(items, {left + 3, box.y0 + 9}, {left + 15, box.y0 + 9}, words.say("outside"),
              {left + 16.5, box.y0 + 9.7});
}

} // namespace

std::vector<Sheet> tag_sheets(const Shell &shell, const Layout &layout, const SheetOptions &options) {
    const PaperSize size = office_paper_for(shell, options);
    const double w = (size.width - 2 * margin) / columns, h = (size.height - 2 * margin) / rows;
    const Words words = words_for(shell, layout, options);
    std::vector<Sheet> sheets;
    for (const auto i : layout.pieces.indices()) {
        const int place = i.number() % (columns * rows);
        if (place == 0) {
            Sheet sheet;
            sheet.size = size;
            sheet.drawing = Rect{0, 0, size.width, size.height}.grown(-margin);
            sheet.title_block = Rect::nothing();
            sheet.title = words.say("Tags from %1", layout.pieces[i].tag);
            sheet.chapter = words.say("Tags");
            sheet.anchor = "tags:" + std::to_string(sheets.size() + 1);
            sheets.push_back(std::move(sheet));
        }
        const double x = margin + (place % columns) * w, top = size.height - margin - (place / columns) * h;
        add_tag(sheets.back().items, {x, top - h, x + w, top}, layout, layout.pieces[i], words,
                options.fields.revision);
    }
    return sheets;
}

} // namespace roundlay::sheets
