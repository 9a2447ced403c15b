#include "exporters/sheets/plan/wall_marks.h"

#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/plan/plan_frame.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double start_gap = 0.8, overshoot = 1, before_number = 0.7, origin_radius = 1.2, shortest_arrow = 3;

/// The wall's outside face on paper.
struct Face {
    Vec2 from, along, out;

    Vec2 at(double x, double away) const { return from + x * along + away * out; }
};

Path line(Vec2 a, Vec2 b) {
    return Path{{a, b}, false, Line::dimension, ""};
}

/// Along its extension line where that lies or stands, else level beyond its end.
Text number_at(const Face &face, double x, double away, const std::string &number, double lettering) {
    const double turn = reading_turn(face.out);
    Text text;
    text.words = number;
    text.height = lettering;
    text.across = Across::middle;
    text.upright = Upright::middle;
    text.role = Role::dimension;
    const double width = text_width(number, lettering);
    double reach = (std::abs(face.out.x) * width + std::abs(face.out.y) * lettering) / 2;
    if (turn == 0 || turn == 90) {
        text.turn = turn;
        reach = width / 2;
    }
    text.at = face.at(x, away + overshoot + before_number + reach);
    return text;
}

struct Drawn {
    std::vector<Item> lines;
    std::vector<Text> numbers;
};

Drawn drawn(const Face &face, const std::vector<Mark> &marks, double away, double lettering) {
    Drawn all;
    all.lines.emplace_back(line(face.at(0, away), face.at(marks.back().at, away)));
    all.lines.emplace_back(Circle{face.at(0, away), origin_radius, Line::dimension, ""});
    double before = origin_radius;
    for (const Mark &mark : marks) {
        all.lines.emplace_back(line(face.at(mark.at, start_gap), face.at(mark.at, away + overshoot)));
        const Vec2 tip = face.at(mark.at, away);
        all.lines.emplace_back(mark.at - before < shortest_arrow ? dot(tip, 0.5)
                                                                 : arrowhead(tip, face.along));
        all.numbers.push_back(number_at(face, mark.at, away, mark.number, lettering));
        before = mark.at;
    }
    return all;
}

bool touches(const Rect &box, const Item &item) {
    const auto strokes = strokes_of(item);
    if (strokes.empty()) return box.overlaps(bounds(item));
    return std::ranges::any_of(strokes, [&](const auto &s) { return crosses(box, s.first, s.second); });
}

bool has_room(const Board &board, const Drawn &all) {
    std::vector<Rect> boxes;
    for (const Text &number : all.numbers) {
        const Rect box = box_of(number).grown(0.3);
        if (!board.is_free(box, true)) return false;
        for (const Rect &other : boxes)
            if (box.overlaps(other)) return false;
        for (const Item &item : all.lines)
            if (touches(box, item)) return false;
        boxes.push_back(box);
    }
    return std::ranges::all_of(all.lines, [&](const Item &item) { // lines yield to words, arrowheads do not
        return !std::holds_alternative<Fill>(item) || board.is_free(bounds(item), false);
    });
}

} // namespace

std::optional<double> add_wall_marks(Board &board, Vec2 from, Vec2 to, const std::vector<Mark> &marks,
                                     double lettering) {
    const Vec2 along = (1 / length(to - from)) * (to - from);
    const Face face{from, along, {along.y, -along.x}}; // outside is right of the walk
    for (const double away : {5.0, 8.0, 12.0, 17.0}) {
        Drawn all = drawn(face, marks, away, lettering);
        if (!has_room(board, all)) continue;
        double reach = away;
        for (const Text &number : all.numbers) {
            const Rect box = box_of(number);
            for (const Vec2 p :
                 {Vec2{box.x0, box.y0}, Vec2{box.x1, box.y1}, Vec2{box.x0, box.y1}, Vec2{box.x1, box.y0}})
                reach = std::max(reach, dot(p - from, face.out));
            board.add(number);
        }
        for (Item &item : all.lines)
            board.add(std::move(item));
        return reach;
    }
    return std::nullopt;
}

} // namespace roundlay::sheets
