#include "kernel/design/shell_edits.h"

#include "kernel/design/round_figures.h"
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/partition_edit.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Outside, in mm; 0 where there is no such wall or partition.
double length_of(const Shell &shell, const std::string &name) {
    for (const WallPlace &wall : lay_out_to_try(shell).walls)
        if (wall.name == name) return wall.length;
    return 0;
}

} // namespace

bool fits_as_well(const Shell &shell, const Shell &before) {
    return errors_in(lay_out_to_try(shell).findings) <= errors_in(lay_out_to_try(before).findings);
}

std::optional<Shell> with_partition_there(const Shell &shell, const std::string &from, Length from_left,
                                          const std::string &to) {
    auto next = with_partition(shell, from, from_left, to);
    if (next && !fits_as_well(*next, shell)) next.reset();
    return next;
}

Fitted with_fitting_partition(const Shell &shell, const std::string &from) {
    const double length = length_of(shell, from), step = wide_step(shell.units);
    const double middle = std::round(length / 2 / step) * step;
    FittingTrial trial(shell);
    std::optional<Finding> in_the_middle;
    for (int i = 0; i <= static_cast<int>(length / step); ++i) { // nearest first, right and left by turns
        const double at = middle + (i % 2 == 0 ? i / 2 : -(i + 1) / 2) * step;
        const auto next = with_partition(shell, from, Length::mm(at));
        if (next && trial.holds(*next)) return *next;
        if (i == 0) in_the_middle = trial.why();
    }
    return in_the_middle;
}

namespace {

/// At tees and crossings the two stand in either order.
bool is_of(const CornerNotch &corner, const std::string &a, const std::string &b) {
    return (corner.first == a && corner.second == b) || (corner.first == b && corner.second == a);
}

} // namespace

Shell with_corner_notch(const Shell &shell, const std::string &first, const std::string &second,
                        const NotchRule &notch) {
    Shell next = shell;
    if (notch == shell.notch) { // there is nothing left to say of it
        std::erase_if(next.corners, [&](const CornerNotch &c) { return is_of(c, first, second); });
        return next;
    }
    for (CornerNotch &corner : next.corners)
        if (is_of(corner, first, second)) {
            corner.notch = notch;
            return next;
        }
    next.corners.push_back({first, second, notch});
    return next;
}

namespace {

NotchRule corner_notch(const Shell &shell, const NotchPlace &place) {
    for (const CornerNotch &corner : shell.corners)
        if (is_of(corner, place.first, place.second)) return corner.notch;
    return shell.notch;
}

/// Only what differs from the corner's.
LogNotch own_notch(LogNotch own, const NotchRule &corner, const NotchRule &rule) {
    own.kind = rule.kind == corner.kind ? std::nullopt : std::optional(rule.kind);
    own.slope = rule.slope == corner.slope ? std::nullopt : std::optional(rule.slope);
    own.along = rule.along == corner.along ? std::nullopt : std::optional(rule.along);
    own.across = rule.across == corner.across ? std::nullopt : std::optional(rule.across);
    return own;
}

} // namespace

NotchRule notch_at(const Shell &shell, const NotchPlace &place, NotchScope scope) {
    NotchRule rule = scope == NotchScope::shell ? shell.notch : corner_notch(shell, place);
    if (scope != NotchScope::log) return rule;
    const LogNotch own = own_log(shell, {place.wall, place.round, {}}).notch;
    rule.kind = own.kind.value_or(rule.kind);
    rule.slope = own.slope.value_or(rule.slope);
    rule.along = own.along.value_or(rule.along);
    rule.across = own.across.value_or(rule.across);
    return rule;
}

Shell with_notch(const Shell &shell, const NotchPlace &place, NotchScope scope, const NotchRule &rule) {
    if (scope == NotchScope::corner) return with_corner_notch(shell, place.first, place.second, rule);
    if (scope == NotchScope::log) {
        OwnLog log = own_log(shell, {place.wall, place.round, {}});
        log.notch = own_notch(log.notch, corner_notch(shell, place), rule);
        return with_own_log(shell, log);
    }
    Shell next = shell;
    next.notch = rule;
    std::erase_if(next.corners,
                  [&](const CornerNotch &corner) { return is_of(corner, place.first, place.second); });
    return next;
}

namespace {

/// Round figures; common practice, no source.
void make_round(Shell &shell) {
    const Length end = round_figure(shell.units, 300, 12), over = round_figure(shell.units, 50, 2);
    shell.rounds.gap = Length();
    shell.notch.overhang = std::max(shell.notch.overhang, end);
    const Length least = Length::mm(lay_out_to_try(shell).pitch) + over;
    if (!shell.logs.diameter && shell.thickness < least) shell.logs.diameter = least;
}

} // namespace

Shell with_kind(const Shell &shell, NotchKind kind) {
    Shell next = shell;
    const bool round = kind == NotchKind::saddle, was_round = shell.notch.kind == NotchKind::saddle;
    next.notch.kind = kind;
    if (round != was_round) {
        std::erase_if(next.corners, [](const CornerNotch &) { return true; });
        for (OwnLog &log : next.own_logs)
            log.notch.kind.reset();
    }
    if (round && !was_round) make_round(next);
    return next;
}

namespace {

/// Of two statements of one log the later counts.
std::optional<std::size_t> place_of(const Shell &shell, const LogPlace &log) {
    std::optional<std::size_t> at;
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i)
        if (const OwnLog &own = shell.own_logs[i]; LogPlace{own.wall, own.round, own.piece} == log) at = i;
    return at;
}

OwnLog nothing_of(const LogPlace &place) {
    OwnLog log;
    log.wall = place.wall;
    log.round = place.round;
    log.piece = place.piece;
    return log;
}

} // namespace

OwnLog own_log(const Shell &shell, const LogPlace &log) {
    const auto at = place_of(shell, log);
    return at ? shell.own_logs[*at] : nothing_of(log);
}

bool says_something_of(const Shell &shell, const LogPlace &log) {
    return place_of(shell, log).has_value();
}

Shell with_own_log(const Shell &shell, const OwnLog &log) {
    Shell next = shell;
    const LogPlace place{log.wall, log.round, log.piece};
    const auto at = place_of(shell, place);
    const bool says = log != nothing_of(place);
    if (!at && says) next.own_logs.push_back(log);
    if (at && says) next.own_logs[*at] = log;
    if (at && !says) next.own_logs.erase(std::next(next.own_logs.begin(), std::ptrdiff_t(*at)));
    return next;
}

} // namespace roundlay
