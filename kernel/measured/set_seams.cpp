#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/measured/rebuild.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double one_place = 300; ///< mm along a seam: measured nearer than that counts as at one place

/// The logs of one wall from the sill up, each on the one below.
class Seams {
  public:
    Seams(Rebuild &at, Index<WallPlace> wall, const std::optional<double> &zero,
          const Indexed<std::optional<double>, CornerPlace> &packed)
        : at_(at), wall_(wall), place_(at.plan.walls[wall]), logs_(at.numbers[wall]), zero_(zero),
          packed_(packed) {}

    void set() {
        for (round_ = 1; round_ <= std::ssize(logs_); ++round_)
            set_log();
    }

  private:
    double x(LogEnd end) const { return at_.shoulder(wall_, round_, end); }
    const LogNumbers &log() const { return in_round(logs_, round_); }
    /// The log's own height there, wherever it lies.
    double height(double x) const { return height_.at(x); }
    double laid_out(LogEnd end) const {
        const Course &course = at_.course(wall_, round_);
        return course.high(x(end)) - course.low(x(end));
    }

    /// Where only the level of its upper edge was read, it is as high as reaches up to that.
    void find_height(const std::optional<Line> &measured_gap) {
        bool by_level = false;
        double heights[2] = {};
        for (const LogEnd end : both_ends) {
            double &high = heights[end == LogEnd::left ? 0 : 1];
            high = laid_out(end);
            const auto &level = log().end(end).level;
            if (log().end(end).height || !level || !zero_) continue;
            const double gap = measured_gap ? std::max(measured_gap->at(x(end)), 0.0) : by_rule(end);
            const double up_to_level = *level - *zero_ - below_.at(x(end)) - gap;
            if (up_to_level < high / 2) continue; // a slip of the level, which is told
            high = up_to_level, by_level = true;
            at_.unpropose(wall_, round_, end, ProposedNumber::height);
        }
        height_ = through(x(LogEnd::left), heights[0], x(LogEnd::right), heights[1]);
        if (by_level) state_heights(at_, wall_, round_, height_);
    }

    /// What its own stations and those of the log below say of the seam.
    std::vector<std::pair<double, double>> gaps() const {
        std::vector<std::pair<double, double>> all;
        for (const StationNumbers &s : log().stations)
            if (s.gap_below) all.emplace_back(s.x, *s.gap_below);
        if (round_ == 1) return all;
        for (const StationNumbers &s : in_round(logs_, round_ - 1).stations)
            if (s.gap_above) all.emplace_back(s.x, *s.gap_above);
        return all;
    }

    /// As measured at that end; what was measured further off says little of it.
    std::optional<double> gap_near(LogEnd end) const {
        std::vector<std::pair<double, double>> close = gaps_;
        std::erase_if(close, [&](const auto &gap) { return std::abs(gap.first - x(end)) > one_place; });
        const auto line = nearest_line(close, HUGE_VAL);
        return line ? std::optional(line->from) : std::nullopt;
    }

    /// By the level of its upper edge, its height, and the top of what lies under it.
    std::optional<double> by_level(LogEnd end) const {
        const auto &level = log().end(end).level;
        if (!level || !zero_) return {};
        return *level - *zero_ - height(x(end)) - below_.at(x(end));
    }

    /// Of the first log what packs it up: what the other wall's log there was measured to lie on.
    double by_rule(LogEnd end) const {
        if (round_ > 1) return at_.courses.heights[wall_].pitch - at_.courses.heights[wall_].log_height;
        return packed_[end == LogEnd::left ? place_.start_corner : place_.end_corner].value_or(0);
    }

    void set_log() {
        gaps_ = gaps();
        const auto measured = nearest_line(gaps_, one_place);
        find_height(measured);
        tell_twice();
        double gap[2] = {};
        bool said_anything = false;
        for (const LogEnd end : both_ends) {
            const auto level = by_level(end);
            if (const auto close = gap_near(end); level && close) tell_levels(end, *level, *close);
            if (!level && !measured) at_.propose(wall_, round_, end, ProposedNumber::gap_below);
            said_anything = said_anything || level || measured;
            const double by_gaps = measured ? measured->at(x(end)) : by_rule(end);
            gap[end == LogEnd::left ? 0 : 1] = room(end, level.value_or(by_gaps));
            if (level) ++at_.made.taken;
        }
        at_.made.taken += gaps_.size();
        const Line line = through(x(LogEnd::left), gap[0], x(LogEnd::right), gap[1]);
        if (said_anything || (round_ == 1 && (gap[0] > 0 || gap[1] > 0))) state(line);
        lie_on(line);
    }

    /// Whether its height was measured there, and what it lies on lies where its own level says.
    bool is_sure(LogEnd end) const {
        return log().end(end).height && (round_ == 1 || below_is_level_[end == LogEnd::left ? 0 : 1]);
    }

    double room(LogEnd end, double gap) {
        if (gap < -2 * told_from) tell_lifted(end, -gap); // as in tell_levels
        return std::max(gap, 0.0);
    }

    void tell_lifted(LogEnd end, double by) {
        if (is_sure(end))
            return at_.tell(
                "log-in-log", round_place(place_.name, round_),
                said("by the levels its end at corner %1 reaches %2 into what lies under it: it is laid "
                     "on it, without a gap",
                     corner(end), in_mm(by)),
                said("measure its height and the level of its upper edge again"));
        if (log().end(end).height)
            at_.tell(
                "log-over-its-level", round_place(place_.name, round_),
                said("its end at corner %1 lies %2 higher than its level and its height say: what lies under "
                     "it was not measured there, and what is proposed of that reaches so high",
                     corner(end), in_mm(by)),
                said("measure heights and levels of the logs under it"));
    }

    void state(const Line &gap) {
        const Course &course = at_.course(wall_, round_);
        OwnLog &own = at_.own(wall_, round_);
        own.gap_left = Length::mm(std::max(gap.at(course.x_datum), 0.0));
        own.gap_right = Length::mm(std::max(gap.at(course.x_far), 0.0));
    }

    void lie_on(const Line &gap) {
        const double left = x(LogEnd::left), right = x(LogEnd::right);
        below_ = through(left, below_.at(left) + gap.at(left) + height(left), right,
                         below_.at(right) + gap.at(right) + height(right));
        for (const LogEnd end : both_ends) {
            const auto &level = log().end(end).level;
            below_is_level_[end == LogEnd::left ? 0 : 1] =
                level && zero_ && std::abs(below_.at(x(end)) - (*level - *zero_)) < tolerance::weld;
        }
    }

    const std::string &corner(LogEnd end) const {
        return at_.plan.corners[end == LogEnd::left ? place_.start_corner : place_.end_corner].name;
    }

    /// Four numbers went into these two, and each may be off by as much as a tape is.
    void tell_levels(LogEnd end, double by_level, double by_gaps) {
        if (std::abs(by_level - by_gaps) <= 2 * told_from || !is_sure(end)) return;
        at_.tell("levels-and-gaps-differ", round_place(place_.name, round_),
                 said("under its end at corner %1 the levels leave a gap of %2, the gaps as measured %3: the "
                      "levels are taken",
                      corner(end), in_mm(std::max(by_level, 0.0)), in_mm(std::max(by_gaps, 0.0))));
    }

    /// One seam, measured on the log over it and on the one under it.
    void tell_twice() {
        if (round_ == 1) return;
        for (const StationNumbers &over : log().stations)
            for (const StationNumbers &under : in_round(logs_, round_ - 1).stations) {
                if (!over.gap_below || !under.gap_above || std::abs(over.x - under.x) > one_place ||
                    std::abs(*over.gap_below - *under.gap_above) <= told_from)
                    continue;
                at_.tell(
                    "seam-measured-twice", round_place(place_.name, round_),
                    said("the gap under it is %1 as measured on log %2 and %3 on log %4, a difference of %5: "
                         "the middle is taken",
                         in_mm(*over.gap_below), over.tag, in_mm(*under.gap_above), under.tag,
                         in_mm(std::abs(*over.gap_below - *under.gap_above))));
            }
    }

    Rebuild &at_;
    Index<WallPlace> wall_;
    const WallPlace &place_;
    const std::vector<LogNumbers> &logs_;
    const std::optional<double> &zero_;
    const Indexed<std::optional<double>, CornerPlace> &packed_;
    int round_ = 1;
    std::vector<std::pair<double, double>> gaps_; ///< that were measured under the log
    Line height_;                                 ///< of the log, between its shoulders
    bool below_is_level_[2] = {};
    Line below_; ///< the top of what lies under the next log
};

struct FirstLog {
    Index<CornerPlace> corner;
    double underside = 0; ///< by its level
};

std::vector<FirstLog> first_logs(const Rebuild &at) {
    std::vector<FirstLog> all;
    for (const auto w : at.plan.walls.indices())
        for (const LogEnd end : both_ends) {
            const auto &level = at.numbers[w].front().end(end).level;
            const Course &course = at.course(w, 1);
            const double x = at.shoulder(w, 1, end);
            const WallPlace &wall = at.plan.walls[w];
            if (level)
                all.push_back({end == LogEnd::left ? wall.start_corner : wall.end_corner,
                               *level - (course.high(x) - course.low(x))});
        }
    return all;
}

bool any_level(const Rebuild &at) {
    return std::ranges::any_of(at.numbers, [](const std::vector<LogNumbers> &wall) {
        return std::ranges::any_of(wall, [](const LogNumbers &log) {
            return log.end(LogEnd::left).level || log.end(LogEnd::right).level;
        });
    });
}

void tell_no_zero(Rebuild &at) {
    at.tell("levels-without-sill", {about::All::logs},
            said("levels were read, but none of a log of the first round: nothing tells how high the "
                 "others lie"),
            said("read the level of a first log at its two ends"));
}

std::optional<double> lowest_of(const std::vector<FirstLog> &logs) {
    std::optional<double> lowest;
    for (const FirstLog &log : logs)
        lowest = std::min(lowest.value_or(log.underside), log.underside);
    return lowest;
}

} // namespace

std::optional<double> lowest_level(const Rebuild &at) {
    if (at.level) return at.level->zero; // first logs may be others now
    return lowest_of(first_logs(at));
}

void set_seams(Rebuild &at) {
    if (is_scoped(at.made.shell)) return;
    Indexed<std::optional<double>, CornerPlace> packed;
    packed.resize(at.plan.corners.size());
    const auto first = first_logs(at);
    const auto zero = lowest_level(at);
    for (const FirstLog &log : first)
        packed[log.corner] = std::max(packed[log.corner].value_or(0), log.underside - *zero);
    if (!zero && any_level(at)) tell_no_zero(at);
    for (const auto wall : at.plan.walls.indices())
        Seams(at, wall, zero, packed).set();
}

} // namespace roundlay
