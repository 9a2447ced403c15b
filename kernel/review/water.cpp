#include "kernel/review/water.h"

#include "kernel/layout/corners/notch.h"
#include "kernel/layout/corners/own_notches.h"
#include "kernel/layout/corners/seam_flow.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/layout/text.h"
#include "kernel/review/locks.h"

#include <algorithm>
#include <optional>

namespace roundlay {

namespace {

/// Which sides of a seam the weather reaches: by the lower log's and the crossing log's own outward
/// direction.
struct Weather {
    bool inward_across = false, outward_along = false, outward_across = false, inward_along = false;
};

/// At an outside corner the weather is past both ends; at an inside corner the ends are indoors. At a tee it
/// reaches the outside face of the wall that runs on, and indoors there is none.
Weather weather_at(const Shell &shell, const CornerPlace &c, Index<WallPlace> own) {
    if (c.kind == CornerKind::corner) return {c.reentrant, !c.reentrant, !c.reentrant, c.reentrant};
    if (c.kind == CornerKind::crossing || !c.runs_on || c.runs_on->at() >= shell.walls.size()) return {};
    return {false, own != c.runs_on, own == c.runs_on, false};
}

/// The seam between two tails seen from above, the lower log along x. The walls meet at `sine` and `cosine`.
std::vector<SeamEdge> seam_edges(double t_own, double t_other, double cosine, double sine, const Weather &w) {
    const double a = t_other / 2 / sine, b = t_own / 2 / sine;
    const auto at = [&](double along, double across) { return Vec2{along + cosine * across, sine * across}; };
    return {{at(-a, -b), at(a, -b), w.inward_across},
            {at(a, -b), at(a, b), w.outward_along},
            {at(a, b), at(-a, b), w.outward_across},
            {at(-a, b), at(-a, -b), w.inward_along}};
}

const WallPlace &wall(const Layout &layout, Index<WallPlace> index) {
    return layout.walls[index];
}

/// Whose tails lead water in, and along which log it runs.
struct Leak {
    Index<WallPlace> own, crossing;
    bool along_own = false;
};

std::optional<Leak> leak_on(const Shell &shell, const Layout &layout, const CornerPlace &c,
                            const TailTop &top, Index<WallPlace> own, Index<WallPlace> other) {
    const WallPlace &log = wall(layout, own), &crossing = wall(layout, other);
    const double cosine = -dot(log.frame.x, crossing.frame.x); // one of the two ends, the other starts
    const double sine = length(cross(log.frame.x, crossing.frame.x));
    const FlowResult r =
        flow_on(seam_edges(log.thickness, crossing.thickness, cosine, sine, weather_at(shell, c, own)),
                {top.along, (top.across - cosine * top.along) / sine});
    if (r.flow != Flow::leads_in) return {};
    const bool is_end = r.edge.value_or(0) % 2 == 1; // edges go round: what leaves there runs along the log
    return Leak{own, other, is_end};
}

std::vector<Leak> leaks_at(const Shell &shell, const Layout &layout, Index<CornerPlace> corner) {
    const CornerPlace &c = layout.corners[corner];
    const NotchRule rule = notch_at(shell, layout, corner);
    if (rule.kind == NotchKind::saddle)
        return {}; // falls away from the middle of the lower log to both its sides
    std::vector<Leak> leaks;
    for (const auto &[own, other] : {std::pair(c.ends, c.starts), std::pair(c.starts, c.ends)})
        if (const auto leak = leak_on(shell, layout, c, tail_top(rule), own, other)) leaks.push_back(*leak);
    return leaks;
}

CornerNotch notch_of_kind(const Shell &shell, const Layout &layout, Index<CornerPlace> corner,
                          NotchKind kind) {
    const CornerPlace &c = layout.corners[corner];
    CornerNotch own{wall(layout, c.ends).name, wall(layout, c.starts).name, notch_at(shell, layout, corner)};
    own.notch.kind = kind;
    return own;
}

bool at_one_corner(const CornerNotch &a, const CornerNotch &b) {
    return (a.first == b.first && a.second == b.second) || (a.first == b.second && a.second == b.first);
}

Shell with_notch(Shell shell, const CornerNotch &own) {
    std::erase_if(shell.corners, [&](const CornerNotch &n) { return at_one_corner(n, own); });
    shell.corners.push_back(own);
    return shell;
}

/// On which tails, and along which log it runs in.
Said way_of(const Layout &layout, const Leak &leak) {
    const std::string &own = wall(layout, leak.own).name;
    if (leak.along_own)
        return said(
            "water that reaches the tops of wall %1's tails runs in along the log, to wall %2's inside face",
            own, wall(layout, leak.crossing).name);
    return said("water that reaches the tops of wall %1's tails runs in along the crossing log, to wall %2's "
                "inside face",
                own, own);
}

/// Logs whose own notch leads water in at a corner that sheds it by its own rule.
void check_own_notches(const Shell &shell, const Layout &layout, Index<CornerPlace> corner,
                       Findings &findings) {
    const CornerPlace &c = layout.corners[corner];
    const NotchRule rule = notch_at(shell, layout, corner);
    if (rule.kind == NotchKind::saddle) return;
    for (const std::size_t i : own_notches_at(shell, layout, corner)) {
        const OwnLog &log = shell.own_logs[i];
        const Index<WallPlace> own = *wall_named(layout, log.wall), other = own == c.ends ? c.starts : c.ends;
        const TailTop top = tail_top(notch_at(shell, layout, corner, own, log.round));
        const auto leak = leak_on(shell, layout, c, top, own, other);
        if (!leak || leak_on(shell, layout, c, tail_top(rule), own, other)) continue;
        findings.push_back({Weight::warning, "seam-leads-water-in", corner_place(c.name, log.wall, log.round),
                            way_of(layout, *leak), said("the corner's own notch sheds it"),
                            subject("log", i, "kind")});
    }
}

/// The dovetails that lead no water in there, the simpler one first.
std::vector<CornerNotch> dry_notches(const Shell &shell, const Layout &layout, Index<CornerPlace> corner) {
    std::vector<CornerNotch> dry;
    for (const NotchKind kind : {NotchKind::half_dovetail, NotchKind::full_dovetail}) {
        CornerNotch own = notch_of_kind(shell, layout, corner, kind);
        if (leaks_at(with_notch(shell, own), layout, corner).empty()) dry.push_back(own);
    }
    return dry;
}

/// Warnings of what a corner's notch bears on: tails too thin for the logs, leaks, logs that pull out.
std::ptrdiff_t warned(const Shell &shell, const Layout &layout) {
    Findings all = layout.findings;
    check_locks(shell, layout, all);
    std::ptrdiff_t leaks = 0;
    for (const auto c : layout.corners.indices()) {
        leaks += std::ssize(leaks_at(shell, layout, c));
        check_own_notches(shell, layout, c, all);
    }
    return leaks +
           std::count_if(all.begin(), all.end(), [](const Finding &f) { return f.weight != Weight::note; });
}

struct WetCorner {
    Index<CornerPlace> corner;
    std::vector<Leak> leaks;
    std::vector<CornerNotch> dry;      ///< what would shed it
    std::optional<CornerNotch> advice; ///< which of these the shell takes
};

/// Lays the shell out with advice before it is given: what sheds the water may bring warnings of its own.
class Trial {
  public:
    Trial(const Shell &shell, const Layout &layout) : shell_(shell), before_(warned(shell, layout)) {}

    /// All at once first: that is one laying out where they agree, as they mostly do.
    void advise(std::vector<WetCorner> &wet) const {
        Shell all = shell_;
        std::ptrdiff_t mended = 0;
        for (WetCorner &w : wet) {
            if (w.dry.empty()) continue;
            w.advice = w.dry.front();
            all = with_notch(std::move(all), *w.advice);
            mended += std::ssize(w.leaks);
        }
        if (mended == 0 || takes(all, mended)) return;
        for (WetCorner &w : wet) {
            const auto leaks = std::ssize(w.leaks);
            const auto taken = std::find_if(w.dry.begin(), w.dry.end(), [&](const CornerNotch &n) {
                return takes(with_notch(shell_, n), leaks);
            });
            w.advice = taken == w.dry.end() ? std::nullopt : std::optional(*taken);
        }
    }

  private:
    /// The leaks go, and nothing comes for them.
    bool takes(const Shell &trial, std::ptrdiff_t mended) const {
        const Layout layout = lay_out(trial);
        return !has_errors(layout.findings) && warned(trial, layout) <= before_ - mended;
    }

    const Shell &shell_;
    std::ptrdiff_t before_;
};

std::vector<WetCorner> wet_corners(const Shell &shell, const Layout &layout) {
    std::vector<WetCorner> wet;
    for (const auto c : layout.corners.indices())
        if (auto leaks = leaks_at(shell, layout, c); !leaks.empty())
            wet.push_back({c, std::move(leaks), dry_notches(shell, layout, c), {}});
    if (!wet.empty()) Trial(shell, layout).advise(wet);
    return wet;
}

/// With the entry to write, where the corner has none yet.
Said advice_of(const Shell &shell, const CornerNotch &own) {
    const bool half = own.notch.kind == NotchKind::half_dovetail;
    if (std::any_of(shell.corners.begin(), shell.corners.end(),
                    [&](const CornerNotch &n) { return at_one_corner(n, own); }))
        return half ? said("a half dovetail at this corner sheds it")
                    : said("a full dovetail at this corner sheds it");
    return half
               ? said(
                     "a half dovetail at this corner sheds it: [[corner]] between = [\"%1\", \"%2\"], kind = "
                     "\"half dovetail\"",
                     own.first, own.second)
               : said(
                     "a full dovetail at this corner sheds it: [[corner]] between = [\"%1\", \"%2\"], kind = "
                     "\"full dovetail\"",
                     own.first, own.second);
}

Finding finding_of(const Shell &shell, const Layout &layout, const WetCorner &wet, const Leak &leak) {
    const Said advice = wet.advice ? advice_of(shell, *wet.advice)
                        : wet.dry.empty()
                            ? said("no dovetail of this slope sheds it there")
                            : said("no dovetail of this slope sheds it there without another warning");
    return {Weight::warning,
            "seam-leads-water-in",
            corner_place(layout.corners[wet.corner].name),
            way_of(layout, leak),
            advice,
            "notch.kind"};
}

} // namespace

void check_water(const Shell &shell, const Layout &layout, Findings &findings) {
    for (const WetCorner &w : wet_corners(shell, layout))
        for (const Leak &leak : w.leaks)
            findings.push_back(finding_of(shell, layout, w, leak));
    for (const auto c : layout.corners.indices())
        check_own_notches(shell, layout, c, findings);
}

std::vector<CornerNotch> dry_corners(const Shell &shell, const Layout &layout) {
    std::vector<CornerNotch> dry;
    for (const WetCorner &w : wet_corners(shell, layout))
        if (w.advice) dry.push_back(*w.advice);
    return dry;
}

} // namespace roundlay
