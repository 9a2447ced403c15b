#include "kernel/design/floor_edits.h"

#include "kernel/design/round_figures.h"
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/partition_edit.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

Length size(const Shell &shell, double mm, double inches) {
    return round_figure(shell.units, mm, inches);
}

struct Pair {
    std::string from, to;
    double apart = 0;
};

/// Walls that show each other their insides, the nearest first.
std::vector<Pair> facing_walls(const Layout &layout) {
    constexpr double parallel = 1 - 1e-9;
    std::vector<Pair> pairs;
    for (const WallPlace &a : layout.walls)
        for (const WallPlace &b : layout.walls) {
            const double apart = dot(b.frame.origin - a.frame.origin, a.frame.y);
            if (dot(a.frame.y, b.frame.y) < -parallel && apart > 0) pairs.push_back({a.name, b.name, apart});
        }
    std::stable_sort(pairs.begin(), pairs.end(),
                     [](const Pair &a, const Pair &b) { return a.apart < b.apart; });
    return pairs;
}

std::string floor_subject(std::size_t floor) {
    return "floor[" + std::to_string(floor) + "]";
}

/// Why a floor is not there that is stated.
std::optional<Finding> first_error(const Layout &layout) {
    for (const Finding &f : layout.findings)
        if (f.weight == Weight::error) return f;
    return {};
}

Floor usual_floor(const Shell &shell) {
    Floor floor;
    floor.name = free_part_name(shell, 'F');
    floor.joist = {size(shell, 100, 4), size(shell, 200, 8)};
    floor.spacing = size(shell, 600, 24);
    floor.bearing = size(shell, 75, 3);
    return floor;
}

/// What a floor covers.
struct Ground {
    Vec2 low{1e9, 1e9}, high{-1e9, -1e9};
    bool meets(const Ground &other) const {
        return low.x < other.high.x && other.low.x < high.x && low.y < other.high.y && other.low.y < high.y;
    }
};

Ground ground_of(const Layout &layout, Index<FloorPlace> floor) {
    Ground ground;
    for (const Timber &timber : layout.timbers) {
        if (timber.floor != floor) continue;
        const Piece &piece = layout.pieces[timber.piece];
        for (const double x : {0.0, piece.blank.length})
            for (const double y : {0.0, piece.blank.width}) {
                const Vec3 at = piece.frame.to_world({x, y, 0});
                ground.low = {std::min(ground.low.x, at.x), std::min(ground.low.y, at.y)};
                ground.high = {std::max(ground.high.x, at.x), std::max(ground.high.y, at.y)};
            }
    }
    return ground;
}

/// Of the last floor: none that lies over or under it is near.
bool keeps_clear(const Shell &shell, const Layout &layout) {
    const Index<FloorPlace> own(shell.floors.size() - 1);
    const Ground ground = ground_of(layout, own);
    for (const auto other : Indices<FloorPlace>(own.at())) {
        const double apart = std::abs((shell.floors.back().level - shell.floors[other.at()].level).mm());
        if (apart < least_between_floors(shell.units) && ground.meets(ground_of(layout, other))) return false;
    }
    return true;
}

} // namespace

double least_between_floors(UnitSystem units) {
    return round_figure(units, 2000, 80).mm();
}

namespace {

/// The upper half of the walls first, since most floors lie there.
std::optional<Shell> with_floor_between(const Shell &shell) {
    const Layout layout = lay_out_to_try(shell);
    const double step = size(shell, 50, 2).mm();
    Shell next = shell;
    next.floors.push_back(usual_floor(shell));
    Floor &floor = next.floors.back();
    const double half = layout.height / 2;
    const int highest = static_cast<int>((layout.height - layout.pitch) / step);
    for (const bool upper : {true, false})
        for (const Pair &pair : facing_walls(layout)) {
            floor.from = pair.from;
            floor.to = pair.to;
            for (int steps = highest; steps * step > (upper ? half : 0); --steps) {
                const double level = steps * step;
                if (!upper && level > half) continue;
                floor.level = Length::mm(level);
                const Layout laid = lay_out_to_try(next);
                if (errors_in(laid.findings) <= errors_in(layout.findings) && keeps_clear(next, laid))
                    return next;
            }
        }
    return {};
}

Finding no_height_left(const Shell &shell) {
    return {Weight::error,
            "floor-no-height",
            {},
            said("no height is left for another floor: floors over one another keep %1 between their tops",
                 in_mm(least_between_floors(shell.units))),
            {},
            "floor"};
}

Finding against_any_floor(const Shell &shell) {
    Shell next = shell;
    next.floors = {usual_floor(shell)};
    const std::vector<Pair> pairs = facing_walls(lay_out_to_try(shell));
    if (!pairs.empty()) next.floors[0].from = pairs[0].from, next.floors[0].to = pairs[0].to;
    next.floors[0].level = Length::mm(lay_out_to_try(shell).height / 2);
    Shell bare = shell;
    bare.floors.clear();
    if (with_floor_between(bare)) return no_height_left(shell); // alone it would fit
    return first_error(lay_out(next)).value_or(no_height_left(shell));
}

} // namespace

Fitted with_fitting_floor(const Shell &shell) {
    if (auto next = with_floor_between(shell)) return next;
    return std::optional(against_any_floor(shell));
}

Fitted with_fitting_beam(const Shell &shell, std::size_t floor) {
    if (floor >= shell.floors.size()) return {};
    const Layout layout = lay_out_to_try(shell);
    if (floor >= layout.floors.size()) return first_error(layout);
    const double step = size(shell, 50, 2).mm(), depth = layout.floors[Index<FloorPlace>(floor)].depth,
                 middle = std::round(depth / 2 / step) * step;
    FittingTrial trial(shell);
    std::optional<Finding> in_the_middle;
    for (int i = 0; (i - i % 2) * step < depth; ++i) { // nearest to the middle first: stairs may lie there
        const int steps = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
        const double at = middle + steps * step;
        const auto next = with_floor(shell, floor, [&](Floor &f) {
            f.beams.push_back({Length::mm(at), {size(shell, 200, 8), size(shell, 200, 8)}});
        });
        if (next && trial.holds(*next, floor_subject(floor))) return next;
        if (i == 0) in_the_middle = trial.why();
    }
    return in_the_middle;
}

namespace {

/// Of a floor opening: along the wall, and away from it.
struct HoleSize {
    Length width, length;
};

/// A stair, then a steep one, then a hatch that a person still gets through.
std::vector<HoleSize> ever_smaller(const Shell &shell) {
    const auto of = [&](double mm, double inches) { return size(shell, mm, inches); };
    return {{of(900, 36), of(2100, 84)}, {of(900, 36), of(1500, 60)}, {of(900, 36), of(900, 36)},
            {of(750, 30), of(900, 36)},  {of(600, 24), of(900, 36)},  {of(600, 24), of(600, 24)}};
}

/// From the wall it is far enough for a trimmer, else close to it, else without one.
std::vector<FloorOpening> holes_in(const Shell &shell, const FloorPlace &floor, const std::string &called) {
    constexpr int most_places = 30, coarse = 3; // along the wall, for each size
    const double step = size(shell, 100, 4).mm();
    std::vector<FloorOpening> all;
    for (const HoleSize &hole : ever_smaller(shell))
        for (const Length from_wall : {size(shell, 300, 12), size(shell, 150, 6), Length()}) {
            if ((from_wall + hole.length).mm() > floor.depth) continue;
            const int by = all.empty() || from_wall == size(shell, 300, 12) ? 1 : coarse;
            for (int i = 1; i <= most_places && i * step + hole.width.mm() < floor.width; i += by)
                all.push_back({called, Length::mm(i * step), from_wall, hole.width, hole.length});
        }
    return all;
}

} // namespace

Fitted with_fitting_floor_opening(const Shell &shell, std::size_t floor, const std::string &called) {
    constexpr int most_trials = 300;
    const Layout layout = lay_out_to_try(shell);
    if (floor >= layout.floors.size()) return first_error(layout);
    FittingTrial trial(shell);
    for (const FloorOpening &hole : holes_in(shell, layout.floors[Index<FloorPlace>(floor)], called)) {
        const auto next = with_floor(shell, floor, [&](Floor &f) { f.openings.push_back(hole); });
        if (next && trial.holds(*next, floor_subject(floor))) return next;
        if (trial.trials() >= most_trials) break;
    }
    return trial.why();
}

std::optional<Shell> with_floor(const Shell &shell, std::size_t floor,
                                const std::function<void(Floor &)> &change) {
    if (floor >= shell.floors.size()) return {};
    Shell next = shell;
    change(next.floors[floor]);
    return next;
}

std::optional<Shell> without_floor(const Shell &shell, std::size_t floor) {
    if (floor >= shell.floors.size()) return {};
    Shell next = shell;
    next.floors.erase(next.floors.begin() + static_cast<std::ptrdiff_t>(floor));
    return next;
}

} // namespace roundlay
