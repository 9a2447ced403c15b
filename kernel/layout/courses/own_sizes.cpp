#include "kernel/layout/courses/own_sizes.h"

namespace roundlay {

namespace {

/// Each size of the one with the same of the other.
template <typename Take> void take_each(LogSizes &to, const LogSizes &from, Take take) {
    take(to.butt_height, from.butt_height);
    take(to.tip_height, from.tip_height);
    take(to.butt_width, from.butt_width);
    take(to.tip_width, from.tip_width);
    take(to.butt, from.butt);
    take(to.diameter, from.diameter);
}

} // namespace

LogSizes own_sizes_of(const Shell &shell, const std::string &wall, int round) {
    LogSizes sizes;
    for (const OwnLog &own : shell.own_logs) {
        if (own.wall != wall || own.round != round) continue;
        take_each(sizes, own.sizes, [](auto &to, const auto &from) {
            if (from) to = from;
        });
    }
    return sizes;
}

OwnGaps own_gaps_of(const Shell &shell, const std::string &wall, int round) {
    OwnGaps gaps;
    for (const OwnLog &own : shell.own_logs) {
        if (own.wall != wall || own.round != round || own.piece) continue;
        if (own.gap_left) gaps.left = own.gap_left;
        if (own.gap_right) gaps.right = own.gap_right;
    }
    return gaps;
}

LogSizes sizes_of(const Shell &shell, const std::string &wall, int round) {
    LogSizes sizes = own_sizes_of(shell, wall, round);
    take_each(sizes, shell.logs, [](auto &to, const auto &from) {
        if (!to) to = from;
    });
    return sizes;
}

double own_scribe_of(const Shell &shell, const std::string &wall, int round) {
    double scribe = 0;
    for (const OwnLog &own : shell.own_logs)
        if (own.wall == wall && own.round == round && own.scribe) scribe = own.scribe->mm();
    return scribe;
}

} // namespace roundlay
