#include "kernel/measured/settled.h"

#include "kernel/layout/plan/wall_side.h"
#include "kernel/measured/rebuild.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double hair = 0.05; ///< mm: what two walls that cross may disagree by

const Said stated_packing =
    said("leave out \"levelled\", and state what packs each first log up by gap_left and gap_right");

/// The underside of a first log at one of its shoulders, over the foundation as it was found.
struct Underside {
    Index<WallPlace> wall;
    double x = 0, high = 0;
};

class Settling {
  public:
    Settling(const Rebuild &at, Settled &made) : at_(at), made_(made) {}

    void tell() {
        if (!at_.made.shell.steps.empty()) return tell_steps();
        measure_undersides();
        if (has_errors(made_.findings)) return;
        find_corners();
        find_partitions();
        check_crossings();
        find_zero();
        if (!has_errors(made_.findings)) tell_lifted();
    }

  private:
    const WallPlace &place(Index<WallPlace> wall) const { return at_.plan.walls[wall]; }
    Index<CornerPlace> corner(Index<WallPlace> wall, LogEnd end) const {
        return end == LogEnd::left ? place(wall).start_corner : place(wall).end_corner;
    }
    double middle(Index<WallPlace> wall, LogEnd end) const {
        const auto &meetings = place(wall).meetings;
        return end == LogEnd::left ? meetings.front().x : meetings.back().x;
    }
    bool is_outer(Index<WallPlace> wall) const { return wall.at() < outer_walls(at_.plan); }

    void refuse(const About &about, Said what, Said advice) {
        made_.findings.push_back(
            {Weight::error, "not-levelled", about, std::move(what), std::move(advice), ""});
    }

    void tell_steps() {
        refuse({about::All::plan},
               said("the house cannot be put level: its foundation has steps, and what stood on them would "
                    "have to be cut or to be built up"),
               said("take the steps out of this state (gone = true) and state the logs that come under what "
                    "stood on them; or leave out \"levelled\""));
    }

    /// By its level; else as it is stated to be packed up.
    std::optional<double> underside(Index<WallPlace> wall, LogEnd end) const {
        const Course &course = at_.course(wall, 1);
        const double x = at_.shoulder(wall, 1, end);
        if (const auto &level = at_.numbers[wall].front().end(end).level)
            return *level - (course.high(x) - course.low(x)) - made_.zero_found;
        return is_packed(wall, end) ? std::optional(course.low(x)) : std::nullopt;
    }
    bool is_packed(Index<WallPlace> wall, LogEnd end) const {
        const auto &all = at_.made.shell.own_logs;
        return std::ranges::any_of(all, [&](const OwnLog &log) {
            return log.wall == place(wall).name && log.round == 1 && !log.piece &&
                   (end == LogEnd::left ? log.gap_left : log.gap_right);
        });
    }

    void measure_undersides() {
        by_corner_.resize(at_.plan.corners.size());
        if (const auto zero = lowest_level(at_)) made_.zero_found = *zero;
        for (const auto wall : at_.plan.walls.indices())
            for (const LogEnd end : both_ends)
                if (const auto high = underside(wall, end); high && is_outer(wall))
                    by_corner_[corner(wall, end)].push_back({wall, at_.shoulder(wall, 1, end), *high});
        for (const auto wall : at_.plan.walls.indices())
            if (is_outer(wall) && by_corner_[place(wall).start_corner].empty())
                tell_unlevelled(at_.plan.corners[place(wall).start_corner].name);
    }

    void tell_unlevelled(const std::string &name) {
        refuse(corner_place(name),
               said("the house cannot be put level: nothing tells how far it has sunk at corner %1", name),
               said("read the level of the upper edge of a first log there, and its height"));
    }

    Line line(Index<WallPlace> wall) const {
        return through(middle(wall, LogEnd::left), high_[place(wall).start_corner],
                       middle(wall, LogEnd::right), high_[place(wall).end_corner]);
    }

    /// So high that the lower of its two first logs comes to lie on the foundation. A first log is measured
    /// at its shoulder, beside the corner's middle, and what the wall falls by there depends on its other
    /// corner: it is found by steps, each of which leaves a small part of the one before.
    void find_corners() {
        constexpr int most = 100;
        constexpr double done = 1e-12; // mm
        high_.resize(at_.plan.corners.size());
        for (int i = 0; i < most; ++i) {
            double moved = 0;
            for (const auto c : at_.plan.corners.indices()) {
                if (by_corner_[c].empty()) continue;
                double rest = HUGE_VAL;
                for (const Underside &under : by_corner_[c])
                    rest = std::min(rest, under.high - line(under.wall).at(under.x));
                high_[c] += rest;
                moved = std::max(moved, std::abs(rest));
            }
            if (moved < done) break;
        }
        for (const auto wall : at_.plan.walls.indices())
            if (is_outer(wall)) keep(wall, line(wall));
    }

    void keep(Index<WallPlace> wall, const Line &line) {
        made_.walls[place(wall).name] = {line.at(middle(wall, LogEnd::left)),
                                         line.at(middle(wall, LogEnd::right))};
    }

    /// Where a wall's line lies at that corner, once it is known.
    std::optional<double> high_at(Index<WallPlace> wall, Index<CornerPlace> corner) const {
        const auto known = made_.walls.find(place(wall).name);
        const auto meeting = std::ranges::find(place(wall).meetings, corner, &WallMeeting::corner);
        if (known == made_.walls.end() || meeting == place(wall).meetings.end()) return {};
        return through(middle(wall, LogEnd::left), known->second.left, middle(wall, LogEnd::right),
                       known->second.right)
            .at(meeting->x);
    }

    /// A partition goes with the walls that it ends in, for its tails lie in theirs.
    void find_partitions() {
        for (const auto wall : at_.plan.walls.indices()) { // each ends in walls that are stated before it
            if (is_outer(wall)) continue;
            const WallMeeting &from = place(wall).meetings.front(), &to = place(wall).meetings.back();
            const auto left = high_at(from.other, from.corner), right = high_at(to.other, to.corner);
            made_.walls[place(wall).name] = {left.value_or(0), right.value_or(0)};
        }
    }

    /// Walls that cross run on straight on both sides.
    void check_crossings() {
        for (const auto wall : at_.plan.walls.indices())
            for (const WallMeeting &meeting : place(wall).meetings) {
                const auto own = high_at(wall, meeting.corner),
                           other = high_at(meeting.other, meeting.corner);
                if (own && other && meeting.other.at() > wall.at() && std::abs(*own - *other) > hair)
                    tell_crossing(wall, meeting, std::abs(*own - *other));
            }
    }

    void tell_crossing(Index<WallPlace> wall, const WallMeeting &meeting, double apart) {
        refuse(corner_place(at_.plan.corners[meeting.corner].name),
               said("the house cannot be put level: where walls %1 and %2 cross, the one would be lifted %3 "
                    "more than the other, for logs stay straight",
                    place(wall).name, place(meeting.other).name, in_mm(apart)),
               stated_packing);
    }

    /// A partition may have hung lower than the walls that it ends in: all stand on packing over it then.
    void find_zero() {
        double lowest = 0;
        for (const auto wall : at_.plan.walls.indices())
            for (const LogEnd end : both_ends)
                if (const auto high = underside(wall, end)) {
                    const auto &ends = made_.walls[place(wall).name];
                    const Line line = through(middle(wall, LogEnd::left), ends.left,
                                              middle(wall, LogEnd::right), ends.right);
                    lowest = std::min(lowest, *high - line.at(at_.shoulder(wall, 1, end)));
                }
        made_.zero = made_.zero_found + lowest;
    }

    void tell_lifted() {
        double most = 0;
        for (const auto c : at_.plan.corners.indices())
            if (!by_corner_[c].empty()) most = std::max(most, high_[c]);
        for (const auto c : at_.plan.corners.indices()) {
            if (by_corner_[c].empty() || most - high_[c] < 0.5) continue; // mm
            made_.findings.push_back({Weight::note,
                                      "levelled",
                                      corner_place(at_.plan.corners[c].name),
                                      said("the corner is lifted by %1, with every log that ends in it: so "
                                           "far it had sunk below the highest one",
                                           in_mm(most - high_[c])),
                                      {},
                                      ""});
        }
    }

    const Rebuild &at_;
    Settled &made_;
    Indexed<std::vector<Underside>, CornerPlace> by_corner_;
    Indexed<double, CornerPlace> high_; ///< of the foundation as it was found, over its lowest
};

} // namespace

Settled settled(const Shell &measured_on, const Shell &carried, const Record &record) {
    Settled told;
    told.carried = carried;
    MeasuredShell made;
    made.shell = measured_on;
    Rebuild at{record, made, {}, {}, {}, nullptr};
    if (!at.lay_out_anew()) return told; // what is wrong with it is told of the shell itself
    for (const auto step : {set_walls, set_plan, set_sizes}) {
        step(at);
        if (has_errors(made.findings) || !at.lay_out_anew()) return told;
    }
    Settling(at, told).tell();
    return told;
}

} // namespace roundlay
