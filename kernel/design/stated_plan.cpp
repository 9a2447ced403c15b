#include "kernel/design/stated_plan.h"

#include "kernel/layout/plan/meetings.h"
#include "kernel/layout/plan/plan.h"

#include <cmath>

namespace roundlay {

namespace {

constexpr double stub = 1000; // mm of a partition whose end is not known

Vec3 level(Vec2 p) {
    return {p.x, p.y, 0};
}

double doubled_area(const std::vector<Vec2> &points) {
    double area = 0;
    for (std::size_t i = 0; i < points.size(); ++i)
        area += cross(points[i], points[(i + 1) % points.size()]);
    return area;
}

void walk(const Shell &shell, Layout &plan) {
    std::vector<Vec2> points{{}};
    for (const Wall &wall : shell.walls)
        points.push_back(points.back() + wall.length.mm() * heading_vector(wall.heading));
    const bool ccw = doubled_area(points) >= 0;
    for (std::size_t i = 0; i < shell.walls.size(); ++i) {
        const Wall &stated = shell.walls[i];
        // Seen from outside a clockwise walk runs from right to left.
        const Vec2 along = (ccw ? 1.0 : -1.0) * heading_vector(stated.heading);
        WallPlace w;
        w.name = stated.name;
        w.length = stated.length.mm();
        w.thickness = stated.thickness.value_or(shell.thickness).mm();
        w.frame = {level(points[ccw ? i : i + 1]), level(along), {-along.y, along.x, 0}, {0, 0, 1}};
        plan.walls.push_back(w);
    }
}

Vec2 centre_line(const WallPlace &w) {
    const Vec3 p = w.frame.origin + (w.thickness / 2) * w.frame.y;
    return {p.x, p.y};
}

/// From where a partition starts to the near face of the wall that it is said to end in.
double way_to(const WallPlace &from, const Layout &plan, const std::string &to) {
    const auto end = wall_named(plan, to);
    if (!end) return stub;
    const WallPlace &w = plan.walls[*end];
    const double rate = dot(from.frame.x, w.frame.y);
    if (std::abs(rate) < least_sine_between_walls) return stub;
    const double off = w.frame.to_local(level(centre_line(from))).y;
    const double length = ((rate < 0 ? w.thickness : 0) - off) / rate;
    return length > 0 ? length : stub;
}

void add_partition(const Shell &shell, const Partition &stated, Layout &plan) {
    const auto start = wall_named(plan, stated.from);
    WallPlace w;
    w.name = stated.name;
    w.thickness = stated.thickness.value_or(shell.thickness).mm();
    if (!start) { // nobody can say where: a place without length
        plan.walls.push_back(w);
        return;
    }
    const WallPlace &f = plan.walls[*start];
    const Vec3 along = stated.heading ? level(heading_vector(*stated.heading)) : f.frame.y;
    w.frame = {{}, along, {-along.y, along.x, 0}, {0, 0, 1}};
    const Vec3 face = f.frame.to_world({stated.from_left.mm(), f.thickness, 0});
    w.frame.origin = face - (w.thickness / 2) * w.frame.y;
    w.length = way_to(w, plan, stated.to);
    plan.walls.push_back(w);
}

/// As far as it is stated.
void state_heights(const Rounds &rounds, Layout &plan) {
    plan.rounds = rounds.count.value_or(0);
    plan.pitch = rounds.pitch.value_or(Length()).mm();
    plan.height = rounds.height ? rounds.height->mm() : plan.rounds * plan.pitch;
}

void take(Found<Plan> found, Layout &plan) {
    static_cast<Plan &>(plan) = static_cast<const Plan &>(found);
    plan.findings = std::move(found.findings);
}

} // namespace

Layout stated_plan(const Shell &shell) {
    Layout plan;
    plan.name = shell.name;
    state_heights(shell.rounds, plan);
    take(lay_out_plan(shell), plan);
    if (plan.walls.empty() && !shell.partitions.empty()) {
        Shell outside = shell;
        outside.partitions.clear();
        take(lay_out_plan(outside), plan);
    } else if (!plan.walls.empty()) {
        return plan;
    }
    if (plan.walls.empty()) walk(shell, plan);
    for (const Partition &partition : shell.partitions)
        add_partition(shell, partition, plan);
    return plan;
}

} // namespace roundlay
