#include "exporters/sheets/plan/plan_frame.h"

#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::sheets {
namespace {

constexpr double start_gap = 0.8, overshoot = 1;

Vec2 flat(Vec3 p) {
    return {p.x, p.y};
}

/// Where two lines meet; each through a point along a direction. The walls of a corner are never parallel.
Vec2 meeting(Vec2 a, Vec2 along_a, Vec2 b, Vec2 along_b) {
    return a + (cross(b - a, along_b) / cross(along_a, along_b)) * along_a;
}

} // namespace

std::vector<Vec2> outside_corners(const Layout &layout) {
    std::vector<Vec2> corners;
    for (const auto i : Indices<WallPlace>(outer_walls(layout)))
        corners.push_back(flat(layout.walls[i].frame.origin));
    return corners;
}

std::vector<Vec2> inside_corners(const Layout &layout) {
    std::vector<Vec2> corners;
    const std::size_t n = outer_walls(layout);
    for (const auto i : Indices<WallPlace>(n)) {
        const WallPlace &wall = layout.walls[i],
                        &before = layout.walls[Index<WallPlace>((i.at() + n - 1) % n)];
        const Vec2 a = flat(wall.frame.to_world({0, wall.thickness, 0}));
        const Vec2 b = flat(before.frame.to_world({0, before.thickness, 0}));
        corners.push_back(meeting(a, flat(wall.frame.x), b, flat(before.frame.x)));
    }
    return corners;
}

double reading_turn(Vec2 along) {
    constexpr double hair = 0.01; // degrees: what stands upright reads from the right
    double turn = std::atan2(along.y, along.x) * 180 / std::numbers::pi;
    while (turn > 90 + hair)
        turn -= 180;
    while (turn <= -90 + hair)
        turn += 180;
    return std::abs(turn) < hair ? 0 : std::abs(turn - 90) < hair ? 90 : turn;
}

namespace {

/// The lines and arrowheads of one dimension, off the wall by `away`.
std::vector<Item> dimension_lines(Vec2 from, Vec2 to, Vec2 out, double away) {
    const Vec2 a = from + away * out, b = to + away * out, along = (1 / length(b - a)) * (b - a);
    const auto line = [](Vec2 p, Vec2 q) { return Path{{p, q}, false, Line::dimension, ""}; };
    return {line(from + start_gap * out, from + (away + overshoot) * out),
            line(to + start_gap * out, to + (away + overshoot) * out), line(a, b), arrowhead(b, along),
            arrowhead(a, -1 * along)};
}

/// Along the line where it lies or stands; level beside it where it slants, so that it keeps clear of it.
Text number_beside(const std::string &number, double lettering, Vec2 on_line, Vec2 along, Vec2 out) {
    const double turn = reading_turn(along);
    constexpr double air = 0.8;
    Text text;
    text.words = number;
    text.height = lettering;
    text.across = Across::middle;
    text.role = Role::dimension;
    if (turn == 0 || turn == 90) {
        text.turn = turn;
        text.at = on_line + (turn == 0 ? Vec2{0, air} : Vec2{-air, 0});
        return text;
    }
    text.upright = Upright::middle;
    const double reach = (std::abs(out.x) * text_width(number, lettering) + std::abs(out.y) * lettering) / 2;
    text.at = on_line + (reach + air) * out;
    return text;
}

/// Whether its arrowheads stay off what is there; its lines yield to words.
bool arrowheads_free(const Board &board, const std::vector<Item> &lines) {
    return std::all_of(lines.begin(), lines.end(), [&](const Item &item) {
        return !std::holds_alternative<Fill>(item) || board.is_free(bounds(item), false);
    });
}

bool clear_of(const Rect &box, const std::vector<Item> &items) {
    return std::none_of(items.begin(), items.end(), [&](const Item &item) {
        const auto strokes = strokes_of(item);
        return (strokes.empty() && box.overlaps(bounds(item))) ||
               std::any_of(strokes.begin(), strokes.end(),
                           [&](const auto &s) { return crosses(box, s.first, s.second); });
    });
}

} // namespace

bool add_wall_length(Board &board, Vec2 from, Vec2 to, const std::string &number, double lettering,
                     double nearest) {
    const double run = length(to - from);
    const Vec2 along = (1 / run) * (to - from), out{along.y, -along.x}; // outside is right of the walk
    for (const double away : {nearest, nearest + 6, nearest + 12, nearest + 18})
        for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8}) {
            const std::vector<Item> lines = dimension_lines(from, to, out, away);
            const Text text =
                number_beside(number, lettering, from + away * out + (part * run) * along, along, out);
            const Rect box = box_of(text).grown(0.3);
            if (!board.is_free(box, true) || !clear_of(box, lines) || !arrowheads_free(board, lines))
                continue;
            for (const Item &line : lines)
                board.add(line);
            board.add(text);
            return true;
        }
    return false;
}

std::vector<Item> north_arrow(Vec2 foot) {
    Text text;
    text.words = "N";
    text.at = foot + Vec2{0, 14.5};
    text.height = 3.5;
    text.bold = true;
    text.across = Across::middle;
    text.role = Role::caption;
    return {Path{{foot, foot + Vec2{0, 13}}, false, Line::strong, ""},
            Fill{{{foot + Vec2{0, 13}, foot + Vec2{-1.6, 7}, foot + Vec2{0, 8.2}, foot + Vec2{1.6, 7}}}, 0},
            text};
}

} // namespace roundlay::sheets
