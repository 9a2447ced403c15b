#include "kernel/shell/close_plan.h"

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double least_sine = 1e-6; ///< walls that meet at less have no corner to close the plan in

/// What a wall may be stated to be, less what rounding leaves where there is no room for it at all.
constexpr double shortest = 1e-6, longest = 100'000;

struct Way {
    double east = 0, north = 0;
};

/// Quarters come out exact.
Way heading_way(double degrees) {
    const double quarters = degrees / 90;
    if (quarters == std::floor(quarters)) {
        constexpr Way four[] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
        return four[((static_cast<int>(quarters) % 4) + 4) % 4];
    }
    const double angle = degrees * std::numbers::pi / 180;
    return {std::cos(angle), std::sin(angle)};
}

double cross(const Way &a, const Way &b) {
    return a.east * b.north - a.north * b.east;
}
double dot(const Way &a, const Way &b) {
    return a.east * b.east + a.north * b.north;
}

/// From the end of the walk, with all stated lengths walked, back to where it began.
Way way_back(const std::vector<Wall> &walls) {
    Way back;
    for (const Wall &wall : walls) {
        if (wall.closes) continue;
        const Way way = heading_way(wall.heading);
        back.east -= wall.length.mm() * way.east, back.north -= wall.length.mm() * way.north;
    }
    return back;
}

std::optional<OpenPlan> check_length(const std::vector<Wall> &walls, std::size_t i) {
    if (walls[i].length.mm() > shortest && walls[i].length.mm() <= longest) return {};
    return OpenPlan{i,
                    "to close the plan wall \"" + walls[i].name + "\" would have to be " +
                        print_length(walls[i].length, {}) + " long",
                    "its length, or walls before and after it that leave room for it"};
}

} // namespace

std::optional<OpenPlan> close_plan(std::vector<Wall> &walls) {
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < walls.size(); ++i)
        if (walls[i].closes) open.push_back(i);
    if (open.empty()) return {};
    if (open.size() > 2)
        return OpenPlan{
            open[2], "the lengths of " + std::to_string(open.size()) + " walls are left out",
            "at most two, which close the plan; length = \"16 ft\", measured along the outside face"};
    const Way back = way_back(walls), first = heading_way(walls[open[0]].heading);
    if (open.size() == 1) {
        walls[open[0]].length = Length::mm(dot(back, first));
        return check_length(walls, open[0]);
    }
    const Way second = heading_way(walls[open[1]].heading);
    const double sine = cross(first, second);
    if (std::abs(sine) < least_sine)
        return OpenPlan{open[1],
                        "walls \"" + walls[open[0]].name + "\" and \"" + walls[open[1]].name +
                            "\" run in one direction, so that the plan does not say how long each of them is",
                        "the length of one of them"};
    walls[open[0]].length = Length::mm(cross(back, second) / sine);
    walls[open[1]].length = Length::mm(cross(first, back) / sine);
    if (auto fault = check_length(walls, open[0])) return fault;
    return check_length(walls, open[1]);
}

} // namespace roundlay
