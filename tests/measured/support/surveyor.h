// A house that is surveyed by the layout itself: no two logs alike, no opening where it was drawn.
#pragma once

#include "kernel/layout/corners/corners.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/record/record.h"
#include "tests/measured/support/noted.h"

#include <rapidcheck.h>

#include <algorithm>
#include <functional>
#include <string>
#include <utility>

namespace roundlay::test {

/// A number between the two, to a tenth of a millimetre.
inline double drawn(double low, double high) {
    return *rc::gen::inRange(int(low * 10), int(high * 10) + 1) / 10.0;
}

/// The stages that a survey measures.
struct House {
    explicit House(const Shell &stated) : shell(stated) {
        plan = lay_out_plan(shell);
        if (stand(plan)) courses = lay_out_courses(shell, plan);
        if (!stand(plan, courses)) return;
        corners = lay_out_corners(shell, plan, lay_out_steps(shell, plan, courses), courses);
        stands = stand(corners);
    }

    double shoulder(Index<WallPlace> wall, int round, LogEnd end) const {
        const std::size_t m = end == LogEnd::left ? 0 : plan.walls[wall].meetings.size() - 1;
        return reach_of(shell, plan, wall, round, m).shoulder;
    }

    Shell shell;
    Found<Plan> plan;
    Found<Courses> courses;
    Found<Corners> corners;
    bool stands = false;
};

/// Built by eye: each of its edges a little off. None lies under the lowest log, which is packed up to 20 mm.
inline void shift(Opening &opening) {
    opening.from_left = std::max(Length(), opening.from_left + Length::mm(drawn(-20, 20)));
    opening.width = opening.width + Length::mm(drawn(-20, 20));
    opening.sill = std::max(Length::mm(20), opening.sill + Length::mm(drawn(-10, 10)));
    opening.height = opening.height + Length::mm(drawn(-10, 10));
}

/// No two logs alike: heights, widths, gaps, tails, ends; openings a little off.
inline Shell jittered(const Shell &base, const House &house) {
    Shell next = base;
    for (const auto w : house.plan.walls.indices())
        for (const Course &c : house.courses.logs[w]) {
            OwnLog log;
            log.wall = house.plan.walls[w].name, log.round = c.round;
            const double left = c.datum.high - c.datum.low, right = c.far.high - c.far.low;
            log.sizes.butt = *rc::gen::arbitrary<bool>() ? LogEnd::left : LogEnd::right;
            log.sizes.butt_height =
                Length::mm((*log.sizes.butt == LogEnd::left ? left : right) + drawn(-6, 6));
            log.sizes.tip_height =
                Length::mm((*log.sizes.butt == LogEnd::left ? right : left) + drawn(-6, 6));
            const double thick = house.plan.walls[w].thickness;
            log.sizes.butt_width = Length::mm(thick - drawn(0, 10));
            log.sizes.tip_width = Length::mm(thick - drawn(0, 10));
            log.gap_left = Length::mm(drawn(0, 20));
            // Packing that slopes under its own log's lowest point is none: the foundation is told from
            // there.
            log.gap_right = c.round == 1 ? log.gap_left : Length::mm(drawn(0, 20));
            for (const LogEnd end : {LogEnd::left, LogEnd::right})
                if (*rc::gen::arbitrary<bool>())
                    log.tails.push_back({end, Slope::rise_per_run(drawn(0, 1.5) / 10),
                                         Slope::rise_per_run(drawn(-1.5, 0) / 10), std::nullopt});
            std::erase_if(next.own_logs, [&](const OwnLog &other) {
                return other.wall == log.wall && other.round == log.round && !other.piece;
            });
            next.own_logs.push_back(log);
        }
    for (Opening &opening : next.openings)
        shift(opening);
    return next;
}

using Noise = std::function<NotedLength(double)>;

/// Read off within two millimetres, or not at all.
inline NotedLength roughly(double mm) {
    return *rc::gen::inRange(0, 6) == 0 ? NotedLength() : noted(mm + drawn(-2, 2));
}

class Surveyor {
  public:
    Surveyor(const House &house, Noise noise) : house_(house), noise_(std::move(noise)) {}

    Record record() const {
        Record all;
        for (const auto w : house_.plan.walls.indices())
            for (const Course &c : house_.courses.logs[w])
                all.logs.push_back(log(w, c));
        for (std::size_t i = 0; i < house_.shell.openings.size(); ++i)
            all.openings.push_back(opening(i));
        return all;
    }

  private:
    FoundLog log(Index<WallPlace> w, const Course &c) const {
        const WallPlace &wall = house_.plan.walls[w];
        FoundLog found;
        found.tag = "log " + std::to_string(c.round) + " of " + wall.name;
        found.place = {wall.name, c.round, {}};
        found.zero = house_.plan.corners[wall.start_corner].name;
        found.butt = house_.plan.corners[c.butt_at_datum ? wall.start_corner : wall.end_corner].name;
        found.ends = {end(w, c, LogEnd::left), end(w, c, LogEnd::right)};
        if (c.round > 1)
            for (const double part : {0.3, 0.7})
                found.stations.push_back(station(w, c, part));
        return found;
    }

    /// From either end of its wall.
    RecordedOpening opening(std::size_t i) const {
        const Opening &is = house_.shell.openings[i];
        const WallPlace &wall = house_.plan.walls[*wall_named(house_.plan, is.wall)];
        const bool from_left = *rc::gen::arbitrary<bool>();
        const double left = is.from_left.mm(), right = (is.from_left + is.width).mm();
        const double near = from_left ? left : wall.length - right,
                     far = from_left ? right : wall.length - left;
        RecordedOpening found;
        found.name = name_of(house_.shell, i);
        found.wall = is.wall;
        found.zero = house_.plan.corners[from_left ? wall.start_corner : wall.end_corner].name;
        found.near_at_sill = noise_(near), found.near_at_head = noise_(near);
        found.far_at_sill = noise_(far), found.far_at_head = noise_(far);
        found.width = noise_(is.width.mm()), found.height = noise_(is.height.mm());
        found.sill = noise_(is.sill.mm() - 1234), found.head = noise_((is.sill + is.height).mm() - 1234);
        return found;
    }

    FoundStation station(Index<WallPlace> w, const Course &c, double part) const {
        const double x = c.x_datum + part * (c.x_far - c.x_datum);
        FoundStation s;
        s.at = noted(x - c.x_datum);
        s.gap_below = noise_(c.low(x) - in_round(house_.courses.logs[w], c.round - 1).high(x));
        return s;
    }

    FoundEnd end(Index<WallPlace> w, const Course &c, LogEnd at) const {
        const WallPlace &wall = house_.plan.walls[w];
        const std::size_t m = at == LogEnd::left ? 0 : wall.meetings.size() - 1;
        const double x = house_.shoulder(w, c.round, at);
        FoundEnd end;
        end.corner = house_.plan.corners[wall.meetings[m].corner].name;
        end.height = noise_(c.high(x) - c.low(x));
        end.width = noise_(c.width(x));
        end.overhang =
            noted(notch_at(house_.shell, house_.plan, wall.meetings[m].corner, w, c.round).overhang.mm());
        end.level = noise_(c.high(x) - 1234);
        const EndNotch &notch = house_.corners.notches[w][m][static_cast<std::size_t>(c.round - 1)];
        if (notch.top && !notch.butts) measure_tail(wall, m, c, notch, at, end);
        return end;
    }

    /// Between its two seams, or over its body where nothing lies under it.
    void measure_tail(const WallPlace &wall, std::size_t m, const Course &c, const EndNotch &notch, LogEnd at,
                      FoundEnd &end) const {
        const WallMeeting &meeting = wall.meetings[m];
        const double away = at == LogEnd::left ? -1 : 1, run = (meeting.high - meeting.low) / 2;
        const auto height = [&](bool tip, bool outside) {
            // Both faces of the log, both faces of the crossing one: the corners of a parallelogram.
            const double y = wall.thickness / 2 * (outside ? -1 : 1);
            const double sx = meeting.x + (tip ? 1 : -1) * away * run + meeting.skew * y;
            const Vec3 p = wall.frame.to_world({sx, y + wall.thickness / 2, 0});
            const double low = notch.under ? notch.under->height_at(p.x, p.y) : c.at(meeting.x).low;
            return noise_(notch.top->height_at(p.x, p.y) - low);
        };
        end.shoulder_outside = height(false, true), end.shoulder_inside = height(false, false);
        end.end_outside = height(true, true), end.end_inside = height(true, false);
    }

    const House &house_;
    Noise noise_;
};

} // namespace roundlay::test
