#include "exporters/sheets/form/key_marks.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"

namespace roundlay::sheets {
namespace {

constexpr double little = 7; ///< of a measure whose arrows point at it from outside
constexpr double outside = 4;
constexpr double letter_height = 3.5;

void add_arrows(Board &board, Vec2 a, Vec2 b, Vec2 way) {
    if (length(b - a) < little) {
        add_stroke(board, a - outside * way, a);
        add_stroke(board, b, b + outside * way);
        board.add(arrowhead(a, way));
        board.add(arrowhead(b, -1 * way));
        return;
    }
    add_stroke(board, a, b);
    board.add(arrowhead(a, -1 * way));
    board.add(arrowhead(b, way));
}

/// Beside the measure, else beside its ends, ever further off.
std::vector<Vec2> places_beside(Vec2 a, Vec2 b, Vec2 way) {
    const Vec2 side{-way.y, way.x};
    std::vector<Vec2> places;
    if (length(b - a) >= little)
        for (const double off : {2.6, 3.4, 4.5})
            for (const double sign : {1.0, -1.0})
                for (const double part : {0.5, 0.3, 0.7})
                    places.push_back(a + part * (b - a) + sign * off * side);
    for (const double off : {2.6, 4.0, 6.0, 9.0, 12.0})
        for (const Vec2 end : {b + off * way, a - off * way})
            for (const double beside : {2.6, -2.6, 4.5, -4.5, 7.0, -7.0})
                places.push_back(end + beside * side);
    return places;
}

} // namespace

void FigureView::add_wood(Board &board, const Polyhedron &solid) const {
    for (const Stretch &s : visible_edges_of({solid}, projection))
        board.add(Path{{at + scale * s.from, at + scale * s.to}, false, Line::visible, ""});
}

Polyhedron stretch_of_wood(const Body &body, double from, double to) {
    std::vector<Cell> cells;
    for (const Cell &cell : body.cells) {
        Cell part = clipped(clipped(cell, {{-1, 0, 0}, -from}), {{1, 0, 0}, to});
        if (!part.empty()) cells.push_back(std::move(part));
    }
    return border_of(cells);
}

void add_stroke(Board &board, Vec2 a, Vec2 b, Line line) {
    board.add(Path{{a, b}, false, line, ""});
}

void add_measure(Board &board, Vec2 a, Vec2 b, const std::string &letter) {
    constexpr double nothing = 1e-6;
    if (length(b - a) < nothing) return;
    const Vec2 way = (1 / length(b - a)) * (b - a);
    add_arrows(board, a, b, way);
    Text text = lettered(letter, {}, letter_height, true, Role::mark);
    text.across = Across::middle;
    text.upright = Upright::middle;
    board.put(text, places_beside(a, b, way));
}

Block figure_block(Board board) {
    constexpr double air = 2;
    const Rect room = bounds(board.items()).grown(air);
    return {room, std::move(board).finished()};
}

} // namespace roundlay::sheets
