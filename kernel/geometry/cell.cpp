#include "kernel/geometry/cell.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace roundlay {

namespace {

struct Reach {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
};

Reach reach_over(const Cell &cell, const Plane &plane) {
    Reach r;
    for (const CellFace &face : cell.faces)
        for (const Vec3 &p : face.ring) {
            const double d = plane.distance(p);
            r.low = std::min(r.low, d);
            r.high = std::max(r.high, d);
        }
    return r;
}

bool same_point(Vec3 a, Vec3 b) {
    return std::abs(a.x - b.x) < tolerance::weld && std::abs(a.y - b.y) < tolerance::weld &&
           std::abs(a.z - b.z) < tolerance::weld;
}

void add_once(std::vector<Vec3> &points, Vec3 p) {
    for (const Vec3 &q : points)
        if (same_point(p, q)) return;
    points.push_back(p);
}

/// Where the edge a-b meets the plane. Always worked out from the same end, so that the two faces that
/// share the edge get the same point.
Vec3 crossing(Vec3 a, double da, Vec3 b, double db) {
    if (da > db) {
        std::swap(a, b);
        std::swap(da, db);
    }
    return a + (da / (da - db)) * (b - a);
}

/// One face's ring on the wood side; points on the plane are added to `on_plane`.
std::vector<Vec3> clipped_ring(const std::vector<Vec3> &ring, const Plane &plane,
                               std::vector<Vec3> &on_plane) {
    std::vector<Vec3> kept;
    kept.reserve(ring.size() + 1);
    const std::size_t n = ring.size();
    double da = plane.distance(ring[n - 1]);
    for (std::size_t i = 0; i < n; ++i) {
        const Vec3 &a = ring[(i + n - 1) % n];
        const Vec3 &b = ring[i];
        const double db = plane.distance(b);
        const bool a_on = std::abs(da) < tolerance::weld, b_on = std::abs(db) < tolerance::weld;
        if (!a_on && !b_on && (da < 0) != (db < 0)) {
            kept.push_back(crossing(a, da, b, db));
            add_once(on_plane, kept.back());
        }
        if (b_on) add_once(on_plane, b);
        if (b_on || db < 0) kept.push_back(b);
        da = db;
    }
    return kept;
}

bool has_area(const std::vector<Vec3> &ring, Vec3 normal) {
    if (ring.size() < 3) return false;
    Vec3 sum;
    for (std::size_t i = 1; i + 1 < ring.size(); ++i)
        sum = sum + cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
    return dot(sum, normal) > 2 * tolerance::weld * tolerance::weld;
}

Vec3 mean(const std::vector<Vec3> &points) {
    Vec3 sum;
    for (const Vec3 &p : points)
        sum = sum + p;
    return (1.0 / static_cast<double>(points.size())) * sum;
}

/// Orders the points of a convex face counter-clockwise about its outward normal.
void order_round(std::vector<Vec3> &points, Vec3 normal) {
    const Vec3 c = mean(points);
    const Vec3 u = unit(points[0] - c);
    const Vec3 v = cross(normal, u);
    std::vector<std::pair<double, Vec3>> by_angle;
    by_angle.reserve(points.size());
    for (const Vec3 &p : points)
        by_angle.emplace_back(std::atan2(dot(p - c, v), dot(p - c, u)), p);
    std::sort(by_angle.begin(), by_angle.end(),
              [](const auto &a, const auto &b) { return a.first < b.first; });
    for (std::size_t i = 0; i < points.size(); ++i)
        points[i] = by_angle[i].second;
}

/// Clips where the plane is known to cross the cell.
Cell cut_through(const Cell &cell, const Plane &plane) {
    Cell result;
    result.faces.reserve(cell.faces.size() + 1);
    std::vector<Vec3> cap;
    for (const CellFace &face : cell.faces) {
        std::vector<Vec3> ring = clipped_ring(face.ring, plane, cap);
        if (has_area(ring, face.plane.normal)) result.faces.push_back({face.plane, std::move(ring)});
    }
    if (cap.size() >= 3) {
        order_round(cap, plane.normal);
        result.faces.push_back({plane, std::move(cap)});
    }
    return result.faces.size() < 4 ? Cell{} : result;
}

} // namespace

Cell box_cell(const Box3 &box) {
    const Vec3 a = box.low, b = box.high;
    const Vec3 p[8] = {{a.x, a.y, a.z}, {b.x, a.y, a.z}, {b.x, b.y, a.z}, {a.x, b.y, a.z},
                       {a.x, a.y, b.z}, {b.x, a.y, b.z}, {b.x, b.y, b.z}, {a.x, b.y, b.z}};
    return Cell{{{{{-1, 0, 0}, -a.x}, {p[0], p[4], p[7], p[3]}},
                 {{{1, 0, 0}, b.x}, {p[1], p[2], p[6], p[5]}},
                 {{{0, -1, 0}, -a.y}, {p[0], p[1], p[5], p[4]}},
                 {{{0, 1, 0}, b.y}, {p[3], p[7], p[6], p[2]}},
                 {{{0, 0, -1}, -a.z}, {p[0], p[3], p[2], p[1]}},
                 {{{0, 0, 1}, b.z}, {p[4], p[5], p[6], p[7]}}}};
}

/// Asked far more often than anything else: the first corner on this side says no.
bool lies_beyond(const Cell &cell, const Plane &plane) {
    for (const CellFace &face : cell.faces)
        for (const Vec3 &p : face.ring)
            if (plane.distance(p) < -tolerance::thinnest) return false;
    return true;
}

Cell clipped(const Cell &cell, const Plane &plane) {
    const Reach r = reach_over(cell, plane);
    if (cell.empty() || r.low >= -tolerance::thinnest) return {};
    if (r.high <= tolerance::thinnest) return cell;
    return cut_through(cell, plane);
}

SplitCell split(const Cell &cell, const Plane &plane) {
    const Reach r = reach_over(cell, plane);
    if (cell.empty() || r.low >= -tolerance::thinnest) return {{}, cell};
    if (r.high <= tolerance::thinnest) return {cell, {}};
    return {cut_through(cell, plane), cut_through(cell, plane.flipped())};
}

namespace {

struct Moments {
    double six_volume = 0;
    Vec3 weighted; ///< six_volume / 4 * sum of corners, from the cell's first corner
    Vec3 origin;
};

Moments moments(const Cell &cell) {
    Moments m;
    if (cell.empty()) return m;
    m.origin = cell.faces[0].ring[0];
    for (const CellFace &face : cell.faces)
        for (std::size_t i = 1; i + 1 < face.ring.size(); ++i) {
            const Vec3 a = face.ring[0] - m.origin, b = face.ring[i] - m.origin,
                       c = face.ring[i + 1] - m.origin;
            const double part = dot(a, cross(b, c));
            m.six_volume += part;
            m.weighted = m.weighted + (part / 4) * (a + b + c);
        }
    return m;
}

bool apart(const Box3 &a, const Box3 &b) {
    return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y ||
           a.high.z < b.low.z || b.high.z < a.low.z;
}

} // namespace

double volume(const Cell &cell) {
    return moments(cell).six_volume / 6;
}

Vec3 centroid(const Cell &cell) {
    const Moments m = moments(cell);
    return m.six_volume == 0 ? m.origin : m.origin + (1 / m.six_volume) * m.weighted;
}

Box3 bounds(const Cell &cell) {
    constexpr double big = std::numeric_limits<double>::max();
    Box3 box{{big, big, big}, {-big, -big, -big}};
    for (const CellFace &face : cell.faces)
        for (const Vec3 &v : face.ring) {
            box.low = {std::min(box.low.x, v.x), std::min(box.low.y, v.y), std::min(box.low.z, v.z)};
            box.high = {std::max(box.high.x, v.x), std::max(box.high.y, v.y), std::max(box.high.z, v.z)};
        }
    return box;
}

Cell moved(const Cell &cell, const Frame &frame) {
    Cell result = cell;
    for (CellFace &face : result.faces) {
        face.plane = to_world(face.plane, frame);
        for (Vec3 &p : face.ring)
            p = frame.to_world(p);
    }
    return result;
}

namespace {

/// Most cells that are near one another only touch.
bool lies_beyond_a_face(const Cell &cell, const Cell &of) {
    return std::any_of(of.faces.begin(), of.faces.end(),
                       [&](const CellFace &face) { return lies_beyond(cell, face.plane); });
}

} // namespace

std::vector<Plane> upright_hull(const Cell &cell) {
    std::vector<Vec2> points;
    for (const CellFace &face : cell.faces)
        for (const Vec3 &p : face.ring)
            points.push_back({p.x, p.y});
    std::sort(points.begin(), points.end(),
              [](Vec2 a, Vec2 b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
    std::vector<Vec2> hull;
    for (int pass = 0; pass < 2; ++pass) { // lower chain, then upper chain
        const std::size_t start = hull.size();
        for (const Vec2 &p : points) {
            while (hull.size() >= start + 2 &&
                   cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= tolerance::weld)
                hull.pop_back();
            hull.push_back(p);
        }
        hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    std::vector<Plane> planes;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Vec2 a = hull[i], d = hull[(i + 1) % hull.size()] - a;
        const Vec3 n = (1 / length(d)) * Vec3{d.y, -d.x, 0};
        planes.push_back({n, n.x * a.x + n.y * a.y});
    }
    return planes;
}

double common_volume(const Cell &a, const Cell &b) {
    if (apart(bounds(a), bounds(b)) || lies_beyond_a_face(a, b) || lies_beyond_a_face(b, a)) return 0;
    Cell common = a;
    for (const CellFace &face : b.faces) {
        common = clipped(common, face.plane);
        if (common.empty()) return 0;
    }
    return volume(common);
}

namespace {

bool misses(const Cell &cell, const std::vector<Plane> &region) {
    return std::any_of(region.begin(), region.end(),
                       [&](const Plane &plane) { return lies_beyond(cell, plane); });
}

/// What is left of one cell. Where the last planes find nothing after all, the region only grazed it.
void take_out(Cell cell, const std::vector<Plane> &region, std::vector<Cell> &kept) {
    const std::size_t before = kept.size();
    Cell common = cell;
    for (const Plane &plane : region) {
        const Reach r = reach_over(common, plane);
        if (r.high <= tolerance::thinnest) continue;
        if (r.low >= -tolerance::thinnest) {
            kept.resize(before);
            kept.push_back(std::move(cell));
            return;
        }
        kept.push_back(cut_through(common, plane.flipped()));
        common = cut_through(common, plane);
    }
}

} // namespace

std::vector<Cell> without(std::vector<Cell> cells, const std::vector<Plane> &region) {
    std::vector<Cell> kept;
    kept.reserve(cells.size() + region.size());
    for (Cell &cell : cells) {
        if (misses(cell, region))
            kept.push_back(std::move(cell));
        else
            take_out(std::move(cell), region, kept);
    }
    return kept;
}

} // namespace roundlay
