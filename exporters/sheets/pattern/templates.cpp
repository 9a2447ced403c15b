#include "exporters/sheets/pattern/templates.h"

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/listed.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/one_to_one/full_size.h"
#include "exporters/sheets/pattern/shapes.h"
#include "exporters/sheets/pattern/template_words.h"

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

Text words_at(const std::string &words, Vec2 at, double height, bool bold) {
    Text text = lettered(words, at, height, bold, Role::note);
    text.upright = Upright::middle;
    return text;
}

Board outlined(const PatternFace &face) {
    Board board;
    board.add(Path{face.outline, true, Line::visible, ""});
    for (const Path &mark : face.marks)
        board.add(mark);
    for (const Circle &hole : face.holes) {
        board.add(hole);
        constexpr double cross = 3; // mm
        for (const Vec2 arm : {Vec2{cross, 0}, Vec2{0, cross}})
            board.add(Path{{hole.centre - arm, hole.centre + arm}, false, Line::centre, ""});
    }
    return board;
}

Rect room_of(const Board &board) {
    return bounds(board.items()).grown(1);
}

/// Beside the level line, where it has a name to be hung by.
void name_level_line(Board &board, const PatternFace &face, const Words &words) {
    for (const Path &mark : face.marks) {
        if (mark.line != Line::centre) continue;
        const Vec2 a = mark.points.front(), b = mark.points.back();
        std::vector<Vec2> places;
        for (const double share : {0.5, 0.3, 0.7, 0.15, 0.85})
            for (const double off : {3.0, -3.0})
                places.push_back(a + share * (b - a) + Vec2{0, off});
        board.put(words_at(words.say("LL"), {}, 3.5, true), places);
    }
}

/// Each of its words stands whole on one of the sheets of that size.
Block template_block(const PrintedShape &shape, const Words &words, PaperSize size) {
    Board board = outlined(shape.face);
    const Rect room = room_of(board);
    add_template_words(board, shape, words, tile_windows(room, size));
    name_level_line(board, shape.face, words);
    return {room, std::move(board).finished()};
}

using ToMake = Indexed<std::optional<std::vector<bool>>, Piece>;

/// An old log of which nobody can say what it has already may have to be cut.
bool is_cut(const ToMake &to_make, Index<Piece> piece) {
    if (!to_make.holds(piece) || !to_make[piece]) return true;
    return std::ranges::any_of(*to_make[piece], [](bool made) { return made; });
}

/// Which sheets serve its faces.
std::string printed_as(const Pattern &pattern, const std::vector<PrintedShape> &shapes, const Words &words) {
    std::string all;
    for (const PatternFace &face : pattern.faces)
        for (const PrintedShape &shape : shapes) {
            const auto is_in = [&](const std::vector<std::string> &names) {
                return std::ranges::find(names, face.name) != names.end();
            };
            const std::string &name = shape.face.name;
            if (name == face.name || is_in(shape.as_it_is))
                all += (all.empty() ? "" : "; ") + name;
            else if (is_in(shape.turned_over))
                all += (all.empty() ? "" : "; ") + words.say("%1 turned over", name);
        }
    return all;
}

Table list_of_patterns(const std::vector<Pattern> &patterns, const std::vector<PrintedShape> &shapes,
                       const Words &words) {
    Table table = table_called(words, words.say("Templates at full size: which pieces they are for"));
    table.columns = {flush_left(words.say("No."), 12), flush_left(words.say("Where"), 36),
                     flush_left(words.say("Blank"), 34), flush_left(words.say("Printed as"), 40),
                     flush_left(words.say("Pieces"), 60)};
    for (const Pattern &pattern : patterns)
        table.rows.push_back({pattern.name, pattern.where,
                              words.length(pattern.width) + " \u00D7 " + words.length(pattern.height),
                              printed_as(pattern, shapes, words), listed(pattern.tags)});
    return table;
}

std::vector<Sheet> list_sheets(const Table &table, PaperSize size, const FullSizeWords &words) {
    const Rect area = full_size_area(size);
    const auto laid = std::make_shared<const LaidTable>(narrowed(table, area.width()), area.height());
    std::vector<Sheet> sheets;
    for (std::size_t from = 0; from < laid->rows();) {
        Page page(area);
        from += page.put_rows(laid, from, 1);
        Sheet sheet = full_size_sheet(size, words, words.words.say("list"));
        for (Item &item : page.items())
            sheet.items.push_back(std::move(item));
        sheets.push_back(std::move(sheet));
        sheets.back().anchor = "templates:" + std::to_string(sheets.size());
    }
    return sheets;
}

} // namespace

std::vector<Pattern> patterns_to_cut(const Layout &layout, const ToMake &to_make, const Words &words,
                                     const OnlyPieces &only) {
    std::vector<std::string> cut;
    for (const Index<Piece> piece : pieces_of(layout, only))
        if (is_cut(to_make, piece)) cut.push_back(layout.pieces[piece].tag);
    std::vector<Pattern> patterns = patterns_of(layout, words);
    std::erase_if(patterns, [&](const Pattern &pattern) {
        return std::ranges::find_first_of(pattern.tags, cut) == pattern.tags.end();
    });
    return patterns;
}

std::vector<Sheet> template_sheets(const Shell &shell, const Layout &layout, const SheetOptions &options,
                                   const OnlyPieces &only) {
    const PaperSize size = office_paper_for(shell, options);
    const Words words = words_for(shell, layout, options);
    const std::vector<Pattern> patterns = patterns_to_cut(layout, options.to_make, words, only);
    const std::string footer = layout.name + " " + options.fields.date + " " + options.fields.revision;
    const std::string title = words.say("Templates");
    const std::vector<PrintedShape> shapes = printed_shapes(patterns);
    std::vector<Sheet> sheets =
        list_sheets(list_of_patterns(patterns, shapes, words), size, {title, title, "", footer, words});
    for (const PrintedShape &shape : shapes) {
        const Block bare{room_of(outlined(shape.face)), {}};
        const PaperSize lying = turned(size);
        const bool turn = count_of_tiles(bare, lying) < count_of_tiles(bare, size);
        const Block block = template_block(shape, words, turn ? lying : size);
        const std::string &name = shape.face.name;
        const FullSizeWords names{name, title, "template:" + name, footer, words};
        for (Sheet &sheet : tiled(block, turn ? lying : size, names))
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
            for (const Circle &hole : face.holes)
                sheet.items.push_back(
                    moved(Item(Circle{hole.centre, hole.radius, Line::visible, outline_layer}), by));
            constexpr double over_line = 10; // the level line runs by the middle of what stands upright
            Text name = words_at(face.name,
                                 Vec2{box.centre().x, box.centre().y + (pattern.stands ? over_line : 0)} + by,
                                 7, false);
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
