#include "exporters/sheets/drawing/dimension.h"

#include "exporters/sheets/drawing/spread.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double straight = 0.01; ///< a number this little aside needs no bend in its line
constexpr double start_gap = 0.8; ///< from the drawn edge to its extension line
constexpr double overshoot = 1.0; ///< of the extension line beyond the dimension line
constexpr double bend = 2.5;      ///< in which an extension line may turn aside to its number
constexpr double before_number = 0.7;
constexpr double origin_radius = 1.2;
constexpr double dot_radius = 0.5;
constexpr double arrow_length = 2.5, arrow_half_width = 0.42; // about 19 degrees

/// Paper coordinates from "along the line" and "away from the edge".
struct Axes {
    RunningLine line;

    bool upright() const { return line.side == Toward::left || line.side == Toward::right; }
    double sign() const { return line.side == Toward::up || line.side == Toward::right ? 1 : -1; }
    Vec2 at(double along, double away) const {
        const double out = line.edge + sign() * away;
        return upright() ? Vec2{out, along} : Vec2{along, out};
    }
};

void add_path(Board &board, std::vector<Vec2> points) {
    board.add(Path{std::move(points), false, Line::dimension, ""});
}

void add_extension(Board &board, const Axes &axes, double along, double label_along) {
    const double d = axes.line.distance;
    std::vector<Vec2> points{axes.at(along, start_gap), axes.at(along, d + overshoot)};
    if (label_along != along) points.push_back(axes.at(label_along, d + overshoot + bend));
    add_path(board, std::move(points));
}

void add_number(Board &board, const Axes &axes, const Mark &mark, double label_along, double away) {
    Text text;
    text.words = mark.number;
    text.height = axes.line.lettering;
    text.role = Role::dimension;
    text.upright = Upright::middle;
    text.at = axes.at(label_along, away + before_number);
    text.turn = axes.upright() ? 0 : 90;
    const bool ends_at_line = axes.line.side == Toward::left || axes.line.side == Toward::down;
    text.across = ends_at_line ? Across::right : Across::left;
    board.add(text);
}

/// A dot where the mark before it leaves no room for an arrow (ISO 129-1, from memory).
void add_end(Board &board, const Axes &axes, const Mark &mark, double room) {
    const Vec2 p = axes.at(mark.at, axes.line.distance);
    if (mark.origin) {
        board.add(Circle{p, origin_radius, Line::dimension, ""});
        return;
    }
    const double way = axes.line.backward ? -1 : 1;
    if (room < arrow_length)
        board.add(dot(p, dot_radius));
    else
        board.add(arrowhead(p, axes.upright() ? Vec2{0, way} : Vec2{way, 0}));
}

/// From the mark before, in the direction of the measure, to this one.
double room_before(const std::vector<Mark> &marks, std::size_t i, const RunningLine &line) {
    constexpr double plenty = 1000;
    const bool first = line.backward ? i + 1 == marks.size() : i == 0;
    if (first) return line.start ? std::abs(marks[i].at - *line.start) : plenty;
    const Mark &before = marks[line.backward ? i + 1 : i - 1];
    return std::abs(marks[i].at - before.at) - (before.origin ? origin_radius : 0);
}

} // namespace

Fill arrowhead(Vec2 tip, Vec2 direction) {
    const Vec2 back = tip - arrow_length * direction,
               side = arrow_half_width * Vec2{-direction.y, direction.x};
    return {{{tip, back + side, back - side}}, 0};
}

Fill dot(Vec2 at, double radius) {
    constexpr double diagonal = 0.7071;
    Fill fill{{{}}, 0};
    for (const Vec2 d : {Vec2{1, 0}, Vec2{diagonal, diagonal}, Vec2{0, 1}, Vec2{-diagonal, diagonal},
                         Vec2{-1, 0}, Vec2{-diagonal, -diagonal}, Vec2{0, -1}, Vec2{diagonal, -diagonal}})
        fill.rings[0].push_back(at + radius * d);
    return fill;
}

double pitch_of(double lettering) {
    return lettering + 1.1;
}

double depth_of(const std::vector<std::string> &numbers, const RunningLine &line) {
    double longest = 0;
    for (const std::string &number : numbers)
        longest = std::max(longest, text_width(number, line.lettering));
    return line.distance + overshoot + bend + before_number + longest;
}

void add_running_dimensions(Board &board, const std::vector<Mark> &marks, const RunningLine &line) {
    if (marks.empty()) return;
    const Axes axes{line};
    std::vector<double> wanted;
    for (const Mark &mark : marks)
        wanted.push_back(mark.at);
    const std::vector<double> labels = spread(wanted, pitch_of(line.lettering));
    const double from = line.start.value_or(line.backward ? wanted.back() : wanted.front());
    const double to = line.backward ? wanted.front() : wanted.back();
    if (from != to) add_path(board, {axes.at(from, line.distance), axes.at(to, line.distance)});
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const bool aside = std::abs(labels[i] - wanted[i]) > straight;
        const double label = aside ? labels[i] : wanted[i];
        add_extension(board, axes, wanted[i], label);
        add_number(board, axes, marks[i], label, line.distance + overshoot + (aside ? bend : 0));
        add_end(board, axes, marks[i], room_before(marks, i, line));
    }
}

} // namespace roundlay::sheets
