#include "kernel/layout/advice/alternation_advice.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr const char *code = "tails-do-not-alternate";
constexpr std::size_t most_tried = 6; ///< logs; each trial lays the whole shell out

bool alternates(const Layout &layout) {
    return std::ranges::none_of(layout.findings, [](const Finding &f) { return f.code == code; });
}

/// A log whose own height is stated, and what it would be if it were not.
struct Stated {
    std::string wall;
    int round = 1;
    LogKind kind = LogKind::full;
    double high = 0, nominal = 0;
    double off() const { return std::abs(high - nominal); }
};

bool states_height(const OwnLog &own, const std::string &wall, int round) {
    return own.wall == wall && own.round == round && (own.sizes.butt_height || own.sizes.tip_height);
}

std::vector<Stated> stated_heights(const Shell &shell, const Plan &plan, const Courses &courses) {
    std::vector<Stated> all;
    for (const auto w : courses.logs.indices())
        for (const Course &c : courses.logs[w]) {
            const WallPlace &wall = plan.walls[w];
            if (std::ranges::none_of(shell.own_logs,
                                     [&](const OwnLog &o) { return states_height(o, wall.name, c.round); }))
                continue;
            const double nominal = nominal_log_height(shell, courses, w, c.kind, c.round == 1);
            const double low = c.datum.high - c.datum.low, high = c.far.high - c.far.low;
            all.push_back({wall.name, c.round, c.kind,
                           std::abs(low - nominal) > std::abs(high - nominal) ? low : high, nominal});
        }
    std::ranges::stable_sort(all, [](const Stated &a, const Stated &b) { return a.off() > b.off(); });
    return all;
}

Shell with_nominal(const Shell &shell, const Stated &log, Length height) {
    Shell next = shell;
    for (OwnLog &own : next.own_logs)
        if (states_height(own, log.wall, log.round)) own.sizes.butt_height = own.sizes.tip_height = height;
    return next;
}

Said of_log(const Stated &log, Length height) {
    const LengthAmount is = in_mm(log.high);
    if (log.kind == LogKind::full)
        return said("the log of wall %1, round %2, is stated %3 high: at %4 they alternate; measure it "
                    "again, or lay another log there",
                    log.wall, log.round, is, just(height));
    return said("the half log of wall %1, round %2, is stated %3 high: at %4 they alternate; measure it "
                "again, or lay another log "
                "there",
                log.wall, log.round, is, just(height));
}

Said advice(const Shell &shell, const Heights &heights, const std::vector<Stated> &stated,
            const LayOut &try_out) {
    for (std::size_t i = 0; i < std::min(stated.size(), most_tried); ++i)
        for (const Length height : round_lengths(shell, stated[i].nominal)) {
            if (!alternates(try_out(with_nominal(shell, stated[i], height)))) continue;
            return of_log(stated[i], height);
        }
    const bool pitches_differ = std::ranges::any_of(heights.heights, [&](const WallHeights &w) {
        return std::abs(w.pitch - heights.heights.front().pitch) > 1e-6;
    });
    if (pitches_differ || stated.empty())
        return said("the pitches of the two walls drift apart by half a round, make them equal");
    return said("the heights stated of single logs make the two walls drift apart by half a round; measure "
                "them again, or change "
                "logs of the two walls for others");
}

} // namespace

void advise_on_alternation(const Shell &shell, Layout &layout, const Courses &courses,
                           const LayOut &try_out) {
    if (alternates(layout)) return;
    const Said what_fits = advice(shell, courses, stated_heights(shell, layout, courses), try_out);
    for (Finding &f : layout.findings)
        if (f.code == code) f.advice = what_fits;
}

} // namespace roundlay
