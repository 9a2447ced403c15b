#include "kernel/layout/openings/openings.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/rounded.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Two openings side by side leave an island at least this long; pegs ask for more. Common practice, no
/// source.
constexpr double least_island = 100;

void say_of(Weight weight, Findings &findings, const Shell &shell, std::size_t i, std::string code,
            const std::string &key, Said what, std::optional<Said> advice) {
    findings.push_back({weight, std::move(code), opening_place(shell, i), std::move(what), std::move(advice),
                        subject("opening", i, key)});
}

void refuse(Findings &findings, const Shell &shell, std::size_t i, std::string code, const std::string &key,
            Said what, std::optional<Said> advice = {}) {
    say_of(Weight::error, findings, shell, i, std::move(code), key, std::move(what), std::move(advice));
}

/// Wood beside an opening that can be cut, and may split: less than that as it is read off a rule.
void warn_of_little(Findings &to, const Shell &shell, std::size_t i, Said what, double left, double least) {
    if (rounded_up(shell, left) >= least - tolerance::weld) return;
    say_of(Weight::warning, to, shell, i, "little-wood-beside-opening", "from_left", std::move(what),
           said("less than %1 splits off easily", in_mm(least)));
}

/// Where openings may lie: between the shoulders.
Span free_span(const Plan &plan, Index<WallPlace> wall) {
    const FreeStretch free = free_between(plan, wall);
    return {free.from, free.to};
}

bool check_width(const Shell &shell, std::size_t i, const Span &room, Findings &findings) {
    const Opening &o = shell.openings[i];
    if (o.width.mm() > 0 && o.height.mm() > 0 && o.width.mm() < room.length() - 2 * no_wood) return true;
    if (o.width.mm() <= 0 || o.height.mm() <= 0)
        refuse(findings, shell, i, "opening-empty", "width",
               said("an opening needs a width and a height above zero"));
    else
        refuse(findings, shell, i, "opening-too-wide", "width", said("it is %1 wide", in_mm(o.width.mm())));
    return false;
}

bool check_corners(const Shell &shell, const Plan &plan, std::size_t i, const Span &room,
                   Findings &findings) {
    const Opening &o = shell.openings[i];
    const double from = o.from_left.mm(), to = from + o.width.mm();
    const double beside = std::min(from - room.from, room.to - to);
    const bool left = from - room.from <= room.to - to;
    const auto &w = plan.walls[*wall_named(plan, o.wall)];
    const auto &corner = plan.corners[left ? w.start_corner : w.end_corner];
    if (beside >= no_wood) {
        warn_of_little(findings, shell, i,
                       said("it leaves %1 of wood to the joint of corner %2", in_mm(beside), corner.name),
                       beside, least_island);
        return true;
    }
    refuse(findings, shell, i, "opening-cuts-corner", "from_left",
           said("it comes too near the joint of corner %1", corner.name));
    return false;
}

/// How far the notches of a partition that meets the wall at a slant lean over to either side.
double slant_of(const WallMeeting &m, const WallPlace &wall) {
    return std::abs(m.skew) * wall.thickness / 2;
}

/// Partitions that meet the wall run its whole height: an opening stands wholly beside their notches.
bool check_tees(const Shell &shell, const Plan &plan, std::size_t i, const WallPlace &wall,
                Findings &findings) {
    const Opening &o = shell.openings[i];
    const double from = o.from_left.mm(), to = from + o.width.mm();
    for (const WallMeeting &m : wall.meetings) {
        const double slant = slant_of(m, wall);
        const double beside = std::max(m.low - slant - to, from - m.high - slant);
        if (m.ends || beside >= least_island) continue;
        const std::string &corner = plan.corners[m.corner].name;
        if (beside >= no_wood) {
            warn_of_little(findings, shell, i,
                           said("it leaves %1 of wood to the notches at %2", in_mm(beside), corner), beside,
                           least_island);
            continue;
        }
        refuse(findings, shell, i, "opening-cuts-tee", "from_left",
               said("it comes too near the notches of wall %1 at %2", plan.walls[m.other].name, corner));
        return false;
    }
    return true;
}

bool check_height(const Shell &shell, std::size_t i, const std::string &wall, double wall_top,
                  Findings &findings) {
    const Opening &o = shell.openings[i];
    const double top = o.sill.mm() + o.height.mm();
    if (o.sill.mm() >= 0 && top < wall_top - tolerance::clear) return true;
    if (o.sill.mm() < 0)
        refuse(findings, shell, i, "opening-below-wall", "sill", said("the sill lies under the foundation"));
    else
        refuse(findings, shell, i, "opening-over-wall", "height",
               said("it ends %1 above the foundation, but wall %2 is only %3 high", in_mm(top), wall,
                    in_mm(wall_top)),
               wall_top > o.sill.mm()
                   ? said("a height under %1 leaves a log over it", no_more(shell, wall_top - o.sill.mm()))
                   : said("more rounds or a lower sill would hold it"));
    return false;
}

double apart_in_height(const Opening &a, const Opening &b) {
    return std::max(b.sill.mm() - (a.sill + a.height).mm(), a.sill.mm() - (b.sill + b.height).mm());
}

bool check_pair(const Shell &shell, std::size_t i, std::size_t j, Findings &findings) {
    const Opening &a = shell.openings[i], &b = shell.openings[j];
    if (a.wall != b.wall) return true;
    const double apart_x = std::max(b.from_left.mm() - (a.from_left + a.width).mm(),
                                    a.from_left.mm() - (b.from_left + b.width).mm());
    const double apart_z = apart_in_height(a, b);
    if (apart_x >= least_island || apart_z >= least_left_over) return true;
    if (apart_x >= no_wood || apart_z >= no_wood) {
        const auto [left, least] =
            apart_x >= no_wood ? std::pair(apart_x, least_island) : std::pair(apart_z, least_left_over);
        warn_of_little(findings, shell, j,
                       said("it leaves %1 of wood to %2", in_mm(left), said_of(opening_of(shell, i))), left,
                       least);
        return true;
    }
    refuse(findings, shell, j, "openings-too-close", "from_left",
           apart_x < 0 && apart_z < 0
               ? said("it overlaps %1", said_of(opening_of(shell, i)))
               : said("it leaves too little wood between itself and %1", said_of(opening_of(shell, i))));
    return false;
}

/// Takes what lies between `from` and `to` out of the stretches.
void take_out(std::vector<Span> &stretches, double from, double to) {
    std::vector<Span> left;
    for (const Span &s : stretches) {
        if (from >= s.to || to <= s.from) {
            left.push_back(s);
            continue;
        }
        if (from >= s.from) left.push_back({s.from, from});
        if (to <= s.to) left.push_back({to, s.to});
    }
    stretches = left;
}

} // namespace

about::Opening opening_of(const Shell &shell, std::size_t opening) {
    const Opening &o = shell.openings[opening];
    int number = 1;
    for (std::size_t i = 0; i < opening; ++i)
        if (shell.openings[i].wall == o.wall && shell.openings[i].kind == o.kind) ++number;
    return {o.kind, number, o.name};
}

std::string name_in_wall(const Shell &shell, std::size_t opening) {
    const about::Opening o = opening_of(shell, opening);
    if (!o.name.empty()) return o.name;
    return (o.kind == OpeningKind::door ? "door " : "window ") + std::to_string(o.number);
}

std::string name_of(const Shell &shell, std::size_t opening) {
    const Opening &o = shell.openings[opening];
    return o.name.empty() ? name_in_wall(shell, opening) + " in wall " + o.wall : o.name;
}

About opening_place(const Shell &shell, std::size_t opening) {
    return narrowed(wall_place(shell.openings[opening].wall), opening_of(shell, opening));
}

namespace {

bool check_opening(const Shell &shell, const Plan &plan, const Heights &heights, std::size_t i,
                   Findings &findings) {
    const auto w = wall_named(plan, shell.openings[i].wall);
    if (!w) {
        refuse(findings, shell, i, "opening-without-wall", "wall",
               said("there is no wall %1 in this shell", shell.openings[i].wall));
        return false;
    }
    const Span room = free_span(plan, *w);
    const WallPlace &wall = plan.walls[*w];
    return check_width(shell, i, room, findings) && check_corners(shell, plan, i, room, findings) &&
           check_tees(shell, plan, i, wall, findings) &&
           (heights.heights.empty() || check_height(shell, i, wall.name, heights.heights[*w].top, findings));
}

} // namespace

Found<Openings> check_openings(const Shell &shell, const Plan &plan, const Heights &heights) {
    Found<Openings> all;
    std::vector<bool> &refused = all.refused;
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        refused.push_back(!check_opening(shell, plan, heights, i, all.findings));
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        for (std::size_t j = i + 1; j < shell.openings.size() && !refused[i]; ++j)
            if (!refused[j]) refused[j] = !check_pair(shell, i, j, all.findings);
    return all;
}

std::vector<Span> places_beside(const Shell &shell, const Plan &plan, std::size_t opening) {
    const Opening &o = shell.openings[opening];
    const auto w = wall_named(plan, o.wall);
    if (!w) return {};
    const WallPlace &wall = plan.walls[*w];
    const Span room = free_span(plan, *w);
    std::vector<Span> places{{room.from + least_island, room.to - least_island - o.width.mm()}};
    if (places.front().length() < 0) return {};
    for (const WallMeeting &m : wall.meetings) {
        const double lean = slant_of(m, wall) + least_island;
        if (!m.ends) take_out(places, m.low - lean - o.width.mm(), m.high + lean);
    }
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &other = shell.openings[i];
        if (i == opening || other.wall != o.wall || apart_in_height(o, other) >= least_left_over) continue;
        take_out(places, (other.from_left - o.width).mm() - least_island,
                 (other.from_left + other.width).mm() + least_island);
    }
    return places;
}

namespace {

/// A log over the width of an opening: from where to where its under face and its top lie.
struct LogThere {
    Span span, under, over;
};

LogThere log_there(const Foundation &foundation, Index<WallPlace> wall, const Course &course,
                   const Opening &o) {
    const Span span{o.from_left.mm(), (o.from_left + o.width).mm()};
    const double floor = floor_under(foundation, wall, span.from, span.to);
    return {span,
            {std::max(floor, std::min(course.low(span.from), course.low(span.to))),
             std::max(floor, std::max(course.low(span.from), course.low(span.to)))},
            {std::min(course.high(span.from), course.high(span.to)),
             std::max(course.high(span.from), course.high(span.to))}};
}

/// What the opening takes from that log, if anything.
std::optional<OpeningCut> cut_by(const Shell &shell, std::size_t i, const Course &course, const LogThere &log,
                                 double thickness) {
    const Opening &o = shell.openings[i];
    const double low = std::max(o.sill.mm(), log.under.from - course.lip),
                 high = std::min((o.sill + o.height).mm(), log.over.to + course.crown);
    const double fall = o.kind == OpeningKind::window ? trim_of(shell, o).sill_slope.ratio() : 0;
    if (high - low <= tolerance::thinnest) {
        // the log under a sloping sill loses a wedge of its outer arris
        if (fall > 0 && o.sill.mm() >= log.over.to - tolerance::thinnest &&
            o.sill.mm() - fall * thickness < log.over.to - tolerance::clear)
            return OpeningCut{i, log.span, false, BoxUse::sill, o.sill.mm(), log.over.to, fall};
        return {};
    }
    // Of a tapered log no wood is left that would run out to nothing within the opening: it would fall in two
    // lumps. So would the lips of a groove.
    const bool at_low = o.sill.mm() <= log.under.to + course.hollow + tolerance::thinnest;
    const bool at_high = (o.sill + o.height).mm() >= log.over.from - tolerance::thinnest;
    const BoxUse use = at_high ? BoxUse::sill : (at_low ? BoxUse::header : BoxUse::through);
    return OpeningCut{i, log.span, at_low && at_high, use, low, high, at_low ? 0 : fall};
}

} // namespace

std::vector<OpeningCut> cuts_of(const Shell &shell, const Plan &plan, const Foundation &foundation,
                                Index<WallPlace> wall, const Course &course) {
    std::vector<OpeningCut> cuts;
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        if (o.wall != plan.walls[wall].name) continue;
        const LogThere log = log_there(foundation, wall, course, o);
        if (const auto cut = cut_by(shell, i, course, log, plan.walls[wall].thickness)) cuts.push_back(*cut);
    }
    std::sort(cuts.begin(), cuts.end(),
              [](const OpeningCut &a, const OpeningCut &b) { return a.span.from < b.span.from; });
    return cuts;
}

namespace {

/// Wood that is left over an opening, under it, or under its sloping sill.
Said sliver(const about::Opening &opening, bool over, bool sloping, double left) {
    const Amount name = said_of(opening), of_wood = in_mm(std::max(0.0, left)),
                 least = in_mm(least_left_over);
    if (over)
        return said("%1 leaves only %2 of the log over it, where at least %3 should stay", name, of_wood,
                    least);
    if (sloping)
        return said("%1 leaves only %2 of the log under its sloping sill outside, where at least "
                    "%3 should stay",
                    name, of_wood, least);
    return said("%1 leaves only %2 of the log under it, where at least %3 should stay", name, of_wood, least);
}

/// What a cut leaves of the log over it and under it, where least is left.
struct LeftOver {
    double over = 0, under = 0, drop = 0; ///< the sill's fall outside, which `under` has lost
};

LeftOver left_by(const OpeningCut &cut, const Course &course, double floor, double thickness) {
    const double drop = cut.fall * thickness;
    const double top = std::min(course.high(cut.span.from), course.high(cut.span.to));
    const double foot = std::max(course.low(cut.span.from), course.low(cut.span.to)) + course.hollow;
    return {top - cut.high, cut.low - drop - std::max(floor, foot), drop};
}

void warn_of_sliver(const Shell &shell, const std::string &wall, const Course &course, const OpeningCut &cut,
                    const LeftOver &wood, Found<Slivers> &all) {
    const bool over = cut.use != BoxUse::sill && wood.over < least_left_over;
    const bool under = cut.use != BoxUse::header && wood.under < least_left_over;
    if (!over && !under) return;
    const double left = over ? wood.over : wood.under;
    all.slivers.push_back({all.findings.size(), left});
    all.findings.push_back({Weight::warning,
                            "thin-wood-at-opening",
                            round_place(wall, course.round),
                            sliver(opening_of(shell, cut.opening), over, wood.drop > 0, left),
                            {},
                            subject("opening", cut.opening, over ? "height" : "sill")});
}

} // namespace

Found<Slivers> warn_of_slivers(const Shell &shell, const Plan &plan, const Foundation &foundation,
                               const Courses &courses) {
    Found<Slivers> all;
    for (const auto w : courses.logs.indices())
        for (const Course &course : courses.logs[w])
            for (const OpeningCut &cut : cuts_of(shell, plan, foundation, w, course)) {
                if (cut.severs || (cut.low >= cut.high && cut.fall == 0)) continue;
                const double floor = floor_under(foundation, w, cut.span.from, cut.span.to);
                warn_of_sliver(shell, plan.walls[w].name, course, cut,
                               left_by(cut, course, floor, plan.walls[w].thickness), all);
            }
    return all;
}

} // namespace roundlay
