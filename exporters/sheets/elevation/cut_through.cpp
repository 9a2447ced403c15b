#include "exporters/sheets/elevation/cut_through.h"

namespace roundlay::sheets {
namespace {

constexpr double cut_grey = 0.78;

} // namespace

std::optional<Polyhedron> beyond(const Layout &layout, const Bodies &bodies, Index<WallPlace> wall,
                                 const Piece &piece, double x) {
    const Frame frame = within(piece.frame, layout.walls.at(wall).frame);
    std::vector<Cell> cells;
    for (const Cell &cell : bodies.at(piece.model).cells) {
        Cell part = clipped(moved(cell, frame), {{1, 0, 0}, x});
        if (!part.empty()) cells.push_back(std::move(part));
    }
    return cells.empty() ? std::nullopt : std::optional(border_of(cells));
}

void add_wood(Board &board, const SeenShell &seen, double scale) {
    for (const GreyFace &grey : seen.greys) {
        Fill fill{{}, cut_grey};
        for (const auto &ring : grey.rings) {
            fill.rings.emplace_back();
            for (const Vec2 p : ring)
                fill.rings.back().push_back(scale * p);
        }
        board.add(fill);
        for (const Stretch &s : cut_through_mark(grey))
            board.add(Path{{scale * s.from, scale * s.to}, false, Line::dimension, ""});
    }
    for (const Stretch &s : seen.edges)
        board.add(Path{{scale * s.from, scale * s.to}, false, Line::visible, ""});
}

} // namespace roundlay::sheets
