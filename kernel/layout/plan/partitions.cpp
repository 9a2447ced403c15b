#include "kernel/layout/plan/partitions.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/plan/meetings.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace roundlay {

namespace {

class PartitionPlacer {
  public:
    PartitionPlacer(const Shell &shell, Found<Plan> &plan)
        : shell_(shell), plan_(plan), outer_(plan.walls.size()) {}

    bool place() {
        for (std::size_t i = 0; i < shell_.partitions.size(); ++i)
            if (!start(i)) return false;
        for (std::size_t i = 0; i < shell_.partitions.size(); ++i)
            if (!finish(i)) return false;
        for (std::size_t i = 0; i < shell_.partitions.size(); ++i)
            cross_others(i);
        return true;
    }

  private:
    const WallPlace &wall(Index<WallPlace> i) const { return plan_.walls[i]; }
    Index<WallPlace> index_of(std::size_t partition) const { return Index<WallPlace>(outer_ + partition); }
    WallPlace &partition(std::size_t i) { return plan_.walls[index_of(i)]; }
    static Vec3 centre_line(const WallPlace &w) { return w.frame.origin + (w.thickness / 2) * w.frame.y; }

    bool refuse(std::size_t i, const std::string &code, const std::string &key, Said what,
                std::optional<Said> advice = {}) {
        plan_.findings.push_back({Weight::error, code, wall_place(shell_.partitions[i].name), std::move(what),
                                  std::move(advice), subject("partition", i, key)});
        return false;
    }

    /// Frame and beginning, from the wall it starts in.
    bool start(std::size_t i) {
        const Partition &stated = shell_.partitions[i];
        const auto from = wall_named(plan_, stated.from);
        if (!from)
            return refuse(i, "partition-without-wall", "from",
                          said("it starts in wall %1, which is none of the outside walls or of the "
                               "partitions stated before it",
                               stated.from));
        const WallPlace &f = wall(*from);
        Vec3 d = f.frame.y;
        if (stated.heading) {
            const Vec2 h = heading_vector(*stated.heading);
            d = {h.x, h.y, 0};
        }
        const double toward_inside = dot(d, f.frame.y);
        if (std::abs(toward_inside) < least_sine_between_walls)
            return refuse(i, "corner-not-square", "toward",
                          said("it leaves wall %1 at too sharp an angle for tails", f.name),
                          said("between 30 and 150 degrees can be cut"));
        WallPlace p;
        p.name = stated.name;
        p.thickness = stated.thickness.value_or(shell_.thickness).mm();
        p.frame = {{}, d, {-d.y, d.x, 0}, {0, 0, 1}};
        const Vec3 near_face = centre_line(f) + stated.from_left.mm() * f.frame.x +
                               (f.thickness / 2 / std::abs(toward_inside)) * d;
        p.frame.origin = near_face - (p.thickness / 2) * p.frame.y;
        plan_.walls.push_back(p);
        from_.push_back(*from);
        return true;
    }

    /// How far along `p` its centre line crosses that of `w`.
    static std::optional<double> crossing(const WallPlace &p, const WallPlace &w) {
        const double rate = dot(p.frame.x, w.frame.y);
        if (std::abs(rate) < tolerance::weld) return std::nullopt;
        return (w.thickness / 2 - w.frame.to_local(centre_line(p)).y) / rate;
    }

    bool finish(std::size_t i) {
        const Partition &stated = shell_.partitions[i];
        const auto to = wall_named(plan_, stated.to);
        const Index<WallPlace> own = index_of(i);
        if (!to || *to == own)
            return refuse(i, "partition-without-wall", "to",
                          said("it ends in wall %1, which this shell does not have", stated.to));
        WallPlace &p = partition(i);
        const WallPlace &t = wall(*to);
        const std::optional<double> middle = crossing(p, t);
        const double sharp = std::abs(dot(p.frame.x, t.frame.y));
        if (!middle || sharp < least_sine_between_walls)
            return refuse(i, "corner-not-square", stated.heading ? "toward" : "to",
                          said("it meets wall %1 at too sharp an angle for tails", t.name),
                          said("between 30 and 150 degrees can be cut"));
        p.length = *middle - t.thickness / 2 / sharp;
        if (p.length <= tolerance::clear)
            return refuse(
                i, "partition-leads-away", "to", said("wall %1 does not lie ahead of it", t.name),
                said("walk from wall %1 toward wall %2, or state another wall", stated.from, t.name));
        add_tee(from_[i], own, true);
        add_tee(own, *to, false);
        return true;
    }

    void add_tee(Index<WallPlace> ends, Index<WallPlace> starts, bool at_start) {
        const WallPlace &p = wall(at_start ? starts : ends), &other = wall(at_start ? ends : starts);
        const Vec3 c = centre_line(p) + *crossing(p, other) * p.frame.x;
        plan_.corners.push_back({wall(ends).name + wall(starts).name,
                                 ends,
                                 starts,
                                 false,
                                 {c.x, c.y},
                                 CornerKind::tee,
                                 at_start ? ends : starts});
    }

    /// Walls on the way from one end to the other.
    void cross_others(std::size_t i) {
        const Index<WallPlace> own = index_of(i);
        const WallPlace &p = wall(own);
        for (const auto k : plan_.walls.indices()) {
            const bool met = k == from_[i] || wall(k).name == shell_.partitions[i].to || k == own;
            const bool twice = k.at() >= outer_ && k < own;
            if (met || twice || ends_in(k, own)) continue;
            const std::optional<double> x = crossing(p, wall(k));
            if (!x || *x <= 0 || *x >= p.length) continue;
            const Vec3 c = centre_line(p) + *x * p.frame.x;
            const double there = wall(k).frame.to_local(c).x;
            if (there <= 0 || there >= wall(k).length) continue;
            const auto [first, second] = std::minmax(own, k);
            plan_.corners.push_back({wall(first).name + wall(second).name,
                                     first,
                                     second,
                                     false,
                                     {c.x, c.y},
                                     CornerKind::crossing});
        }
    }

    /// Does partition k start or end in this wall?
    bool ends_in(Index<WallPlace> k, Index<WallPlace> own) const {
        if (k.at() < outer_) return false;
        const std::size_t other = k.at() - outer_;
        return from_[other] == own || shell_.partitions[other].to == wall(own).name;
    }

    const Shell &shell_;
    Found<Plan> &plan_;
    std::size_t outer_;
    std::vector<Index<WallPlace>> from_;
};

} // namespace

bool lay_out_partitions(const Shell &shell, Found<Plan> &plan) {
    return PartitionPlacer(shell, plan).place();
}

} // namespace roundlay
