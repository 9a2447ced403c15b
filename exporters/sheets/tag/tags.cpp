#include "exporters/sheets/tag/tags.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/form/form_pen.h"
#include "exporters/sheets/tag/qr.h"

#include <algorithm>

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

/// Words in a column, line under line from `y` down and none below `lowest`; where the next would stand.
double add_lines(std::vector<Item> &items, const std::vector<std::string> &lines, Vec2 at, double height,
                 double step, double lowest = -1) {
    for (const std::string &line : lines) {
        if (at.y < lowest) break;
        items.emplace_back(lettered(line, at, height, false, Role::mark));
        at.y -= step;
    }
    return at.y;
}

/// Seen at the datum end with the log lying as in the wall, the outside face is to the right.
void add_arrows(std::vector<Item> &items, double left, double low, const Words &words) {
    add_arrow(items, {left + 3, low + 9}, {left + 3, low + 18.5}, words.say("up"), {left + 5.5, low + 15});
    add_arrow(items, {left + 3, low + 9}, {left + 15, low + 9}, words.say("outside"),
              {left + 16.5, low + 9.7});
}

/// Between the tag and what is beside its code: as much as there is room for, what can hurt first.
void add_found(std::vector<Item> &items, const Rect &room, const FoundNote &note, const Words &words) {
    constexpr double step = 3.8;
    std::string all = note.words();
    if (!note.pegs.empty()) all += (all.empty() ? "" : "; ") + words.say("pegs: %1", note.pegs);
    std::vector<std::string> lines = wrapped(words.say("as found: %1", all), room.width(), least_lettering);
    const auto fit = static_cast<std::size_t>(std::max(0.0, room.height() / step));
    if (lines.size() > fit && fit > 0) {
        lines[fit - 1] = shortened(lines[fit - 1] + " " + lines[fit], room.width(), least_lettering);
        lines.resize(fit);
    }
    if (fit > 0) add_lines(items, lines, {room.x0, room.y1 - least_lettering}, least_lettering, step);
}

void add_tag(std::vector<Item> &items, const Rect &box, const Layout &layout, Index<Piece> index,
             const Words &words, const SheetOptions &options) {
    const Piece &piece = layout.pieces[index];
    const std::string &revision = options.fields.revision;
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
    if (const FoundNote *note = options.found_of(index))
        add_found(items, {left, code.y1 + 0.5, right, y + height * 1.6 - 2}, *note, words);
    const double column = code.x0 - left - 1;
    y = add_lines(items, wrapped(wall_words(layout, piece, words), column, 3.5), {left, code.y1 - 4}, 3.5,
                  5.6);
    add_lines(items, wrapped(layout.name, column, 2.5), {left, y}, 2.5, 4, box.y0 + 20.5);
    items.emplace_back(lettered(piece_hash(piece) + (revision.empty() ? "" : " r." + revision),
                                {left, box.y0 + 2.6}, 2.5, false, Role::mark));
    add_arrows(items, left, box.y0, words);
}

Sheet empty_sheet(PaperSize size, const std::string &first_tag, std::size_t number, const Words &words) {
    Sheet sheet;
    sheet.size = size;
    sheet.drawing = Rect{0, 0, size.width, size.height}.grown(-margin);
    sheet.title_block = Rect::nothing();
    sheet.title = words.say("Tags from %1", first_tag);
    sheet.chapter = words.say("Tags");
    sheet.anchor = "tags:" + std::to_string(number);
    return sheet;
}

} // namespace

std::vector<Sheet> tag_sheets(const Shell &shell, const Layout &layout, const SheetOptions &options,
                              const OnlyPieces &only) {
    const PaperSize size = office_paper_for(shell, options);
    const double w = (size.width - 2 * margin) / columns, h = (size.height - 2 * margin) / rows;
    const Words words = words_for(shell, layout, options);
    std::vector<Sheet> sheets;
    int tags = 0;
    for (const auto i : pieces_of(layout, only)) {
        const int place = tags++ % (columns * rows);
        if (place == 0) sheets.push_back(empty_sheet(size, layout.pieces[i].tag, sheets.size() + 1, words));
        const double x = margin + (place % columns) * w, top = size.height - margin - (place / columns) * h;
        add_tag(sheets.back().items, {x, top - h, x + w, top}, layout, i, words, options);
    }
    return sheets;
}

} // namespace roundlay::sheets
