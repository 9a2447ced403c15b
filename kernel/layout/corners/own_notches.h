// Logs whose notches have slopes of their own.
#pragma once

#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace roundlay {

inline bool has_own_slopes(const OwnLog &log) {
    const LogNotch &notch = log.notch;
    return notch.kind || notch.slope || notch.along || notch.across ||
           std::ranges::any_of(log.tails, [](const OwnTail &tail) { return tail.along.has_value(); });
}

/// One of the lengths of the tail of that log at that corner, where it is stated: of two statements the
/// later.
inline std::optional<double> own_tail_length(const Shell &shell, const WallPlace &wall,
                                             Index<CornerPlace> corner, int round,
                                             std::optional<Length> OwnTail::*length) {
    std::optional<double> found;
    for (const OwnLog &own : shell.own_logs)
        if (own.wall == wall.name && own.round == round)
            for (const OwnTail &tail : own.tails)
                if (tail.*length &&
                    (tail.end == LogEnd::left ? wall.start_corner : wall.end_corner) == corner)
                    found = (tail.*length)->mm();
    return found;
}

/// How high the tail of that log is where the walls' middles cross, where it is stated by itself.
inline std::optional<double> own_tail_height(const Shell &shell, const WallPlace &wall,
                                             Index<CornerPlace> corner, int round) {
    return own_tail_length(shell, wall, corner, round, &OwnTail::height);
}

/// The room under that tail.
inline double own_tail_gap(const Shell &shell, const WallPlace &wall, Index<CornerPlace> corner, int round) {
    return own_tail_length(shell, wall, corner, round, &OwnTail::gap).value_or(0);
}

/// Indices into Shell::own_logs of those that reach a corner, each log once: by what is stated of it last.
inline std::vector<std::size_t> own_notches_at(const Shell &shell, const Plan &plan,
                                               Index<CornerPlace> corner) {
    const CornerPlace &place = plan.corners[corner];
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        const auto wall = wall_named(plan, own.wall);
        if ((wall != place.ends && wall != place.starts) || !has_own_slopes(own)) continue;
        std::erase_if(found, [&](std::size_t k) {
            return shell.own_logs[k].wall == own.wall && shell.own_logs[k].round == own.round;
        });
        found.push_back(i);
    }
    return found;
}

} // namespace roundlay
