// The border of a union of convex cells, plane by plane.

#include "kernel/geometry/cell.h"
#include "kernel/geometry/plane_arrangement.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace roundlay {

namespace {

/// Two normals nearer than this are one: over 30 m it moves a face by less than the weld.
constexpr double same_normal = 1e-11;

/// The cell faces that lie in one plane.
struct Layer {
    Plane plane;
    Vec3 u, v; ///< in-plane axes, u x v = normal
    std::vector<SignedPolygon> polygons;
};

class Border {
  public:
    explicit Border(const std::vector<Cell> &cells) {
        for (const Cell &cell : cells)
            for (const CellFace &face : cell.faces)
                add(face);
        for (const Layer &layer : layers_)
            add_faces(layer);
        insert_vertices_on_edges();
        drop_vertices_inside_edges();
        drop_unused_vertices();
    }

    Polyhedron take() { return std::move(solid_); }

  private:
    const Vec3 &at(int i) const { return solid_.vertices[static_cast<std::size_t>(i)]; }

    /// Vertices by where they are along x, in stretches far longer than the weld.
    static long stretch_of(double x) { return std::lround(std::floor(x / 16)); }

    int vertex(Vec3 p) {
        int best = -1; // the newest: neighbours come together
        const long from = stretch_of(p.x - tolerance::weld), to = stretch_of(p.x + tolerance::weld);
        for (long s = from; s <= to; ++s) {
            const auto here = along_x_.find(s);
            if (here == along_x_.end()) continue;
            for (auto i = here->second.rbegin(); i != here->second.rend() && *i > best; ++i) {
                const Vec3 &q = at(*i);
                if (std::abs(p.x - q.x) < tolerance::weld && std::abs(p.y - q.y) < tolerance::weld &&
                    std::abs(p.z - q.z) < tolerance::weld)
                    best = *i;
            }
        }
        if (best >= 0) return best;
        solid_.vertices.push_back(p);
        along_x_[stretch_of(p.x)].push_back(static_cast<int>(solid_.vertices.size()) - 1);
        return static_cast<int>(solid_.vertices.size()) - 1;
    }

    /// Flats of two round surfaces are two faces where they happen to lie in one plane.
    static bool coplanar(const Plane &a, const Plane &b, double sign) {
        if (a.round != b.round && a.round != 0 && b.round != 0) return false;
        const Vec3 d = a.normal - sign * b.normal;
        return dot(d, d) < same_normal * same_normal &&
               std::abs(a.offset - sign * b.offset) < tolerance::weld;
    }

    Layer &layer_of(const Plane &plane, int &sign) {
        for (Layer &layer : layers_)
            for (const int s : {1, -1})
                if (coplanar(layer.plane, plane, s)) {
                    sign = s;
                    return layer;
                }
        sign = 1;
        const Vec3 n = plane.normal;
        const Vec3 seed = std::abs(n.x) < 0.7 ? Vec3{1, 0, 0} : Vec3{0, 1, 0};
        const Vec3 u = unit(cross(seed, n));
        return layers_.emplace_back(Layer{plane, u, cross(n, u), {}});
    }

    void add(const CellFace &face) {
        int sign = 1;
        std::vector<int> ring;
        ring.reserve(face.ring.size());
        for (const Vec3 &p : face.ring) {
            const int i = vertex(p);
            if (std::find(ring.begin(), ring.end(), i) == ring.end()) ring.push_back(i);
        }
        if (ring.size() < 3) return;
        Layer &layer = layer_of(face.plane, sign);
        if (sign < 0) std::reverse(ring.begin(), ring.end()); // counter-clockwise about the layer's normal
        layer.polygons.push_back({std::move(ring), sign});
    }

    void add_faces(const Layer &layer) {
        std::vector<int> global;
        std::vector<Vec2> points;
        local_.resize(solid_.vertices.size(), -1);
        std::vector<SignedPolygon> polygons = layer.polygons;
        for (SignedPolygon &polygon : polygons)
            for (int &i : polygon.ring)
                i = local(i, layer, global, points);
        for (const int i : global)
            local_[static_cast<std::size_t>(i)] = -1; // as the next layer finds it
        const std::size_t known = points.size();
        const std::vector<BorderRegion> regions = add_up(points, polygons);
        for (std::size_t i = known; i < points.size(); ++i)
            global.push_back(vertex(layer.plane.offset * layer.plane.normal + points[i].x * layer.u +
                                    points[i].y * layer.v));
        for (const BorderRegion &region : regions)
            add_face(layer, region, global);
    }

    int local(int vertex_index, const Layer &layer, std::vector<int> &global, std::vector<Vec2> &points) {
        int &known = local_[static_cast<std::size_t>(vertex_index)];
        if (known >= 0) return known;
        known = static_cast<int>(global.size());
        global.push_back(vertex_index);
        points.push_back({dot(at(vertex_index), layer.u), dot(at(vertex_index), layer.v)});
        return known;
    }

    void add_face(const Layer &layer, const BorderRegion &region, const std::vector<int> &global) {
        Face face{region.sign > 0 ? layer.plane : layer.plane.flipped(), region.loops};
        for (auto &loop : face.loops) {
            for (int &i : loop)
                i = global[static_cast<std::size_t>(i)];
            if (region.sign < 0) std::reverse(loop.begin(), loop.end());
        }
        solid_.faces.push_back(std::move(face));
    }

    static bool outside(double v, double a, double b) {
        return v < std::min(a, b) - tolerance::weld || v > std::max(a, b) + tolerance::weld;
    }

    bool lies_within(int i, int a, int b) const {
        const Vec3 &p = at(i), &q = at(a), &r = at(b);
        if (outside(p.x, q.x, r.x) || outside(p.y, q.y, r.y) || outside(p.z, q.z, r.z)) return false;
        const Vec3 d = at(b) - at(a), v = at(i) - at(a);
        const double l2 = dot(d, d), along = dot(v, d);
        if (along <= 0 || along >= l2) return false;
        const Vec3 off = v - (along / l2) * d;
        return dot(off, off) < tolerance::weld * tolerance::weld && i != a && i != b;
    }

    /// A vertex of one face may lie inside an edge of its neighbour: both must have it.
    void insert_vertices_on_edges() {
        const std::vector<char> used = used_vertices();
        std::vector<int> by_x;
        for (std::size_t i = 0; i < used.size(); ++i)
            if (used[i]) by_x.push_back(static_cast<int>(i));
        std::sort(by_x.begin(), by_x.end(), [&](int i, int j) { return at(i).x < at(j).x; });
        for (Face &face : solid_.faces)
            for (auto &loop : face.loops)
                insert_on(loop, by_x);
    }

    std::vector<char> used_vertices() const {
        std::vector<char> used(solid_.vertices.size(), 0);
        for (const Face &face : solid_.faces)
            for (const auto &loop : face.loops)
                for (const int i : loop)
                    used[static_cast<std::size_t>(i)] = 1;
        return used;
    }

    void insert_on(std::vector<int> &loop, const std::vector<int> &by_x) const {
        std::vector<int> result;
        result.reserve(loop.size());
        for (std::size_t k = 0; k < loop.size(); ++k) {
            const int a = loop[k], b = loop[(k + 1) % loop.size()];
            const auto [low, high] = std::minmax(at(a).x, at(b).x);
            result.push_back(a);
            const std::size_t first = result.size();
            auto i = std::lower_bound(by_x.begin(), by_x.end(), low - tolerance::weld,
                                      [&](int v, double x) { return at(v).x < x; });
            for (; i != by_x.end() && at(*i).x <= high + tolerance::weld; ++i)
                if (lies_within(*i, a, b)) result.push_back(*i);
            std::sort(result.begin() + static_cast<std::ptrdiff_t>(first), result.end(), [&](int p, int q) {
                const Vec3 d = at(b) - at(a);
                return dot(at(p), d) < dot(at(q), d);
            });
        }
        loop = std::move(result);
    }

    /// A vertex with only two neighbours in the whole solid is no corner.
    void drop_vertices_inside_edges() {
        std::vector<std::vector<int>> neighbours(solid_.vertices.size());
        const auto note = [&](int i, int j) {
            auto &list = neighbours[static_cast<std::size_t>(i)];
            if (std::find(list.begin(), list.end(), j) == list.end()) list.push_back(j);
        };
        for (const Face &face : solid_.faces)
            for (const auto &loop : face.loops)
                for (std::size_t k = 0; k < loop.size(); ++k) {
                    note(loop[k], loop[(k + 1) % loop.size()]);
                    note(loop[(k + 1) % loop.size()], loop[k]);
                }
        for (Face &face : solid_.faces)
            for (auto &loop : face.loops)
                std::erase_if(loop,
                              [&](int i) { return neighbours[static_cast<std::size_t>(i)].size() == 2; });
    }

    void drop_unused_vertices() {
        const std::vector<char> used = used_vertices();
        std::vector<int> renamed(used.size(), -1);
        std::vector<Vec3> kept;
        for (std::size_t i = 0; i < used.size(); ++i)
            if (used[i]) {
                renamed[i] = static_cast<int>(kept.size());
                kept.push_back(solid_.vertices[i]);
            }
        solid_.vertices = std::move(kept);
        for (Face &face : solid_.faces)
            for (auto &loop : face.loops)
                for (int &i : loop)
                    i = renamed[static_cast<std::size_t>(i)];
    }

    std::vector<Layer> layers_;
    std::unordered_map<long, std::vector<int>> along_x_;
    std::vector<int> local_; ///< by vertex: its number in the layer that is added up, -1 = not in it
    Polyhedron solid_;
};

} // namespace

Polyhedron border_of(const std::vector<Cell> &cells) {
    return Border(cells).take();
}

} // namespace roundlay
