#include "tests/machines/support/access_sim.h"

#include <algorithm>
#include <cmath>

namespace access_sim {

namespace {

using namespace roundlay;
using machines::Tool;
using machines::ToolShape;

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

class Grid {
  public:
    Grid(const machining::Operation &operation, const Stock &stock, const Tool &tool, double least_cell,
         double spared)
        : spared_(spared), o_(operation), stock_(stock), tool_(tool), low_(operation.box.low),
          high_(operation.box.high) {
        constexpr double most_cells = 40000;
        cell_ = std::max(
            least_cell, std::cbrt((high_.x - low_.x) * (high_.y - low_.y) * (high_.z - low_.z) / most_cells));
        if (operation.bore) cell_ = std::max(least_cell, operation.bore->diameter / 8);
        nx_ = count(low_.x, high_.x), ny_ = count(low_.y, high_.y), nz_ = count(low_.z, high_.z);
        const auto cells = static_cast<std::size_t>(nx_ * ny_ * nz_);
        wanted_.assign(cells, 0), taken_.assign(cells, 0);
        each([&](std::size_t i, Vec3 p) { wanted_[i] = in_stock(p, 0) && depth_within(p) >= 0; });
    }

    void take_along(Vec3 axis, bool right_through = false) {
        make_samples(axis);
        each_place([&](Vec3 tip) {
            if (right_through) tip = tip - 0.6 * tool_.reach * axis;
            if (right_through && in_stock(tip, 0)) return;
            if (!goes(tip, axis)) return;
            take(tip, axis);
        });
    }

    Left left() const {
        Left all;
        all.cell = cell_;
        const double size = cell_ * cell_ * cell_;
        each([&](std::size_t i, Vec3 p) {
            if (!wanted_[i]) return;
            all.whole += size;
            if (!taken_[i]) all.volume += size;
            if (depth_within(p) < 1.2 * cell_) return;
            ++all.deep;
            if (!taken_[i]) ++all.stays;
        });
        return all;
    }

  private:
    int count(double low, double high) const {
        return std::max(1, static_cast<int>(std::ceil((high - low) / cell_)));
    }
    Vec3 middle(int x, int y, int z) const {
        return {low_.x + (x + 0.5) * cell_, low_.y + (y + 0.5) * cell_, low_.z + (z + 0.5) * cell_};
    }
    std::size_t index(int x, int y, int z) const { return static_cast<std::size_t>((z * ny_ + y) * nx_ + x); }

    template <typename Do> void each(Do &&run) const {
        for (int z = 0; z < nz_; ++z)
            for (int y = 0; y < ny_; ++y)
                for (int x = 0; x < nx_; ++x)
                    run(index(x, y, z), middle(x, y, z));
    }

    /// Where the end of the tool may be: also beside what is to be taken, where there is no wood.
    template <typename Do> void each_place(Do &&run) const {
        const int beyond = static_cast<int>(std::ceil(tool_.diameter / cell_)) / 2 + 1;
        for (int z = -beyond; z < nz_ + beyond; ++z)
            for (int y = -beyond; y < ny_ + beyond; ++y)
                for (int x = -beyond; x < nx_ + beyond; ++x)
                    run(middle(x, y, z));
        if (o_.bore) // a drill that just goes in goes in on its axis
            for (double along = 0; along <= o_.bore->depth + cell_; along += cell_)
                run(o_.bore->entry + std::min(along, o_.bore->depth) * o_.bore->along);
    }

    bool in_stock(Vec3 p, double within) const {
        const Vec3 q = stock_.frame.to_local(p);
        return q.x > within && q.y > within && q.z > within && q.x < stock_.size.length - within &&
               q.y < stock_.size.width - within && q.z < stock_.size.height - within;
    }

    /// How deep within all that bounds what is to be taken; below 0 outside.
    double depth_within(Vec3 p) const {
        double least = 1e9;
        for (const auto &side : o_.sides)
            least = std::min(least, -side.plane.distance(p));
        if (o_.round) {
            const auto &r = *o_.round;
            const Vec3 across{-r.along.y, r.along.x, 0};
            const double off = std::abs(dot(p - r.at, across)), up = p.z - r.at.z;
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

    /// Wood that stays, but for what a place between two of the grid would spare.
    bool hits(Vec3 p) const { return in_stock(p, 0.1) && depth_within(p) < -spared_ * cell_; }

    double radius_at(double along) const {
        const double r = tool_.diameter / 2;
        if (tool_.shape != ToolShape::ball || along >= r) return r;
        return std::sqrt(std::max(0.0, r * r - (r - along) * (r - along)));
    }

    void make_samples(Vec3 axis) {
        const Vec3 other = std::abs(axis.z) < 0.7 ? Vec3{0, 0, 1} : Vec3{1, 0, 0};
        u_ = unit(cross(axis, other)), v_ = cross(axis, u_);
        samples_.clear();
        constexpr int round = 12;
        const double step = std::max(cell_, tool_.diameter / 6);
        for (double along = 0.0; along <= tool_.reach; along += step) {
            samples_.push_back(along * axis);
            for (const double part : {1.0, 0.5})
                for (int k = 0; k < round; ++k) {
                    const double angle = 2 * M_PI * k / round, r = part * radius_at(along);
                    samples_.push_back(along * axis + r * std::cos(angle) * u_ + r * std::sin(angle) * v_);
                }
        }
        const double holder = tool_.diameter; // its radius
        for (int k = 0; k < round; ++k) {
            const double angle = 2 * M_PI * k / round;
            samples_.push_back(tool_.reach * axis + holder * std::cos(angle) * u_ +
                               holder * std::sin(angle) * v_);
        }
        held_ = round;
    }

    /// No wood that stays is in its way, and its holder lies over all wood.
    bool goes(Vec3 tip, Vec3 axis) const {
        const double up = 0.5 * cell_;
        for (std::size_t i = 0; i + held_ < samples_.size(); ++i)
            if (hits(tip + samples_[i])) return false;
        for (std::size_t i = samples_.size() - held_; i < samples_.size(); ++i)
            if (in_stock(tip + samples_[i] + up * axis, 0.1)) return false;
        return true;
    }

    void take(Vec3 tip, Vec3 axis) {
        const double r = tool_.diameter / 2;
        const Vec3 end = tip + tool_.reach * axis;
        const auto from = [&](double a, double b, double low) {
            return std::max(0, static_cast<int>(std::floor((std::min(a, b) - r - low) / cell_)));
        };
        const auto to = [&](double a, double b, double low, int n) {
            return std::min(n - 1, static_cast<int>(std::ceil((std::max(a, b) + r - low) / cell_)));
        };
        for (int z = from(tip.z, end.z, low_.z); z <= to(tip.z, end.z, low_.z, nz_); ++z)
            for (int y = from(tip.y, end.y, low_.y); y <= to(tip.y, end.y, low_.y, ny_); ++y)
                for (int x = from(tip.x, end.x, low_.x); x <= to(tip.x, end.x, low_.x, nx_); ++x) {
                    const std::size_t i = index(x, y, z);
                    if (taken_[i]) continue;
                    const Vec3 p = middle(x, y, z) - tip;
                    const double along = dot(p, axis);
                    if (along < -0.1 || along > tool_.reach) continue;
                    if (length(p - along * axis) <= radius_at(std::max(0.0, along)) + 0.1) taken_[i] = 1;
                }
    }

    double spared_;
    const machining::Operation &o_;
    const Stock &stock_;
    const Tool &tool_;
    Vec3 low_, high_, u_, v_;
    double cell_ = 1;
    int nx_ = 0, ny_ = 0, nz_ = 0;
    std::size_t held_ = 0;
    std::vector<char> wanted_, taken_;
    std::vector<Vec3> samples_;
};

/// Straight in, and so that its end or its flank lies on a side, or its axis along the edge of two.
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
        for (const auto &other : operation.sides)
            add(cross(n, other.plane.normal));
    }
    return axes;
}

} // namespace

Left left_by(const machining::Operation &operation, const Stock &stock, LogFace from, const Tool &tool,
             double most_tilt, double least_cell, double spared) {
    Grid grid(operation, stock, tool, least_cell, spared);
    for (const Vec3 axis : axes_of(operation, way_of(from), most_tilt))
        grid.take_along(axis);
    return grid.left();
}

Left left_by_flank(const machining::Operation &operation, const Stock &stock, LogFace from, const Tool &tool,
                   double most_tilt, double least_cell, double spared) {
    Grid grid(operation, stock, tool, least_cell, spared);
    for (const Vec3 axis : axes_of(operation, way_of(from), most_tilt))
        grid.take_along(axis, true);
    return grid.left();
}

} // namespace access_sim
