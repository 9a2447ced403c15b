#include "exporters/sheets/pattern/templates.h"

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/one_to_one/full_size.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double between = 20; ///< mm of template material between outlines for a machine
constexpr const char *outline_layer = "OUTLINE-THROUGH";
constexpr const char *text_layer = "TEXT";
constexpr const char *check_layer = "CHECK";

Rect around(const std::vector<Vec2> &points) {
    Rect box = Rect::nothing();
    for (const Vec2 p : points)
        box = joined(box, p);
    return box;
}

std::string list_of(const std::vector<std::string> &tags) {
    std::string all;
    for (const std::string &tag : tags)
        all += (all.empty() ? "" : ", ") + tag;
    return all;
}

Text words_at(const std::string &words, Vec2 at, double height, bool bold) {
    Text text = lettered(words, at, height, bold, Role::note);
    text.upright = Upright::middle;
    return text;
}

/// Name, end and logs in the middle of the outline, as far as they fit; an arrow up beside them.
void add_words(Board &board, const Pattern &pattern, const PatternFace &face) {
    const Rect box = around(face.outline);
    const double width = box.width() * 0.55;
    std::vector<std::pair<std::string, double>> lines{{face.name, 7.0}};
    lines.emplace_back(pattern.where, 3.5);
    const auto tags =
        wrapped(std::to_string(pattern.tags.size()) + (pattern.tags.size() == 1 ? " piece: " : " pieces: ") +
                    list_of(pattern.tags),
                width, 2.5);
    for (std::size_t i = 0; i < std::min<std::size_t>(tags.size(), 6); ++i)
        lines.emplace_back(tags[i], 2.5);
    if (tags.size() > 6) lines.emplace_back("and more, see the list of templates", 2.5);
    double y = box.centre().y + 14;
    for (const auto &[words, height] : lines) {
        const double x = box.centre().x - width / 2;
        for (const double try_x : {x, box.x0 + 12, box.centre().x})
            if (board.put(words_at(words, {0, 0}, height, height > 3), {{try_x, y}})) break;
        y -= height * 1.7;
    }
    if (!pattern.stands) return;
    for (const double x :
         {box.x0 + box.width() * 0.2, box.x0 + box.width() * 0.12, box.x0 + box.width() * 0.86}) {
        const Vec2 foot{x, box.centre().y - 10};
        const Rect room{x - 3, foot.y - 1, x + 9, foot.y + 21};
        if (!board.is_free(room, true)) continue;
        board.add(Path{{foot, foot + Vec2{0, 20}}, false, Line::strong, ""});
        board.add(arrowhead(foot + Vec2{0, 20}, {0, 1}));
        board.add(words_at("up", foot + Vec2{1.5, 8}, 2.5, false));
        break;
    }
}

Block template_block(const Pattern &pattern, const PatternFace &face) {
    Board board;
    board.add(Path{face.outline, true, Line::visible, ""});
    for (const Path &mark : face.marks)
        board.add(mark);
    add_words(board, pattern, face);
    return {bounds(board.items()).grown(1), board.finished()};
}

Sheet list_sheet(const std::vector<Pattern> &patterns, PaperSize size, const FullSizeWords &words,
                 const Words &lengths, std::size_t &from) {
    Table table;
    table.title = "Templates at full size: which pieces they are for";
    table.columns = {{"No.", Across::left, 12},
                     {"Where", Across::left, 36},
                     {"Blank", Across::left, 34},
                     {"Pieces", Across::left, 70}};
    for (const Pattern &pattern : patterns)
        table.rows.push_back({pattern.name, pattern.where,
                              lengths.length(pattern.width) + " \u00D7 " + lengths.length(pattern.height),
                              list_of(pattern.tags)});
    const LaidTable laid(table);
    Page page(full_size_area(size));
    from += page.put_rows(laid, from, 1);
    Sheet sheet = full_size_sheet(size, words, "list");
    sheet.items.insert(sheet.items.end(), page.items().begin(), page.items().end());
    return sheet;
}

} // namespace

std::vector<Sheet> template_sheets(const Shell &shell, const Layout &layout, const SheetOptions &options) {
    const PaperSize size = size_of(shell.units == UnitSystem::metric ? Paper::a4 : Paper::letter);
    const Words lengths(shell.units, options.denominator);
    const std::vector<Pattern> patterns = patterns_of(layout);
    const std::string footer = layout.name + " " + options.fields.date + " " + options.fields.revision;
    std::vector<Sheet> sheets;
    for (std::size_t listed = 0, before = 1; listed < patterns.size() && before != listed;) {
        before = listed;
        sheets.push_back(list_sheet(patterns, size, {"Templates", "Templates", "", footer}, lengths, listed));
        sheets.back().anchor = "templates:" + std::to_string(sheets.size());
    }
    for (const Pattern &pattern : patterns)
        for (const PatternFace &face : pattern.faces) {
            const Block block = template_block(pattern, face);
            const PaperSize lying = turned(size);
            const bool turn = count_of_tiles(block, lying) < count_of_tiles(block, size);
            const FullSizeWords words{face.name, "Templates", "template:" + face.name, footer};
            for (Sheet &sheet : tiled(block, turn ? lying : size, words))
                sheets.push_back(std::move(sheet));
        }
    return sheets;
}

Sheet template_drawing(const std::vector<Pattern> &patterns) {
    Sheet sheet;
    sheet.title = "Templates";
    double x = 0, tallest = 0;
    for (const Pattern &pattern : patterns)
        for (const PatternFace &face : pattern.faces) {
            const Rect box = around(face.outline);
            const Vec2 by{x - box.x0, between - box.y0};
            sheet.items.push_back(moved(Item(Path{face.outline, true, Line::visible, outline_layer}), by));
            for (const Path &mark : face.marks)
                sheet.items.push_back(moved(Item(mark), by));
            Text name = words_at(face.name, Vec2{box.centre().x, box.centre().y} + by, 7, false);
            name.across = Across::middle;
            name.layer = text_layer;
            sheet.items.emplace_back(name);
            x += box.width() + between;
            tallest = std::max(tallest, box.height() + 2 * between);
        }
    sheet.items.emplace_back(Path{{{0, 0}, {100, 0}}, false, Line::dimension, check_layer});
    Text bar = words_at("BAR-100", {102, 0}, 3.5, false);
    bar.layer = check_layer;
    sheet.items.emplace_back(bar);
    sheet.size = {std::max(x, 130.0), tallest};
    return sheet;
}

} // namespace roundlay::sheets
