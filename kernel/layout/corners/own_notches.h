// Logs whose notches have slopes of their own.
#pragma once

#include "kernel/layout/walls.h"
#include "kernel/shell/shell.h"

#include <algorithm>

namespace roundlay {

inline bool has_own_slopes(const LogNotch &notch) {
    return notch.kind || notch.slope || notch.along || notch.across;
}

/// Indices into Shell::own_logs of those that reach a corner, each log once: by what is stated of it last.
inline std::vector<std::size_t> own_notches_at(const Shell &shell, const Plan &plan,
                                               Index<CornerPlace> corner) {
    const CornerPlace &place = plan.corners[corner];
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        const auto wall = wall_named(plan, own.wall);
        if ((wall != place.ends && wall != place.starts) || !has_own_slopes(own.notch)) continue;
        std::erase_if(found, [&](std::size_t k) {
            return shell.own_logs[k].wall == own.wall && shell.own_logs[k].round == own.round;
        });
        found.push_back(i);
    }
    return found;
}

} // namespace roundlay
