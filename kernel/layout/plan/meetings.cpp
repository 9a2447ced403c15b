#include "kernel/layout/plan/meetings.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/layout/rounded.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace roundlay {

Vec2 heading_vector(double degrees) {
    const double turn = std::fmod(std::fmod(degrees, 360.0) + 360.0, 360.0);
    if (turn == 0) return {1, 0};
    if (turn == 90) return {0, 1};
    if (turn == 180) return {-1, 0};
    if (turn == 270) return {0, -1};
    const double rad = turn * std::numbers::pi / 180;
    return {std::cos(rad), std::sin(rad)};
}

namespace {

/// Two notches nearer than this leave short grain that splits off between their shoulders. Common practice,
/// no source.
constexpr double least_between_notches = 50;

/// Walls that are square but for the last digits of a sine lie square.
constexpr double square = 1e-9;

WallMeeting seen_from(const WallPlace &own, const WallPlace &other, Vec2 centre) {
    // The crossing wall's faces, each a line through a point of it, followed to this wall's centre line.
    const Vec3 run = own.frame.direction_to_local(other.frame.x);
    const double skew = run.x / run.y, middle = own.thickness / 2;
    const auto at = [&](double depth) {
        const Vec3 p = own.frame.to_local(other.frame.origin + depth * other.frame.y);
        return p.x + skew * (middle - p.y);
    };
    const double one = at(0), two = at(other.thickness);
    const auto [low, high] = std::minmax(one, two);
    WallMeeting m;
    m.x = own.frame.to_local({centre.x, centre.y, 0}).x;
    m.low = low;
    m.high = high;
    m.skew = std::abs(skew) < square ? 0 : skew;
    return m;
}

std::string subject_of(const Shell &shell, std::size_t wall, const std::string &key,
                       const std::string &partition_key) {
    return wall < shell.walls.size() ? subject("wall", wall, key)
                                     : subject("partition", wall - shell.walls.size(), partition_key);
}

/// A wall whose two tails run into one another.
Finding too_short(const Shell &shell, const Plan &plan, Index<WallPlace> w, double clear) {
    const WallPlace &wall = plan.walls[w];
    return {Weight::error,
            "wall-too-short",
            wall_place(wall.name),
            said("it is %1 long, shorter than its two tails", in_mm(wall.length)),
            said("it must be longer than %1", no_less(shell, wall.length - clear)),
            subject_of(shell, w.at(), "length", "to")};
}

/// Meetings `i` and the next, between which there is so little.
Finding too_near(const Shell &shell, const Plan &plan, Index<WallPlace> w, std::size_t i, double clear) {
    const WallPlace &wall = plan.walls[w];
    const WallMeeting &left = wall.meetings[i], &right = wall.meetings[i + 1];
    const bool left_passes = i > 0;
    const WallMeeting &moved = left_passes ? left : right;
    const std::size_t partition = std::max(moved.other, w).at();
    return {clear < no_wood ? Weight::error : Weight::warning,
            "tee-too-near",
            {about::Wall{wall.name}, about::Corner{plan.corners[moved.corner].name}},
            said("walls %1 and %2 meet wall %3 %4", plan.walls[left.other].name, plan.walls[right.other].name,
                 wall.name,
                 clear > 0 ? said("%1 apart", in_mm(clear)) : said("in the same place or past its end")),
            said("between two notches of a log %1 of wood are needed: set them %2 further apart",
                 in_mm(least_between_notches), no_less(shell, least_between_notches - clear)),
            subject_of(shell, partition, "length", "from_left")};
}

/// The two ends of a wall are its own; what it only crosses lies between them, clear of both and of the
/// others.
bool check_order(const Shell &shell, Found<Plan> &plan, Index<WallPlace> w) {
    const WallPlace &wall = plan.walls[w];
    for (std::size_t i = 0; i + 1 < wall.meetings.size(); ++i) {
        const WallMeeting &left = wall.meetings[i], &right = wall.meetings[i + 1];
        const double lean = (std::abs(left.skew) + std::abs(right.skew)) * wall.thickness / 2;
        const double clear = right.low - left.high - lean;
        const bool ends = i == 0 && i + 2 == wall.meetings.size();
        const double least = ends ? tolerance::clear : least_between_notches;
        if (clear >= least - tolerance::weld) continue;
        plan.findings.push_back(ends ? too_short(shell, plan, w, clear) : too_near(shell, plan, w, i, clear));
        if (plan.findings.back().weight == Weight::error) return false;
    }
    return true;
}

/// Only at its first and last meeting does a wall end.
bool ends_at_its_ends(const WallPlace &wall) {
    for (const WallMeeting &m : wall.meetings)
        if (m.ends != (&m == &wall.meetings.front() || &m == &wall.meetings.back())) return false;
    return true;
}

/// Of the two walls that meet past the end of one, that one's other is the partition, or it is one itself.
void refuse_past_end(const Shell &shell, Found<Plan> &plan, Index<WallPlace> own) {
    const WallPlace &w = plan.walls[own];
    const WallMeeting &m = w.meetings.front().ends ? w.meetings.back() : w.meetings.front();
    const std::size_t outer = shell.walls.size();
    const std::size_t partition = (m.other.at() >= outer ? m.other : own).at() - outer;
    const std::string &name = shell.partitions[partition].name;
    plan.findings.push_back(
        {Weight::error, "tee-off-wall", wall_place(name),
         said("partition %1 meets wall %2 past its end", name, w.name),
         said("the wall runs from %1 to %2 seen from its left", in_mm(0), in_mm(w.length)),
         subject("partition", partition, "from_left")});
}

bool ends_here(const CornerPlace &place, Index<WallPlace> wall) {
    return place.kind == CornerKind::corner || (place.kind == CornerKind::tee && place.runs_on != wall);
}

/// Into both walls of each corner.
void add_meetings(Plan &plan) {
    for (const auto c : plan.corners.indices()) {
        const CornerPlace &place = plan.corners[c];
        for (const auto &[own, other] :
             {std::pair(place.ends, place.starts), std::pair(place.starts, place.ends)}) {
            WallPlace &w = plan.walls[own];
            WallMeeting m = seen_from(w, plan.walls[other], place.centre);
            m.corner = c;
            m.other = other;
            m.ends = ends_here(place, own);
            w.meetings.push_back(m);
        }
    }
}

void order_meetings(WallPlace &w) {
    std::stable_sort(w.meetings.begin(), w.meetings.end(),
                     [](const WallMeeting &a, const WallMeeting &b) { return a.x < b.x; });
    w.start_corner = w.meetings.front().corner;
    w.end_corner = w.meetings.back().corner;
}

} // namespace

bool note_meetings(const Shell &shell, Found<Plan> &plan) {
    add_meetings(plan);
    bool good = true;
    for (const auto i : plan.walls.indices()) {
        WallPlace &w = plan.walls[i];
        order_meetings(w);
        if (!good) continue;
        if (ends_at_its_ends(w)) {
            good = check_order(shell, plan, i);
            continue;
        }
        refuse_past_end(shell, plan, i);
        good = false;
    }
    return good;
}

namespace {

using Footprint = std::array<Vec2, 4>; ///< convex

/// With the longest overhang that any of its logs has.
Footprint footprint(const Shell &shell, const Plan &plan, Index<WallPlace> index) {
    const WallPlace &w = plan.walls[index];
    CornerReach left = full_reach_at(shell, plan, index, End::datum),
                right = full_reach_at(shell, plan, index, End::far);
    for (const OwnLog &own : shell.own_logs) {
        if (own.wall != w.name) continue;
        left.tip = std::min(left.tip, reach_of(shell, plan, index, own.round, 0).tip);
        right.tip = std::max(right.tip, reach_of(shell, plan, index, own.round, w.meetings.size() - 1).tip);
    }
    const double half = w.thickness / 2;
    const auto at = [&](double x, double y) {
        const Vec3 p = w.frame.to_world({x, y, 0});
        return Vec2{p.x, p.y};
    };
    return {at(left.tip - left.skew * half, 0), at(right.tip - right.skew * half, 0),
            at(right.tip + right.skew * half, w.thickness), at(left.tip + left.skew * half, w.thickness)};
}

/// How far apart two convex outlines are along the best direction of their sides; below zero they overlap.
double apart(const Footprint &a, const Footprint &b) {
    double best = -HUGE_VAL;
    for (const auto &[one, other] : {std::pair(&a, &b), std::pair(&b, &a)})
        for (std::size_t i = 0; i < one->size(); ++i) {
            const Vec2 p = (*one)[i], d = (*one)[(i + 1) % one->size()] - p;
            const Vec2 n = (1 / length(d)) * Vec2{d.y, -d.x};
            double nearest = HUGE_VAL;
            for (const Vec2 &q : *other)
                nearest = std::min(nearest, dot(n, q - p));
            best = std::max(best, nearest);
        }
    return best;
}

bool meet(const WallPlace &a, Index<WallPlace> b) {
    return std::any_of(a.meetings.begin(), a.meetings.end(),
                       [&](const WallMeeting &m) { return m.other == b; });
}

Shell without_overhangs(const Shell &shell) {
    Shell flush = shell;
    flush.notch.overhang = {};
    for (CornerNotch &own : flush.corners)
        own.notch.overhang = {};
    for (OwnLog &own : flush.own_logs)
        own.notch.overhang_left = own.notch.overhang_right = std::nullopt;
    return flush;
}

/// Two walls that have so little room between them without the ends that hang over.
Finding run_together(const Shell &shell, const Plan &plan, Index<WallPlace> i, Index<WallPlace> j,
                     double without) {
    const std::string &a = plan.walls[i].name, &b = plan.walls[j].name;
    if (without <= 0)
        return {
            Weight::error,
            "walls-run-together",
            {about::Walls{a, b}},
            said("walls %1 and %2 run into one another by %3, their ends included", a, b, in_mm(-without)),
            said("set them further apart"),
            subject_of(shell, j.at(), "length", "from_left")};
    return {Weight::error,
            "overhang-hits-wall",
            {about::Walls{a, b}},
            said("an overhanging end of one runs into the other"),
            said("there is room for %1 of overhang between them", no_more(shell, without)),
            "notch.overhang"};
}

} // namespace

bool check_room_between(const Shell &shell, Found<Plan> &plan) {
    const Shell flush = without_overhangs(shell);
    for (const auto i : plan.walls.indices())
        for (const auto j : plan.walls.after(i)) {
            if (meet(plan.walls[i], j)) continue;
            const double room = apart(footprint(shell, plan, i), footprint(shell, plan, j));
            if (room > 0) continue;
            const double without = apart(footprint(flush, plan, i), footprint(flush, plan, j));
            plan.findings.push_back(run_together(shell, plan, i, j, without));
            return false;
        }
    return true;
}

namespace {

Index<WallPlace> wall_that_starts_full(const Shell &shell, const Plan &plan) {
    Index<WallPlace> first;
    for (const auto i : plan.walls.indices())
        if (plan.walls[i].name == shell.rounds.full_first) first = i;
    return first;
}

/// Both would start with the same kind of log.
Finding do_not_alternate(const Shell &shell, const Plan &plan, const WallPlace &from, const WallMeeting &m) {
    const std::string &name = plan.corners[m.corner].name;
    return {Weight::error,
            "walls-do-not-alternate",
            corner_place(name),
            said("walls %1 and %2 would both start with a %3 log: going round a closed way of walls "
                 "the starts must "
                 "change at every corner, which takes an even number of walls",
                 from.name, plan.walls[m.other].name, from.starts_full ? said("full") : said("half")),
            said("one wall more or less on the way through corner %1 would fit", name),
            subject_of(shell, m.other.at(), "toward", "to")};
}

} // namespace

bool choose_starts(const Shell &shell, Found<Plan> &plan) {
    const Index<WallPlace> first = wall_that_starts_full(shell, plan);
    std::vector<bool> known(plan.walls.size());
    std::vector<Index<WallPlace>> reached{first};
    known[first.at()] = plan.walls[first].starts_full = true;
    for (std::size_t k = 0; k < reached.size(); ++k) {
        const WallPlace &from = plan.walls[reached[k]];
        for (const WallMeeting &m : from.meetings) {
            const Index<WallPlace> to = m.other;
            if (known[to.at()] && plan.walls[to].starts_full != from.starts_full) continue;
            if (known[to.at()]) {
                plan.findings.push_back(do_not_alternate(shell, plan, from, m));
                return false;
            }
            known[to.at()] = true;
            plan.walls[to].starts_full = !from.starts_full;
            reached.push_back(to);
        }
    }
    return true;
}

} // namespace roundlay
