#include "kernel/layout/fastenings/bore_marks.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/piece_places.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

constexpr double same_place = 1e-3; // mm
constexpr double touching = 1;      // mm: what stands no higher over the foundation lies on it

/// A bore that was stated for that place in this round, in the wall's frame.
bool is_that(const Bore &bore, const StatedBore &stated, Vec3 at, double x) {
    return bore.use == stated.use && std::abs(at.x - x) < same_place &&
           std::abs(bore.diameter - stated.diameter.mm()) < same_place &&
           (!stated.from_outside || std::abs(at.y - stated.from_outside->mm()) < same_place);
}

/// The foundation's top under that place of the wall.
double foundation_at(const Layout &layout, Index<WallPlace> wall, double x) {
    double top = 0;
    for (const StepPlace &step : layout.steps)
        if (step.wall == wall && x > step.from && x < step.to) top = std::max(top, step.rise);
    return top;
}

std::vector<BoredLog> logs_of(const Layout &layout, const StatedBore &stated, Index<WallPlace> wall) {
    std::vector<BoredLog> logs;
    const Frame &frame = layout.walls[wall].frame;
    for (const auto i : layout.pieces.indices()) {
        const Piece &piece = layout.pieces[i];
        if (!is_log_of(piece, wall) || piece.round < stated.from_round) continue;
        if (stated.to_round && piece.round > *stated.to_round) continue;
        const double x = stated.from_left.mm() + stated.drift.mm() * (piece.round - stated.from_round);
        for (const Cut &cut : piece.cuts) {
            const Bore *bore = bore_of(cut);
            if (bore == nullptr || !bore->use) continue;
            const Vec3 foot = piece.frame.to_world({bore->x, bore->y, bore->z_from});
            if (!is_that(*bore, stated, frame.to_local(foot), x)) continue;
            const bool bedded = foot.z < foundation_at(layout, wall, x) + touching;
            logs.push_back({i, foot, bore->z_to - bore->z_from, bedded});
        }
    }
    std::stable_sort(logs.begin(), logs.end(),
                     [](const BoredLog &a, const BoredLog &b) { return a.foot.z < b.foot.z; });
    return logs;
}

} // namespace

const char *letter_of(const std::optional<BoreUse> &use) {
    if (!use) return "P";
    switch (*use) {
    case BoreUse::bolt:
        return "B";
    case BoreUse::rod:
        return "R";
    case BoreUse::wire:
        return "W";
    case BoreUse::hole:
        break;
    }
    return "H";
}

const char *name_of(const std::optional<BoreUse> &use) {
    if (!use) return "peg";
    switch (*use) {
    case BoreUse::bolt:
        return "bolt";
    case BoreUse::rod:
        return "rod";
    case BoreUse::wire:
        return "wiring";
    case BoreUse::hole:
        break;
    }
    return "hole";
}

std::vector<PlacedBore> placed_bores(const Shell &shell, const Layout &layout) {
    std::vector<PlacedBore> all;
    std::array<int, 4> counts{};
    for (std::size_t i = 0; i < shell.bores.size(); ++i) {
        const StatedBore &stated = shell.bores[i];
        const int number = ++counts[static_cast<std::size_t>(stated.use)];
        const auto wall = wall_named(layout, stated.wall);
        if (!wall) continue;
        all.push_back({name_of(std::optional(stated.use)) + (" " + std::to_string(number)), i, *wall,
                       logs_of(layout, stated, *wall)});
    }
    return all;
}

bool is_bedded(const Layout &layout, const Piece &piece) {
    if (piece.timber) return false;
    if (piece.mends) { // as the log that it comes into, where it comes out under that
        const Piece &log = layout.pieces[*piece.mends];
        return piece.frame.origin.z < log.frame.origin.z + touching && is_bedded(layout, log);
    }
    if (piece.round == 1 || piece.below.empty()) return true;
    const AlongWall along = along_wall(layout.walls, piece);
    return std::any_of(layout.steps.begin(), layout.steps.end(), [&](const StepPlace &step) {
        return step.wall == piece.wall && step.from < along.to && step.to > along.from &&
               step.rise > piece.frame.origin.z - touching;
    });
}

} // namespace roundlay
