#include "kernel/layout/courses/courses.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/own_sizes.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/layout/text.h"
#include "kernel/shell/limits.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

struct Resolved {
    int count = 0;
    double pitch = 0;
};

void refuse(Findings &findings, std::string code, std::string subject, Said what,
            std::optional<Said> advice = {}) {
    findings.push_back({Weight::error,
                        std::move(code),
                        {about::All::rounds},
                        std::move(what),
                        std::move(advice),
                        std::move(subject)});
}

/// A stated height is kept and the pitch gives way: the count is the nearest whole number of rounds.
Resolved from_height_and_pitch(const Shell &shell, Findings &findings) {
    const double height = shell.rounds.height->mm(), pitch = shell.rounds.pitch->mm();
    const int count =
        std::max(1, static_cast<int>(std::lround(std::min(height / pitch, 1.0 * most_rounds + 1))));
    const double fitted = height / count;
    if (std::abs(fitted - pitch) > tolerance::weld)
        findings.push_back({Weight::note,
                            "pitch-fitted",
                            {about::All::rounds},
                            said("%1 rounds reach %2 at a pitch of %3, not the stated %4", count,
                                 in_mm(height), in_mm(fitted), in_mm(pitch)),
                            {},
                            "rounds.pitch"});
    return {count, fitted};
}

Resolved resolve(const Shell &shell, Findings &findings) {
    const Rounds &r = shell.rounds;
    if (r.count && r.pitch) {
        const double reached = *r.count * r.pitch->mm();
        if (r.height && std::abs(r.height->mm() - reached) > 0.5)
            refuse(findings, "rounds-disagree", "rounds.height",
                   said("%1 rounds at %2 reach %3, not the stated height of %4", *r.count,
                        in_mm(r.pitch->mm()), in_mm(reached), in_mm(r.height->mm())),
                   said("state two of count, pitch and height"));
        return {*r.count, r.pitch->mm()};
    }
    if (r.count && r.height) return {*r.count, r.height->mm() / *r.count};
    if (r.height && r.pitch) return from_height_and_pitch(shell, findings);
    refuse(findings, "rounds-missing", "rounds", said("state two of count, pitch and height"),
           said("the third is worked out"));
    return {};
}

bool check_numbers(const Shell &shell, const Resolved &r, Findings &findings) {
    if (has_errors(findings)) return false;
    if (r.count < 1 || r.count > most_rounds)
        refuse(findings, "rounds-out-of-range", "rounds.count", said("the shell has %1 rounds", r.count),
               said("between 1 and %1 can be laid", most_rounds));
    if (!(r.pitch > shell.rounds.gap.mm()))
        refuse(
            findings, "gap-eats-log", "rounds.gap",
            said("a gap of %1 leaves no log in a pitch of %2", in_mm(shell.rounds.gap.mm()), in_mm(r.pitch)));
    return !has_errors(findings);
}

/// What a wall states of its own heights, whether it stands outdoors or is a partition.
struct OwnHeights {
    std::optional<Length> pitch, log_height;
    std::string subject;
};

OwnHeights own_heights(const Shell &shell, std::size_t wall) {
    if (wall < shell.walls.size())
        return {shell.walls[wall].pitch, shell.walls[wall].log_height, subject("wall", wall, "")};
    const std::size_t i = wall - shell.walls.size();
    return {shell.partitions[i].pitch, shell.partitions[i].log_height, subject("partition", i, "")};
}

/// Of a wall, its top still missing. False on an error.
bool size_wall(const Shell &shell, Index<WallPlace> i, const WallPlace &place, Found<Courses> &courses) {
    const OwnHeights own = own_heights(shell, i.at());
    WallHeights wall;
    wall.pitch = own.pitch.value_or(Length::mm(courses.pitch)).mm();
    wall.log_height = own.log_height.value_or(Length::mm(wall.pitch) - shell.rounds.gap).mm();
    courses.heights.push_back(wall);
    if (wall.log_height > 0 && wall.log_height <= wall.pitch + tolerance::weld) return true;
    courses.findings.push_back(
        {Weight::error, "log-over-pitch", wall_place(place.name),
         said("logs %1 high do not fit in a pitch of %2", in_mm(wall.log_height), in_mm(wall.pitch)),
         said("a log is at most as high as the pitch"),
         own.subject + (own.log_height ? "log_height" : "pitch")});
    return false;
}

/// The logs of one wall, each on the one below and a gap. Both ends are stacked by the same rule, each with
/// the heights measured there.
class Stack {
  public:
    Stack(const Shell &shell, const Plan &plan, const Heights &heights, Index<WallPlace> wall)
        : shell_(shell), plan_(plan), all_heights_(heights), index_(wall), wall_(plan.walls[wall]),
          heights_(heights.heights[wall]), count_(heights.rounds), gap_(heights_.pitch - heights_.log_height),
          top_(count_ * heights_.pitch - shell.rounds.gap.mm()), level_(shell.rounds.top == TopRule::level) {}

    std::vector<Course> courses() {
        if (!wall_.starts_full) add(LogKind::half_start);
        const bool closes = !wall_.starts_full && level_;
        for (int k = 0; k < (closes ? count_ - 1 : count_); ++k)
            add(LogKind::full);
        if (closes) add(LogKind::half_finish);
        if (level_) close();
        for (Course &c : all_)
            give_round(c, sizes_of(shell_, wall_.name, c.round), shell_, wall_.thickness);
        for (std::size_t k = 1; k < all_.size(); ++k)
            if (all_[k].scoped) all_[k].hollow = std::max(0.0, all_[k - 1].crown + all_[k].scribe);
        if (level_) all_.back().crown = 0;
        return std::move(all_);
    }

  private:
    void add(LogKind kind) {
        Course c;
        c.round = static_cast<int>(all_.size()) + 1;
        c.kind = kind;
        // Over everything: an end at a slant reaches further along one of its faces than along the middle.
        const CornerReach left = reach_of(shell_, plan_, index_, c.round, 0);
        const CornerReach right = reach_of(shell_, plan_, index_, c.round, wall_.meetings.size() - 1);
        c.x_datum = left.tip - std::abs(left.skew) * wall_.thickness / 2;
        c.x_far = right.tip + std::abs(right.skew) * wall_.thickness / 2;
        const LogSizes own = own_sizes_of(shell_, wall_.name, c.round),
                       sizes = sizes_of(shell_, wall_.name, c.round);
        c.butt_at_datum = sizes.butt ? *sizes.butt == LogEnd::left : c.round % 2 == 1;
        const bool sill = all_.empty();
        const auto butt_height = height_of(kind, sill, own.butt_height, shell_.logs.butt_height);
        const auto tip_height = height_of(kind, sill, own.tip_height, shell_.logs.tip_height);
        const auto &datum_height = c.butt_at_datum ? butt_height : tip_height;
        const auto &far_height = c.butt_at_datum ? tip_height : butt_height;
        const auto &datum_width = c.butt_at_datum ? sizes.butt_width : sizes.tip_width;
        const auto &far_width = c.butt_at_datum ? sizes.tip_width : sizes.butt_width;
        const Course *below = all_.empty() ? nullptr : &all_.back();
        const OwnGaps gaps = own_gaps_of(shell_, wall_.name, c.round);
        c.datum = section(kind, below, c.x_datum, datum_height, datum_width, gaps.left);
        c.far = section(kind, below, c.x_far, far_height, far_width, gaps.right);
        all_.push_back(c);
    }

    double nominal_height(LogKind kind, bool sill) const {
        return nominal_log_height(shell_, all_heights_, index_, kind, sill);
    }

    /// A log's own height is what it was measured to be. What is stated of every log is stated of whole ones:
    /// a half log is one of them sawn in two.
    std::optional<double> height_of(LogKind kind, bool sill, const std::optional<Length> &own,
                                    const std::optional<Length> &every) const {
        if (own) return own->mm();
        if (!every) return {};
        return kind == LogKind::full
                   ? every->mm()
                   : half_of_log(nominal_height(kind, sill), heights_.log_height, every->mm());
    }

    Section section(LogKind kind, const Course *below, double x, const std::optional<double> &height,
                    const std::optional<Length> &width, const std::optional<Length> &gap) const {
        Section s;
        s.low = (below ? below->high(x) : 0) + (gap ? gap->mm() : below ? gap_ : 0);
        s.high = s.low + (height ? *height : nominal_height(kind, !below));
        s.width = width ? width->mm() : wall_.thickness;
        s.centre = (s.low + s.high) / 2;
        // The middle of the log that a half one was sawn from lies past its sawn face, whatever it was
        // measured to be.
        const double sawn_off = heights_.log_height / 2 - nominal_height(kind, !below);
        if (kind == LogKind::half_start) s.centre = s.low - sawn_off;
        if (kind == LogKind::half_finish) s.centre = s.high + sawn_off;
        if (kind == LogKind::full && !below && !height) s.centre = s.high - heights_.log_height / 2;
        return s;
    }

    /// Plate logs of nominal height end at the level top, whatever the wall's own log height.
    void close() {
        Course &plate = all_.back();
        const LogSizes sizes = sizes_of(shell_, wall_.name, plate.round);
        if (sizes.butt_height || sizes.tip_height || measured_below()) return;
        for (Section *s : {&plate.datum, &plate.far}) {
            s->high = top_;
            if (plate.kind == LogKind::full && all_.size() > 1) s->centre = s->low + heights_.log_height / 2;
        }
    }

    bool measured_below() const {
        return shell_.logs.butt_height || shell_.logs.tip_height ||
               std::any_of(shell_.own_logs.begin(), shell_.own_logs.end(), [&](const OwnLog &own) {
                   return own.wall == wall_.name &&
                          (own.sizes.butt_height || own.sizes.tip_height || own.gap_left || own.gap_right);
               });
    }

    const Shell &shell_;
    const Plan &plan_;
    const Heights &all_heights_;
    Index<WallPlace> index_;
    const WallPlace &wall_;
    const WallHeights &heights_;
    int count_;
    double gap_, top_;
    bool level_;
    std::vector<Course> all_;
};

bool check_section(const WallPlace &wall, const Course &c, double x, Findings &findings) {
    const double height = c.high(x) - c.low(x), width = c.width(x);
    const auto refuse = [&](const std::string &code, const std::string &from, Said what,
                            std::optional<Said> advice) {
        findings.push_back(
            {Weight::error, code, round_place(wall.name, c.round), std::move(what), std::move(advice), from});
        return false;
    };
    if (height <= 1)
        return refuse("no-wood-left", "rounds.pitch",
                      said("the log of this round would be %1 high", in_mm(height)),
                      said("a higher pitch, a smaller gap or a higher log leaves wood"));
    if (width <= 1)
        return refuse("no-wood-left", "logs",
                      said("the log of this round would be %1 wide at one end", in_mm(width)), {});
    if (width > wall.thickness + tolerance::weld)
        return refuse("log-too-wide", "logs",
                      said("the log of this round is %1 wide, more than its wall's %2", in_mm(width),
                           in_mm(wall.thickness)),
                      said("state the wall's thickness as that of its widest log"));
    return true;
}

bool check_courses(const WallPlace &wall, const std::vector<Course> &courses, Findings &findings) {
    return std::all_of(courses.begin(), courses.end(), [&](const Course &c) {
        return check_section(wall, c, c.x_datum, findings) && check_section(wall, c, c.x_far, findings);
    });
}

bool check_own_logs(const Shell &shell, const Plan &plan, Found<Courses> &courses) {
    for (std::size_t i = 0; i < shell.own_logs.size(); ++i) {
        const OwnLog &own = shell.own_logs[i];
        bool found = false;
        for (const auto w : plan.walls.indices())
            found = found || (plan.walls[w].name == own.wall && own.round >= 1 &&
                              own.round <= std::ssize(courses.logs[w]));
        if (found) continue; // which pieces a round has is seen when they are cut
        courses.findings.push_back({Weight::error, "log-nowhere", round_place(own.wall, own.round),
                                    said("sizes are stated for a log that this shell does not have"),
                                    said("rounds count from 1"), subject("log", i, "round")});
        return false;
    }
    return true;
}

} // namespace

double nominal_log_height(const Shell &shell, const Heights &heights, Index<WallPlace> wall, LogKind kind,
                          bool sill) {
    const WallHeights &own = heights.heights[wall];
    const double base = (heights.pitch - shell.rounds.gap.mm()) / 2, gap = own.pitch - own.log_height;
    if (kind == LogKind::half_finish) return own.pitch / 2 - gap;
    if (kind == LogKind::half_start) return base - own.pitch / 2 + own.log_height / 2;
    return sill ? base + own.log_height / 2 : own.log_height;
}

double half_of_log(double nominal_half, double nominal_log, double log) {
    return nominal_half + (log - nominal_log) / 2;
}

namespace {

/// False on an error.
bool stack_walls(const Shell &shell, const Plan &plan, Found<Courses> &courses) {
    for (const auto i : plan.walls.indices()) {
        if (!size_wall(shell, i, plan.walls[i], courses)) return false;
        courses.logs.push_back(Stack(shell, plan, courses, i).courses());
        const Course &last = courses.logs.back().back();
        courses.heights[i].top = std::max(last.datum.high, last.far.high);
        if (!check_courses(plan.walls[i], courses.logs.back(), courses.findings)) return false;
    }
    return check_own_logs(shell, plan, courses);
}

} // namespace

Found<Courses> lay_out_courses(const Shell &shell, const Plan &plan) {
    Found<Courses> courses;
    const Resolved r = resolve(shell, courses.findings);
    if (!check_numbers(shell, r, courses.findings)) return courses;
    courses.rounds = r.count;
    courses.pitch = r.pitch;
    courses.height = r.count * r.pitch;
    if (plan.walls.empty()) return courses;
    if (stack_walls(shell, plan, courses))
        for (Finding &f : check_round_logs(shell, plan, courses))
            courses.findings.push_back(std::move(f));
    if (!stand(courses)) courses.logs.clear(), courses.heights.clear();
    return courses;
}

} // namespace roundlay
