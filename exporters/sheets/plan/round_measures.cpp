#include "exporters/sheets/plan/round_measures.h"

#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/sheets/plan/wall_marks.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5;
constexpr double beyond_numbers = 2, beyond_tags = 11; ///< of lengths on paper

/// Whether no log of this round lies across its middle.
bool stops_logs(const MeasuredRound &r, Index<WallPlace> wall, const Opening &o) {
    const double middle = (o.from_left + o.width / 2).mm();
    return std::ranges::none_of(r.layout.pieces, [&](const Piece &piece) {
        if (piece.timber || piece.wall != wall || piece.round != r.round) return false;
        const double left = r.layout.walls[wall].frame.to_local(piece.frame.origin).x;
        return left < middle && middle < left + piece.blank.length;
    });
}

std::vector<Mark> jambs(const MeasuredRound &r, Index<WallPlace> wall) {
    std::vector<Mark> marks;
    for (const Opening &o : r.shell.openings) {
        if (o.wall != r.layout.walls[wall].name || !stops_logs(r, wall, o)) continue;
        for (const double x : {o.from_left.mm(), (o.from_left + o.width).mm()})
            marks.push_back({x * r.scale, r.words.length(x), false});
    }
    std::ranges::sort(marks, {}, &Mark::at);
    return marks;
}

bool reaches_round(const MeasuredRound &r, Index<WallPlace> wall) {
    return std::ranges::any_of(r.layout.pieces, [&](const Piece &piece) {
        return !piece.timber && piece.wall == wall && piece.round == r.round;
    });
}

/// One wall on paper.
struct WallLine {
    Index<WallPlace> wall;
    Vec2 from, to;             ///< outside corners
    Vec2 inner_from, inner_to; ///< inside corners
};

std::vector<WallLine> lines_of(const MeasuredRound &r) {
    const auto outer = outside_corners(r.layout), inner = inside_corners(r.layout);
    std::vector<WallLine> lines;
    for (std::size_t i = 0; i < outer.size(); ++i) {
        const std::size_t next = (i + 1) % outer.size();
        lines.push_back({Index<WallPlace>(i), r.scale * outer[i], r.scale * outer[next], r.scale * inner[i],
                         r.scale * inner[next]});
    }
    return lines;
}

/// How far they reach from the wall; 0 where there are none.
double add_jambs(Board &board, const MeasuredRound &r, const WallLine &line, std::vector<std::string> &left) {
    const std::vector<Mark> marks = jambs(r, line.wall);
    if (marks.empty()) return 0;
    if (const auto reach = add_wall_marks(board, line.from, line.to, marks, lettering)) return *reach;
    std::string all;
    for (const Mark &mark : marks)
        all += (all.empty() ? "" : ", ") + mark.number;
    left.push_back(
        r.words.say("wall %1, jambs from its left outside corner: %2", r.layout.walls[line.wall].name, all));
    return 0;
}

void add_lengths(Board &board, const MeasuredRound &r, const WallLine &line, double reach,
                 std::vector<std::string> &left) {
    const WallPlace &wall = r.layout.walls[line.wall];
    const std::string over = r.words.length(wall.length),
                      between = r.words.length(length(line.inner_to - line.inner_from) / r.scale);
    if (!add_wall_length(board, line.from, line.to, over, lettering,
                         std::max(off_wall, reach + beyond_numbers)))
        left.push_back(r.words.say("wall %1, over its outside face: %2", wall.name, over));
    if (!add_wall_length(board, line.inner_to, line.inner_from, between, lettering, beyond_tags))
        left.push_back(r.words.say("wall %1, inside: %2", wall.name, between));
}

} // namespace

std::vector<std::string> add_measures(Board &board, const MeasuredRound &r) {
    const std::vector<WallLine> lines = lines_of(r);
    std::vector<std::string> left;
    std::vector<double> reach;
    for (const WallLine &line : lines)
        reach.push_back(reaches_round(r, line.wall) ? add_jambs(board, r, line, left) : 0);
    for (std::size_t i = 0; i < lines.size(); ++i)
        add_lengths(board, r, lines[i], reach[i], left);
    return left;
}

} // namespace roundlay::sheets
