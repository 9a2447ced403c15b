#include "kernel/layout/plan/wall_side.h"
#include "kernel/measured/least_squares.h"
#include "kernel/measured/rebuild.h"
#include "kernel/shell/close_plan.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

/// A length between two corners of the house, counted as its walls are: corner i is the left end of wall i.
struct Taped {
    std::size_t from = 0, to = 0;
    bool inside = false;
    double mm = 0;
    About of;
    std::string written;
};

class WalkRound {
  public:
    explicit WalkRound(Rebuild &at) : at_(at), count_(outer_walls(at.plan)) {
        for (std::size_t i = 0; i < count_; ++i) {
            const WallPlace &wall = place(i);
            stated_.push_back(wall.frame.origin.x), stated_.push_back(wall.frame.origin.y);
        }
        take_walls();
        take_diagonals();
    }

    void set() {
        if (taped_.empty()) return;
        // Corners stay as they are stated where what was measured allows it: a tape is not that exact.
        auto corners = fitted(held);
        if (worst(corners) > told_from) corners = fitted(loose);
        state(corners);
        close();
        for (const Taped &each : taped_)
            tell(each, length(corners, each));
        at_.made.taken += taped_.size();
    }

  private:
    using Corners = std::vector<double>;              ///< x and y of each
    static constexpr double held = 1e4, loose = 1e-3; ///< how much angles as stated count beside a tape

    const WallPlace &place(std::size_t i) const { return at_.plan.walls[Index<WallPlace>(i)]; }

    void take_walls() {
        for (const RecordedWall &wall : at_.record.walls) {
            const auto index = wall_named(at_.plan, wall.wall);
            const auto mm = taken(wall.length);
            if (!index || !mm || index->at() >= count_) continue;
            taped_.push_back({index->at(), (index->at() + 1) % count_, wall.read_from == ReadFrom::inside,
                              *mm, wall_place(wall.wall), wall.length.written});
        }
    }

    std::optional<std::size_t> corner_called(const std::string &name) const {
        for (std::size_t i = 0; i < count_; ++i)
            if (end_at(at_.record, at_.plan, Index<WallPlace>(i), name) == LogEnd::left) return i;
        return {};
    }

    void take_diagonals() {
        for (const Diagonal &diagonal : at_.record.diagonals) {
            const auto from = corner_called(diagonal.from), to = corner_called(diagonal.to);
            const auto mm = taken(diagonal.length);
            if (from && to && from != to && mm)
                taped_.push_back({*from,
                                  *to,
                                  diagonal.side == ReadFrom::inside,
                                  *mm,
                                  {about::Corner{diagonal.from}, about::Corner{diagonal.to}},
                                  diagonal.length.written});
        }
    }

    static Vec2 corner(const Corners &all, std::size_t i) { return {all[2 * i], all[2 * i + 1]}; }
    Vec2 way(const Corners &all, std::size_t wall) const {
        const Vec2 d = corner(all, (wall + 1) % count_) - corner(all, wall);
        return (1 / roundlay::length(d)) * d;
    }
    /// Where the inside faces of the wall that starts there and the one before it meet.
    Vec2 inside(const Corners &all, std::size_t i) const {
        const std::size_t before = (i + count_ - 1) % count_;
        const Vec2 a = way(all, before), b = way(all, i);
        const double ta = place(before).thickness, tb = place(i).thickness;
        const Vec2 na{-a.y, a.x}, nb{-b.y, b.x}; // walked counter-clockwise: inward is to the left
        const double along = (tb - ta * dot(na, nb)) / dot(a, nb);
        return corner(all, i) + ta * na + along * a;
    }
    double length(const Corners &all, const Taped &each) const {
        return each.inside ? roundlay::length(inside(all, each.to) - inside(all, each.from))
                           : roundlay::length(corner(all, each.to) - corner(all, each.from));
    }

    /// Held: where the first corner and wall lie, and every angle by so much.
    std::vector<double> off(const Corners &all, double angles) const {
        std::vector<double> all_off;
        for (const Taped &each : taped_)
            all_off.push_back(length(all, each) - each.mm);
        for (std::size_t i = 0; i < count_; ++i) {
            const Vec2 now = way(all, i), stated = way(stated_, i);
            const double side = roundlay::length(corner(stated_, (i + 1) % count_) - corner(stated_, i));
            all_off.push_back((i == 0 ? held : angles) * side * cross(stated, now));
            const double slack = 1e-4; // a wall that no tape holds stays as long as stated
            all_off.push_back(slack *
                              (roundlay::length(corner(all, (i + 1) % count_) - corner(all, i)) - side));
        }
        all_off.push_back(held * (all[0] - stated_[0]));
        all_off.push_back(held * (all[1] - stated_[1]));
        return all_off;
    }

    Corners fitted(double angles) const {
        return least_squares(
            stated_, [&](const Corners &all) { return off(all, angles); }, 0.01);
    }

    double worst(const Corners &corners) const {
        double most = 0;
        for (const Taped &each : taped_)
            most = std::max(most, std::abs(length(corners, each) - each.mm));
        return most;
    }

    void state(const Corners &corners) {
        for (std::size_t i = 0; i < count_; ++i) {
            Wall &wall = at_.made.shell.walls[i];
            const Vec2 now = way(corners, i), stated = way(stated_, i);
            const double turn = std::asin(cross(stated, now)) * 180 / std::numbers::pi;
            if (std::abs(turn) > 1e-6) wall.heading += turn;
            wall.closes = false;
            wall.length =
                Length::mm(roundlay::length(corner(corners, (i + 1) % count_) - corner(corners, i)));
        }
    }

    /// To the last bit: the last wall and the one before it that runs another way make up for rounding.
    void close() {
        auto &walls = at_.made.shell.walls;
        const auto turned = [&](const Wall &wall) {
            return std::abs(std::sin((wall.heading - walls.back().heading) * std::numbers::pi / 180)) > 0.5;
        };
        const auto other = std::find_if(walls.rbegin(), walls.rend(), turned);
        walls.back().closes = true;
        if (other != walls.rend()) other->closes = true;
        (void)close_plan(walls);
        for (Wall &wall : walls)
            wall.closes = false;
    }

    void tell(const Taped &each, double fits) {
        if (std::abs(fits - each.mm) <= told_from) return;
        at_.tell("tapes-differ", each.of,
                 said("it was measured %1, the plan that fits all that was measured best has %2 there",
                      each.written, in_mm(fits)),
                 said("measure it again, and the diagonals"));
    }

    Rebuild &at_;
    std::size_t count_;
    Corners stated_;
    std::vector<Taped> taped_;
};

} // namespace

void set_walls(Rebuild &at) {
    WalkRound(at).set();
}

} // namespace roundlay
