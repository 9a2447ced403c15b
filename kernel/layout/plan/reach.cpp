#include "kernel/layout/plan/reach.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

const WallPlace &wall_of(const Plan &plan, Index<WallPlace> wall) {
    return plan.walls[wall];
}

template <typename T> void take(T &to, const std::optional<T> &from) {
    if (from) to = *from;
}

} // namespace

std::size_t meeting_at(const WallPlace &wall, End end) {
    return end == End::datum ? 0 : wall.meetings.size() - 1;
}

CornerReach reach_at(const WallPlace &wall, std::size_t meeting, double overhang, double deep) {
    const WallMeeting &m = wall.meetings[meeting];
    CornerReach r{m.low, m.high, m.low - deep, m.high + deep, m.skew, 0, 0};
    if (meeting == 0) {
        r.tip = r.prism_low - overhang;
        // An overhang no longer than the kerf is cut away with it: the end is a tail.
        r.cut_low = overhang > deep + tolerance::thinnest ? r.cut_low : r.tip;
        r.shoulder = r.cut_high;
    } else if (meeting + 1 == wall.meetings.size()) {
        r.tip = r.prism_high + overhang;
        r.cut_high = overhang > deep + tolerance::thinnest ? r.cut_high : r.tip;
        r.shoulder = r.cut_low;
    }
    return r;
}

CornerReach bare_reach_at(const Plan &plan, Index<WallPlace> wall, End end) {
    const WallPlace &w = wall_of(plan, wall);
    return reach_at(w, meeting_at(w, end), 0, 0);
}

NotchRule notch_at(const Shell &shell, const Plan &plan, Index<CornerPlace> corner) {
    const CornerPlace &c = plan.corners[corner];
    const std::string &a = wall_of(plan, c.ends).name, &b = wall_of(plan, c.starts).name;
    for (const CornerNotch &own : shell.corners)
        if ((own.first == a && own.second == b) || (own.first == b && own.second == a)) return own.notch;
    return shell.notch;
}

NotchRule notch_at(const Shell &shell, const Plan &plan, Index<CornerPlace> corner, Index<WallPlace> wall,
                   int round) {
    NotchRule rule = notch_at(shell, plan, corner);
    const WallPlace &w = wall_of(plan, wall);
    for (const OwnLog &own : shell.own_logs) {
        if (own.wall != w.name || own.round != round) continue;
        take(rule.kind, own.notch.kind);
        take(rule.slope, own.notch.slope);
        take(rule.along, own.notch.along);
        take(rule.across, own.notch.across);
        for (const OwnTail &tail : own.tails)
            if (tail.along && (tail.end == LogEnd::left ? w.start_corner : w.end_corner) == corner) {
                rule.kind = NotchKind::stated;
                rule.along = *tail.along, rule.across = *tail.across;
            }
        if (w.start_corner == corner) take(rule.overhang, own.notch.overhang_left);
        if (w.end_corner == corner) take(rule.overhang, own.notch.overhang_right);
    }
    return rule;
}

CornerReach reach_of(const Shell &shell, const Plan &plan, Index<WallPlace> wall, int round,
                     std::size_t meeting) {
    const WallPlace &w = wall_of(plan, wall);
    const NotchRule rule = notch_at(shell, plan, w.meetings[meeting].corner, wall, round);
    return reach_at(w, meeting, rule.overhang.mm(), std::max(rule.shoulder.mm(), 0.0));
}

CornerReach full_reach_at(const Shell &shell, const Plan &plan, Index<WallPlace> wall, End end) {
    const WallPlace &w = wall_of(plan, wall);
    const std::size_t m = meeting_at(w, end);
    const NotchRule rule = notch_at(shell, plan, w.meetings[m].corner);
    return reach_at(w, m, rule.overhang.mm(), std::max(rule.shoulder.mm(), 0.0));
}

FreeStretch free_between(const Plan &plan, Index<WallPlace> wall) {
    const WallPlace &w = wall_of(plan, wall);
    const CornerReach left = bare_reach_at(plan, wall, End::datum),
                      right = bare_reach_at(plan, wall, End::far);
    return {left.shoulder + std::abs(left.skew) * w.thickness / 2,
            right.shoulder - std::abs(right.skew) * w.thickness / 2};
}

} // namespace roundlay
