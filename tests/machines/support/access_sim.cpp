#include "tests/machines/support/access_sim.h"

#include <algorithm>
#include <cmath>

namespace access_sim {

namespace {

using namespace roundlay;
using machines::Tool;
using machines::ToolShape;

constexpr double nowhere = 1e9;

Vec3 way_of(LogFace from) {
    switch (from) {
    case LogFace::top:
        return {0, 0, 1};
    case LogFace::under:
        return {0, 0, -1};
    case LogFace::outside:
        return {0, -1, 0};
    case LogFace::inside:
        return {0, 1, 0};
    case LogFace::datum_end:
        return {-1, 0, 0};
    case LogFace::far_end:
        break;
    }
    return {1, 0, 0};
}

/// From where to where a straight line runs inside something convex.
struct Run {
    double from = -nowhere, to = nowhere;

    bool none() const { return from >= to; }
    /// Where f(at) = a + b * at is not above 0.
    void keep(double a, double b) {
        if (std::abs(b) < 1e-12) {
            if (a > 0) to = from;
        } else if (b > 0)
            to = std::min(to, -a / b);
        else
            from = std::max(from, -a / b);
    }
    /// Where a + b * at + c * at * at is not above 0.
    void keep_round(double a, double b, double c) {
        if (c < 1e-12) return keep(a, b);
        const double under = b * b - 4 * a * c;
        if (under <= 0) {
            to = from;
            return;
        }
        from = std::max(from, (-b - std::sqrt(under)) / (2 * c));
        to = std::min(to, (-b + std::sqrt(under)) / (2 * c));
    }
};

/// The stock, and what of it is to be taken.
class Wood {
  public:
    Wood(const machining::Operation &operation, const Stock &stock) : o_(operation), stock_(stock) {}

    Run stock_on(Vec3 at, Vec3 way) const {
        Run run;
        const Vec3 q = stock_.frame.to_local(at), d = stock_.frame.direction_to_local(way);
        run.keep(-q.x, -d.x), run.keep(q.x - stock_.size.length, d.x);
        run.keep(-q.y, -d.y), run.keep(q.y - stock_.size.width, d.y);
        run.keep(-q.z, -d.z), run.keep(q.z - stock_.size.height, d.z);
        return run;
    }

    Run taken_on(Vec3 at, Vec3 way) const {
        Run run;
        for (const auto &side : o_.sides)
            run.keep(side.plane.distance(at), dot(side.plane.normal, way));
        if (o_.bore) keep_bore(run, at, way);
        return o_.round ? in_round(run, at, way) : run;
    }

    /// How deep within all that bounds what is to be taken; below 0 outside.
    double depth_within(Vec3 p) const {
        double least = nowhere;
        for (const auto &side : o_.sides)
            least = std::min(least, -side.plane.distance(p));
        if (o_.round) {
            const auto &r = *o_.round;
            const double off = std::abs(dot(p - r.at, across())), up = p.z - r.at.z;
            least = std::min(least, r.half_width - off);
            if (up > 0) least = std::min(least, r.radius - std::hypot(off, up));
        }
        if (o_.bore) {
            const Vec3 from = p - o_.bore->entry;
            const double along = dot(from, o_.bore->along);
            least = std::min(least, o_.bore->diameter / 2 - length(from - along * o_.bore->along));
            if (!o_.bore->through) least = std::min(least, o_.bore->depth - along);
        }
        return least;
    }

    bool in_stock(Vec3 p) const {
        const Vec3 q = stock_.frame.to_local(p);
        return q.x > 0 && q.y > 0 && q.z > 0 && q.x < stock_.size.length && q.y < stock_.size.width &&
               q.z < stock_.size.height;
    }

  private:
    Vec3 across() const { return {-o_.round->along.y, o_.round->along.x, 0}; }

    void keep_bore(Run &run, Vec3 at, Vec3 way) const {
        const auto &bore = *o_.bore;
        const Vec3 from = at - bore.entry;
        const Vec3 p = from - dot(from, bore.along) * bore.along, d = way - dot(way, bore.along) * bore.along;
        run.keep_round(dot(p, p) - bore.diameter * bore.diameter / 4, 2 * dot(p, d), dot(d, d));
        if (!bore.through) run.keep(dot(from, bore.along) - bore.depth, dot(way, bore.along));
    }

    /// Below the axis between two upright planes, over it in the cylinder: both together are convex.
    Run in_round(Run run, Vec3 at, Vec3 way) const {
        const auto &r = *o_.round;
        const double off = dot(at - r.at, across()), more = dot(way, across());
        run.keep(off - r.half_width, more), run.keep(-off - r.half_width, -more);
        const double up = at.z - r.at.z;
        Run below = run, over = run;
        below.keep(up, way.z), over.keep(-up, -way.z);
        over.keep_round(off * off + up * up - r.radius * r.radius, 2 * (off * more + up * way.z),
                        more * more + way.z * way.z);
        if (below.none()) return over;
        if (over.none()) return below;
        return {std::min(below.from, over.from), std::max(below.to, over.to)};
    }

    const machining::Operation &o_;
    const Stock &stock_;
};

/// One place of a tool's end: so far beside its middle, and so much over its tip.
struct Part {
    int u = 0, v = 0;
    double up = 0;
};

/// The landscape along one way of the tool, and what the tool leaves of it.
class Landscape {
  public:
    Landscape(const Wood &wood, const machining::Operation &operation, const Tool &tool, const Trial &trial,
              Vec3 axis, Vec3 bar)
        : wood_(wood), tool_(tool), trial_(trial), axis_(axis) {
        u_ = unit(bar - dot(bar, axis) * axis), v_ = cross(axis, u_);
        lay_grid(operation);
        see();
    }

    /// Lowers `left`, the height to which wood stays, by what the tool takes.
    void cut() {
        const double spare = trial_.spared * cell_;
        const std::vector<Part> against = parts(std::max(0.0, 1 - spare / tool_.diameter * 2)),
                                takes = parts(1);
        std::vector<double> tip(wood_top_.size(), nowhere);
        const int edge = reach_of(takes);
        for (int v = edge; v < nv_ - edge; ++v)
            for (int u = edge; u < nu_ - edge; ++u)
                tip[index(u, v)] = lowest(u, v, against, takes);
        left_.assign(wood_top_.size(), nowhere);
        for (int v = edge; v < nv_ - edge; ++v)
            for (int u = edge; u < nu_ - edge; ++u)
                if (const double at = tip[index(u, v)]; at < nowhere)
                    for (const Part &part : takes) {
                        double &left = left_[index(u + part.u, v + part.v)];
                        left = std::min(left, at + part.up);
                    }
    }

    double cell() const { return cell_; }

    bool takes(Vec3 p) const {
        const int u = static_cast<int>(std::lround((dot(p, u_) - low_u_) / cell_)),
                  v = static_cast<int>(std::lround((dot(p, v_) - low_v_) / cell_));
        if (u < 0 || v < 0 || u >= nu_ || v >= nv_) return false;
        return dot(p, axis_) > left_[index(u, v)] - 0.1;
    }

  private:
    std::size_t index(int u, int v) const { return static_cast<std::size_t>(v * nu_ + u); }

    void lay_grid(const machining::Operation &operation) {
        constexpr double most_places = 12000;
        const double wide = 1.05 * std::max(tool_.diameter, tool_.thickness);
        double high_u = -nowhere, high_v = -nowhere;
        low_u_ = low_v_ = nowhere;
        for (const double x : {operation.box.low.x, operation.box.high.x})
            for (const double y : {operation.box.low.y, operation.box.high.y})
                for (const double z : {operation.box.low.z, operation.box.high.z}) {
                    const Vec3 p{x, y, z};
                    low_u_ = std::min(low_u_, dot(p, u_)), high_u = std::max(high_u, dot(p, u_));
                    low_v_ = std::min(low_v_, dot(p, v_)), high_v = std::max(high_v, dot(p, v_));
                }
        low_u_ -= wide, high_u += wide, low_v_ -= wide, high_v += wide;
        cell_ = std::max(trial_.least_cell, std::sqrt((high_u - low_u_) * (high_v - low_v_) / most_places));
        if (operation.bore) { // its axis is one of the places: a drill goes in there and nowhere else
            cell_ = std::min(cell_, operation.bore->diameter / 8);
            low_u_ = dot(operation.bore->entry, u_) -
                     std::ceil((dot(operation.bore->entry, u_) - low_u_) / cell_) * cell_;
            low_v_ = dot(operation.bore->entry, v_) -
                     std::ceil((dot(operation.bore->entry, v_) - low_v_) / cell_) * cell_;
        }
        nu_ = static_cast<int>(std::ceil((high_u - low_u_) / cell_)) + 1;
        nv_ = static_cast<int>(std::ceil((high_v - low_v_) / cell_)) + 1;
    }

    void see() {
        const auto places = static_cast<std::size_t>(nu_ * nv_);
        wood_top_.assign(places, -nowhere), stock_top_.assign(places, -nowhere);
        for (int v = 0; v < nv_; ++v)
            for (int u = 0; u < nu_; ++u) {
                const Vec3 at = (low_u_ + u * cell_) * u_ + (low_v_ + v * cell_) * v_;
                const Run stock = wood_.stock_on(at, axis_), taken = wood_.taken_on(at, axis_);
                if (stock.none()) continue;
                stock_top_[index(u, v)] = stock.to;
                double top = stock.to; // wood over it: no way in
                if (!taken.none() && taken.to > stock.to - 1e-6)
                    top = taken.from > stock.from ? std::min(taken.from, stock.to) : -nowhere;
                wood_top_[index(u, v)] = top;
            }
    }

    /// Of the tool made thinner by that factor.
    std::vector<Part> parts(double factor) const {
        std::vector<Part> all;
        const double r = tool_.diameter / 2;
        const bool chain = tool_.shape == ToolShape::chain;
        const double half_v = chain ? tool_.thickness / 2 : r;
        const int nu = static_cast<int>(r / cell_), nv = static_cast<int>(half_v / cell_);
        for (int v = -nv; v <= nv; ++v)
            for (int u = -nu; u <= nu; ++u) {
                const double du = u * cell_, dv = v * cell_;
                if (std::abs(du) > factor * r + 1e-9 || std::abs(dv) > factor * half_v + 1e-9) continue;
                const double off = chain ? std::abs(du) : std::hypot(du, dv);
                if (off > factor * r + 1e-9) continue;
                const bool round = chain || tool_.shape == ToolShape::ball;
                all.push_back({u, v, round ? r - std::sqrt(std::max(0.0, r * r - off * off)) : 0});
            }
        return all;
    }

    static int reach_of(const std::vector<Part> &parts) {
        int most = 0;
        for (const Part &part : parts)
            most = std::max({most, std::abs(part.u), std::abs(part.v)});
        return most;
    }

    /// So low that no part of it is in wood that stays, and its holder over all wood.
    double lowest(int u, int v, const std::vector<Part> &against, const std::vector<Part> &whole) const {
        double tip = -nowhere;
        for (const Part &part : against)
            tip = std::max(tip, wood_top_[index(u + part.u, v + part.v)] - part.up);
        if (trial_.right_through) return tip > -nowhere / 2 ? nowhere : tip;
        double over = -nowhere;
        for (const Part &part : whole)
            over = std::max(over, stock_top_[index(u + part.u, v + part.v)]);
        return std::max(tip, over - tool_.reach - 0.5 * cell_);
    }

    const Wood &wood_;
    const Tool &tool_;
    const Trial &trial_;
    Vec3 axis_, u_, v_;
    double low_u_ = 0, low_v_ = 0, cell_ = 1;
    int nu_ = 0, nv_ = 0;
    std::vector<double> wood_top_, stock_top_, left_;
};

/// Straight in, and so that its end or its flank lies on a side, or its axis along the edge of two or square
/// to it.
std::vector<Vec3> axes_of(const machining::Operation &operation, Vec3 way, double most_tilt) {
    std::vector<Vec3> axes{way};
    const auto add = [&](Vec3 axis) {
        const double size = length(axis);
        if (size < 1e-6) return;
        axis = 1 / size * axis;
        if (dot(axis, way) < 0) axis = -axis;
        if (std::acos(std::min(1.0, dot(axis, way))) * 180 / M_PI > most_tilt + 1e-6) return;
        if (std::ranges::none_of(axes, [&](Vec3 o) { return length(o - axis) < 1e-6; })) axes.push_back(axis);
    };
    for (const auto &side : operation.sides) {
        const Vec3 n = side.plane.normal;
        add(n);
        add(way - dot(way, n) * n);
        for (const auto &other : operation.sides) {
            const Vec3 edge = cross(n, other.plane.normal);
            add(edge), add(cross(n, edge));
        }
    }
    return axes;
}

/// The cells of a box, of that size or larger.
template <typename Do> double each_cell(const Box3 &box, double least_cell, Do &&run) {
    constexpr double most_cells = 40000;
    const Vec3 size = box.high - box.low;
    const double cell = std::max(least_cell, std::cbrt(size.x * size.y * size.z / most_cells));
    for (double z = box.low.z + cell / 2; z < box.high.z; z += cell)
        for (double y = box.low.y + cell / 2; y < box.high.y; y += cell)
            for (double x = box.low.x + cell / 2; x < box.high.x; x += cell)
                run(Vec3{x, y, z});
    return cell;
}

} // namespace

Left left_by(const machining::Operation &operation, const Stock &stock, const Tool &tool,
             const Trial &trial) {
    const Wood wood(operation, stock);
    std::vector<Landscape> all;
    for (const Vec3 axis : axes_of(operation, way_of(trial.from), trial.most_tilt))
        for (const Vec3 bar : {Vec3{1, 0, 0}, Vec3{0, 1, 0}, Vec3{0, 0, 1}}) {
            if (std::abs(dot(bar, axis)) > 0.8) continue;
            all.emplace_back(wood, operation, tool, trial, axis, bar);
            all.back().cut();
            if (tool.shape != ToolShape::chain) break; // the same all round
        }
    Left left;
    double least_cell = trial.least_cell;
    if (operation.bore) least_cell = std::max(1.0, std::min(least_cell, operation.bore->diameter / 8));
    std::size_t deep_cells = 0, cells = 0, stays = 0;
    std::vector<Vec3> places;
    const double edge = each_cell(operation.box, least_cell, [&](Vec3 p) {
        if (wood.in_stock(p) && wood.depth_within(p) >= 0) places.push_back(p);
    });
    left.cell = edge;
    for (const Landscape &each : all)
        left.cell = std::max(left.cell, each.cell());
    for (const Vec3 p : places) {
        const bool taken = std::ranges::any_of(all, [&](const Landscape &each) { return each.takes(p); });
        const bool deep = wood.depth_within(p) >= 1.2 * left.cell;
        ++cells, stays += taken ? 0 : 1;
        deep_cells += deep ? 1 : 0, left.stays += deep && !taken ? 1 : 0;
    }
    const double size = edge * edge * edge;
    left.deep = deep_cells, left.cells = cells;
    left.volume = static_cast<double>(stays) * size, left.whole = static_cast<double>(cells) * size;
    return left;
}

Sawn sawn(const machining::Operation &operation, const Stock &stock, const machines::Saw &saw, LogFace from) {
    const Wood wood(operation, stock);
    const Vec3 way = way_of(from), n = operation.sides.front().plane.normal;
    const Vec3 down = dot(way, n) * n - way; // in the plane, away from where it comes from
    const bool tilts = std::asin(std::min(1.0, std::abs(dot(way, n)))) * 180 / M_PI <= saw.tilt + 1e-6;
    Sawn all;
    each_cell(operation.box, 2, [&](Vec3 p) {
        const Vec3 on = p - operation.sides.front().plane.distance(p) * n;
        if (length(on - p) > 2 || !wood.in_stock(on)) return;
        ++all.places;
        if (!tilts || length(down) < 1e-9) {
            ++all.missed;
            return;
        }
        // Back along the blade to the face of the stock that it comes in at.
        double out = 0;
        for (const double x : {0.0, stock.size.length})
            for (const double y : {0.0, stock.size.width})
                for (const double z : {0.0, stock.size.height})
                    out = std::max(out, dot(stock.frame.to_world({x, y, z}) - on, way));
        if (out / length(down) > saw.depth) ++all.missed;
    });
    return all;
}

} // namespace access_sim
