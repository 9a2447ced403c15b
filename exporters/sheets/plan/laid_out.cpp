#include "exporters/sheets/plan/laid_out.h"

#include "exporters/sheets/drawing/number.h"
#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/words/decimal_mark.h"
#include "kernel/review/opening_facts.h"

#include <cmath>
#include <numbers>

namespace roundlay::sheets {
namespace {

/// "AB" where A ends and B starts.
std::string corner_name(const Layout &layout, std::size_t at) {
    const std::size_t n = outer_walls(layout);
    const auto &starts = layout.walls.at(Index<WallPlace>(at));
    return layout.corners.at(starts.start_corner).name.empty()
               ? layout.walls.at(Index<WallPlace>((at + n - 1) % n)).name + starts.name
               : layout.corners.at(starts.start_corner).name;
}

} // namespace

std::vector<DoorGap> door_gaps(const Shell &shell, const Layout &layout) {
    std::vector<DoorGap> gaps;
    const auto facts = opening_facts(shell, layout);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const Opening &o = shell.openings[i];
        const auto wall = wall_named(layout, o.wall);
        if (o.kind != OpeningKind::door || facts[i].sill || !wall) continue;
        gaps.push_back({facts[i].name, *wall, o.from_left.mm(), (o.from_left + o.width).mm()});
    }
    return gaps;
}

std::vector<CornerAngle> odd_angles(const Layout &layout) {
    constexpr double full = 360, square = 90, hair = 0.05;
    std::vector<CornerAngle> odd;
    const auto corners = outside_corners(layout);
    const std::size_t n = corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Vec2 back = corners[(i + n - 1) % n] - corners[i], on = corners[(i + 1) % n] - corners[i];
        double angle = std::atan2(cross(on, back), dot(on, back)) * full / 2 / std::numbers::pi;
        if (angle < 0) angle += full;
        if (std::abs(angle - square) > hair && std::abs(angle - (full - square)) > hair)
            odd.push_back({corner_name(layout, i), i, angle});
    }
    return odd;
}

std::string said_angle(double degrees, const Words &words) {
    return with_decimal_mark(number_text(degrees, 1), words.language()) + "\u00b0";
}

std::vector<Diagonal> diagonals(const Layout &layout) {
    constexpr std::size_t few = 6;
    const auto corners = outside_corners(layout);
    const std::size_t n = corners.size();
    std::vector<Diagonal> all;
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 2; j < n; ++j) {
            if (i == 0 && j + 1 == n) continue; // neighbours too
            if (n > few && i != 0 && i != n / 2 && j != n / 2) continue;
            all.push_back({corner_name(layout, i), corner_name(layout, j), length(corners[j] - corners[i])});
        }
    return all;
}

} // namespace roundlay::sheets
