#include "kernel/layout/advice/beam_advice.h"

#include "kernel/layout/floors/room.h"
#include "kernel/layout/text.h"

#include <algorithm>

namespace roundlay {

namespace {

/// How far from where it is stated a beam is tried, mm: each trial lays the whole shell out, so the steps
/// grow.
constexpr double finest_step = 50, least_step_part = 0.1;
/// Tried past the nearest place that holds, for one that brings less to be warned of.
constexpr int further = 2;

class BeamAdvisor {
  public:
    BeamAdvisor(const Shell &shell, const Layout &layout, std::size_t floor, const LayOut &try_out)
        : shell_(shell), before_(errors_in(layout.findings)), floor_(floor), try_out_(try_out) {
        const auto from = wall_named(layout, stated().from), to = wall_named(layout, stated().to);
        if (!from || !to) return;
        if (const auto room = room_between(layout, *from, *to)) depth_ = room->depth;
    }

    /// The refused beam is the first that mends the shell by another place of it.
    Said advice() const {
        for (std::size_t beam = 0; beam < stated().beams.size(); ++beam) {
            const auto left = nearest(beam, -1), right = nearest(beam, 1);
            if (left && right)
                return said("at %1 or at %2 from wall %3 it fits", just(*left), just(*right), stated().from);
            if (left || right)
                return said("at %1 from wall %2 it fits", just(left ? *left : *right), stated().from);
        }
        return said("no other place was found for it: both its ends must lie in walls or partitions that "
                    "stand square to it and reach as far as the beam");
    }

  private:
    const Floor &stated() const { return shell_.floors[floor_]; }

    /// Warnings that it brings where it holds.
    std::optional<std::ptrdiff_t> warned_at(std::size_t beam, Length from_wall) const {
        Shell next = shell_;
        next.floors[floor_].beams[beam].from_wall = from_wall;
        const Findings after = try_out_(next).findings;
        const std::string own = subject("floor", floor_, "");
        const bool refused = std::ranges::any_of(after, [&own](const Finding &f) {
            return f.weight == Weight::error && f.subject.starts_with(own);
        });
        if (refused || errors_in(after) >= before_) return {};
        return warnings_in(after);
    }

    std::optional<Length> nearest(std::size_t beam, int side) const {
        const double start = stated().beams[beam].from_wall.mm();
        std::optional<Length> best;
        std::ptrdiff_t fewest = 0;
        int past = 0;
        for (double by = finest_step; past <= further; by += std::max(finest_step, by * least_step_part)) {
            const Length at = round_lengths(shell_, start + side * by).front();
            if (at <= Length() || at.mm() >= depth_) break;
            const auto warned = warned_at(beam, at);
            if (warned && (!best || *warned < fewest)) best = at, fewest = *warned;
            if (best) ++past;
        }
        return best;
    }

    const Shell &shell_;
    std::ptrdiff_t before_;
    std::size_t floor_;
    const LayOut &try_out_;
    double depth_ = 0; ///< of the room
};

} // namespace

void advise_on_beams(const Shell &shell, Layout &layout, const LayOut &try_out) {
    for (std::size_t floor = 0; floor < shell.floors.size(); ++floor) {
        std::optional<Said> advice; // the same for all that is found of it: tried once
        for (Finding &f : layout.findings) {
            if (f.weight != Weight::error || f.advice || f.subject != subject("floor", floor, "beam"))
                continue;
            if (!advice) advice = BeamAdvisor(shell, layout, floor, try_out).advice();
            f.advice = advice;
        }
    }
}

} // namespace roundlay
