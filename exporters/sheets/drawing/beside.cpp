#include "exporters/sheets/drawing/beside.h"

namespace roundlay::sheets {

Path thin_leader(std::vector<Vec2> points) {
    return {std::move(points), false, Line::dimension, "", true};
}

std::optional<Vec2> put_beside(Board &board, const Rect &area, Text text,
                               const std::function<bool(const Rect &box)> &suits) {
    constexpr double air = 0.3, inside = 1.5, short_of_text = 0.4;
    const double half = text_width(text.words, text.height) / 2, y = area.centre().y;
    for (const double away : {2.5, 4.0})
        for (const double side : {1.0, -1.0}) {
            const double edge = side > 0 ? area.x1 : area.x0;
            text.at = {edge + side * (away + half), y};
            const Rect box = box_of(text);
            if (!board.is_free(box.grown(air), true) || !suits(box)) continue;
            const Vec2 begin{edge - side * inside, y};
            board.add(text);
            board.add(thin_leader({begin, {edge + side * (away - short_of_text), y}}));
            return begin;
        }
    return std::nullopt;
}

} // namespace roundlay::sheets
