#include "exporters/sheets/plan/plan_frame.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"

namespace roundlay::sheets {
namespace {

constexpr double off_wall = 9; ///< of the dimension line from the outside face
constexpr double start_gap = 0.8, overshoot = 1;

Vec2 flat(Vec3 p) {
    return {p.x, p.y};
}

/// Where two lines meet; each through a point along a direction. The walls of a corner are never parallel.
Vec2 meeting(Vec2 a, Vec2 along_a, Vec2 b, Vec2 along_b) {
    return a + (cross(b - a, along_b) / cross(along_a, along_b)) * along_a;
}

void add_line(Board &board, Vec2 from, Vec2 to) {
    board.add(Path{{from, to}, false, Line::dimension, ""});
}

} // namespace

std::vector<Vec2> outside_corners(const Layout &layout) {
    std::vector<Vec2> corners;
    for (const WallPlace &wall : layout.walls)
        corners.push_back(flat(wall.frame.origin));
    return corners;
}

std::vector<Vec2> inside_corners(const Layout &layout) {
    std::vector<Vec2> corners;
    const std::size_t n = layout.walls.size();
    for (std::size_t i = 0; i < n; ++i) {
        const WallPlace &wall = layout.walls[i], &before = layout.walls[(i + n - 1) % n];
        const Vec2 a = flat(wall.frame.to_world({0, wall.thickness, 0}));
        const Vec2 b = flat(before.frame.to_world({0, before.thickness, 0}));
        corners.push_back(meeting(a, flat(wall.frame.x), b, flat(before.frame.x)));
    }
    return corners;
}

bool add_wall_length(Board &board, Vec2 from, Vec2 to, const std::string &number, double lettering) {
    const double run = length(to - from);
    const Vec2 along = (1 / run) * (to - from), out{along.y, -along.x}; // outside is right of the walk
    const bool upright = std::abs(along.x) < std::abs(along.y);
    for (const double away : {off_wall, off_wall + 6, off_wall + 12, off_wall + 18}) {
        const Vec2 a = from + away * out, b = to + away * out;
        for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8}) {
            Text text;
            text.words = number;
            text.height = lettering;
            text.across = Across::middle;
            text.turn = upright ? 90 : 0;
            text.role = Role::dimension;
            const Vec2 over = upright ? Vec2{-0.8, 0} : Vec2{0, 0.8};
            text.at = a + (part * run) * along + over;
            if (!board.is_free(box_of(text).grown(0.3), true)) continue;
            for (const Vec2 end : {from, to})
                add_line(board, end + start_gap * out, end + (away + overshoot) * out);
            add_line(board, a, b);
            board.add(arrowhead(b, along));
            board.add(arrowhead(a, -1 * along));
            board.add(text);
            return true;
        }
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
