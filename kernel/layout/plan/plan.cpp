#include "kernel/layout/plan/plan.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/plan/closing_advice.h"
#include "kernel/layout/plan/meetings.h"
#include "kernel/layout/plan/partitions.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// A stated walk may miss its start by this much (rounded figures) before it counts as not closed.
constexpr double closing_error = 0.01;

struct Walk {
    std::vector<Vec2> points; ///< where each wall starts
    Vec2 end;                 ///< where the last one ends
    double doubled_area = 0;  ///< positive when walked counter-clockwise
};

Walk walk(const Shell &shell) {
    Walk w;
    Vec2 at;
    for (const Wall &wall : shell.walls) {
        w.points.push_back(at);
        at = at + wall.length.mm() * heading_vector(wall.heading);
    }
    w.end = at;
    for (std::size_t i = 0; i < w.points.size(); ++i)
        w.doubled_area += cross(w.points[i], w.points[(i + 1) % w.points.size()]);
    return w;
}

/// Where the walk ends, from where it began; nothing where it closes.
std::optional<Said> misses_by(Vec2 end) {
    const LengthAmount x = in_mm(std::abs(end.x)), y = in_mm(std::abs(end.y));
    const bool off_x = x.mm > closing_error, off_y = y.mm > closing_error;
    if (off_x && off_y)
        return end.x > 0
                   ? (end.y > 0 ? said("%1 east and %2 north", x, y) : said("%1 east and %2 south", x, y))
                   : (end.y > 0 ? said("%1 west and %2 north", x, y) : said("%1 west and %2 south", x, y));
    if (off_x) return end.x > 0 ? said("%1 east", x) : said("%1 west", x);
    if (off_y) return end.y > 0 ? said("%1 north", y) : said("%1 south", y);
    return {};
}

bool check_turn(const Shell &shell, std::size_t i, Findings &findings) {
    const std::size_t next = (i + 1) % shell.walls.size();
    const Wall &wall = shell.walls[i], &after = shell.walls[next];
    if (std::abs(cross(heading_vector(wall.heading), heading_vector(after.heading))) >=
        least_sine_between_walls)
        return true;
    const bool straight =
        std::abs(cross(heading_vector(wall.heading), heading_vector(after.heading))) < tolerance::weld;
    findings.push_back(
        {Weight::error, "corner-not-square", corner_place(wall.name + after.name),
         straight ? said("walls %1 and %2 run in one line", wall.name, after.name)
                  : said("walls %1 and %2 turn too little or too sharply for tails", wall.name, after.name),
         straight ? said("state them as one wall or turn the second one")
                  : said("a corner between 30 and 150 degrees can be cut, best a right angle"),
         subject("wall", next, "toward")});
    return false;
}

bool check_walls(const Shell &shell, Findings &findings) {
    if (shell.walls.size() < 4) {
        findings.push_back({Weight::error,
                            "too-few-walls",
                            {about::All::plan},
                            said("a shell needs at least four walls, %1 are stated", shell.walls.size()),
                            said("walk once round the outside, one [[wall]] a side"),
                            "wall"});
        return false;
    }
    bool good = true;
    for (std::size_t i = 0; i < shell.walls.size(); ++i)
        good = check_turn(shell, i, findings) && good;
    return good;
}

struct Segment {
    Vec2 a, b;
};

/// Do two segments touch anywhere? Segments that are parallel to the axes meet exactly where their boxes do.
bool meet(const Segment &s, const Segment &t) {
    const auto apart = [](double a0, double a1, double b0, double b1) {
        return std::max(std::min(a0, a1), std::min(b0, b1)) > std::min(std::max(a0, a1), std::max(b0, b1));
    };
    if (apart(s.a.x, s.b.x, t.a.x, t.b.x) || apart(s.a.y, s.b.y, t.a.y, t.b.y)) return false;
    const auto one_side = [](const Segment &line, const Segment &other) {
        const double a = cross(line.b - line.a, other.a - line.a),
                     b = cross(line.b - line.a, other.b - line.a);
        return (a > 0 && b > 0) || (a < 0 && b < 0);
    };
    return !one_side(s, t) && !one_side(t, s);
}

Segment segment(const Walk &w, std::size_t i) {
    return {w.points[i], w.points[(i + 1) % w.points.size()]};
}

bool check_simple(const Shell &shell, const Walk &w, Findings &findings) {
    const std::size_t n = w.points.size();
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 2; j < n; ++j) {
            if (i == 0 && j == n - 1) continue;
            if (!meet(segment(w, i), segment(w, j))) continue;
            findings.push_back({Weight::error,
                                "plan-crosses-itself",
                                {about::Walls{shell.walls[i].name, shell.walls[j].name}},
                                said("they cross or touch"),
                                said("the outside must run once round without meeting itself"),
                                subject("wall", j, "length")});
            return false;
        }
    return true;
}

bool can_be_walked(const Shell &shell) {
    Findings none;
    const Walk w = walk(shell);
    return !misses_by(w.end) && check_simple(shell, w, none);
}

bool check_closed(const Shell &shell, const Walk &w, Findings &findings) {
    const auto miss = misses_by(w.end);
    if (!miss) return true;
    const auto advice = closing_advice(shell, can_be_walked);
    findings.push_back({Weight::error, "plan-not-closed", wall_place(shell.walls.back().name),
                        said("the walk round the outside ends %1 of where it began", *miss),
                        advice ? *advice : said("the walls' lengths must bring it back"),
                        subject("wall", shell.walls.size() - 1, "length")});
    return false;
}

WallPlace place(const Shell &shell, const Walk &w, std::size_t i) {
    const bool ccw = w.doubled_area > 0;
    const Segment s = segment(w, i);
    Vec2 d = heading_vector(shell.walls[i].heading);
    if (!ccw) d = -1.0 * d; // seen from outside the walk runs from right to left
    const Vec2 from = ccw ? s.a : s.b;
    WallPlace p;
    p.name = shell.walls[i].name;
    p.frame = {{from.x, from.y, 0}, {d.x, d.y, 0}, {-d.y, d.x, 0}, {0, 0, 1}};
    p.length = shell.walls[i].length.mm();
    p.thickness = shell.walls[i].thickness.value_or(shell.thickness).mm();
    return p;
}

/// The corner at which `before` ends and `after` starts, seen from outside.
CornerPlace corner_between(const Plan &plan, Index<WallPlace> before, Index<WallPlace> after) {
    const WallPlace &p = plan.walls[before];
    const WallPlace &q = plan.walls[after];
    // The centre lines run half a thickness inside the outside faces, which meet in the origin of `after`.
    const Vec3 o = q.frame.origin + (q.thickness / 2 / dot(p.frame.x, q.frame.y)) * p.frame.x +
                   (p.thickness / 2 / dot(q.frame.x, p.frame.y)) * q.frame.x;
    const bool reentrant = dot(p.frame.x, q.frame.y) > 0; // the next wall turns away from the inside
    return {p.name + q.name, before, after, reentrant, {o.x, o.y}};
}

void place_corners(bool ccw, Plan &plan) {
    const std::size_t n = plan.walls.size();
    for (std::size_t k = 0; k < n; ++k) {
        const Index<WallPlace> before(ccw ? k : n - 1 - k);
        const Index<WallPlace> after(ccw ? (k + 1) % n : (before.at() + n - 1) % n);
        plan.walls[before].end_corner = plan.walls[after].start_corner =
            plan.corners.push_back(corner_between(plan, before, after));
    }
}

} // namespace

Found<Plan> lay_out_plan(const Shell &shell) {
    Found<Plan> plan;
    Findings &findings = plan.findings;
    if (!check_walls(shell, findings)) return plan;
    const Walk w = walk(shell);
    if (!check_closed(shell, w, findings) || !check_simple(shell, w, findings)) return plan;
    for (std::size_t i = 0; i < shell.walls.size(); ++i)
        plan.walls.push_back(place(shell, w, i));
    place_corners(w.doubled_area > 0, plan);
    const bool good = lay_out_partitions(shell, plan) && note_meetings(shell, plan) &&
                      check_room_between(shell, plan) && choose_starts(shell, plan);
    if (good) return plan;
    plan.walls.clear();
    plan.corners.clear();
    return plan;
}

} // namespace roundlay
