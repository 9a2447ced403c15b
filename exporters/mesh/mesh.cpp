#include "exporters/mesh/mesh.h"

#include "exporters/mesh/bore_rings.h"
#include "exporters/mesh/carve.h"
#include "exporters/mesh/triangulate.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <numbers>
#include <optional>
#include <stdexcept>

namespace roundlay {
namespace {

using Loop = std::vector<int>;

/// Which two axes of space a face is looked at along, so that coordinates stay exact.
enum class Drop { x, y, z };

struct Flattening {
    Drop dropped;
    bool mirrored; ///< the face looks against the dropped axis

    explicit Flattening(Vec3 normal) {
        const Vec3 size{std::abs(normal.x), std::abs(normal.y), std::abs(normal.z)};
        if (size.z >= size.x && size.z >= size.y)
            dropped = Drop::z;
        else
            dropped = size.x >= size.y ? Drop::x : Drop::y;
        const double along = dropped == Drop::z ? normal.z : dropped == Drop::x ? normal.x : normal.y;
        mirrored = along < 0;
    }

    Vec2 operator()(Vec3 p) const {
        const Vec2 flat = dropped == Drop::z   ? Vec2{p.x, p.y}
                          : dropped == Drop::x ? Vec2{p.y, p.z}
                                               : Vec2{p.z, p.x};
        return mirrored ? Vec2{-flat.x, flat.y} : flat;
    }
};

class MeshBuilder {
  public:
    MeshBuilder(const Body &body, int sides) : body_(body), sides_(sides), openings_(body.hewn.faces.size()) {
        mesh_.points = body.hewn.vertices;
    }

    Mesh build() {
        add_hewn_edges();
        if (sides_ > 0)
            for (const Bore &bore : body_.bores)
                add_bore(bore);
        for (std::size_t i = 0; i < body_.hewn.faces.size(); ++i)
            add_face(body_.hewn.faces[i], openings_[i]);
        return std::move(mesh_);
    }

  private:
    void add_hewn_edges() {
        for (const Face &face : body_.hewn.faces) {
            for (const Loop &loop : face.loops) {
                for (std::size_t i = 0; i < loop.size(); ++i) {
                    const int a = loop[i], b = loop[(i + 1) % loop.size()];
                    if (a < b && !is_smooth(face.plane.round, a, b))
                        mesh_.edges.push_back({a, b}); // the neighbour has it the other way round
                }
            }
        }
    }

    /// An edge between two flats of one round surface is none.
    bool is_smooth(int round, int a, int b) {
        if (round == 0) return false;
        if (rounds_.empty())
            for (const Face &face : body_.hewn.faces)
                for (const Loop &loop : face.loops)
                    for (std::size_t i = 0; i < loop.size(); ++i)
                        rounds_[{loop[i], loop[(i + 1) % loop.size()]}] = face.plane.round;
        const auto other = rounds_.find({b, a});
        return other != rounds_.end() && other->second == round;
    }

    void add_bore(const Bore &bore) {
        const BoreRings rings = rings_of(body_.hewn, bore, sides_);
        const Loop low = add_ring(rings.low), high = add_ring(rings.high);
        add_wall(bore, low, high);
        open_or_close(rings.high.face, +1.0, Loop(high.rbegin(), high.rend()));
        open_or_close(rings.low.face, -1.0, low);
    }

    Loop add_ring(const BoreRing &from) {
        Loop ring;
        for (const Vec3 &corner : from.corners) {
            ring.push_back(static_cast<int>(mesh_.points.size()));
            mesh_.points.push_back(corner);
        }
        for (int i = 0; i < sides_; ++i)
            mesh_.edges.push_back({ring[i], ring[(i + 1) % sides_]});
        return ring;
    }

    void add_wall(const Bore &bore, const Loop &low, const Loop &high) {
        const int surface = add_surface({{}, true, {bore.x, bore.y}});
        for (int i = 0; i < sides_; ++i) {
            const int j = (i + 1) % sides_;
            mesh_.triangles.push_back({{low[j], low[i], high[i]}, surface});
            mesh_.triangles.push_back({{low[j], high[i], high[j]}, surface});
        }
    }

    /// `hole` runs clockwise for who looks along the bore from outside.
    void open_or_close(std::optional<std::size_t> face, double outward, const Loop &hole) {
        if (face) {
            openings_[*face].push_back(hole);
            return;
        }
        const int surface = add_surface({{0, 0, -outward}, false, {}});
        for (int i = 1; i + 1 < sides_; ++i)
            mesh_.triangles.push_back({{hole[0], hole[i], hole[i + 1]}, surface});
    }

    void add_face(const Face &face, const std::vector<Loop> &openings) {
        corners_.clear();
        sizes_.clear();
        for (const Loop &loop : face.loops)
            take(loop);
        for (const Loop &hole : openings)
            take(hole);
        const Flattening flatten(face.plane.normal);
        flat_.clear();
        for (const int corner : corners_)
            flat_.push_back(flatten(mesh_.points[corner]));
        Surface shade{face.plane.normal, false, {}};
        if (face.plane.round > 0)
            shade.flat_of = body_.rounds[static_cast<std::size_t>(face.plane.round - 1)];
        const int surface = add_surface(shade);
        for (const auto &[a, b, c] : triangulated(flat_, sizes_))
            mesh_.triangles.push_back({{corners_[a], corners_[b], corners_[c]}, surface});
    }

    void take(const Loop &loop) {
        corners_.insert(corners_.end(), loop.begin(), loop.end());
        sizes_.push_back(static_cast<int>(loop.size()));
    }

    int add_surface(const Surface &surface) {
        mesh_.surfaces.push_back(surface);
        return static_cast<int>(mesh_.surfaces.size()) - 1;
    }

    const Body &body_;
    int sides_;
    std::vector<std::vector<Loop>> openings_;   ///< by face of the hewn border
    std::map<std::pair<int, int>, int> rounds_; ///< Plane::round by directed edge, made when first asked for
    Mesh mesh_;
    std::vector<int> corners_, sizes_;
    std::vector<Vec2> flat_;
};

} // namespace

Vec3 normal_at(const Surface &surface, Vec3 point) {
    if (surface.flat_of) return normal_on(*surface.flat_of, point);
    if (!surface.round) return surface.normal;
    return unit({surface.axis.x - point.x, surface.axis.y - point.y, 0});
}

Mesh mesh_of(const Body &body, const MeshOptions &options) {
    constexpr int fewest = 3, most = 360;
    if (options.sides != 0 && (options.sides < fewest || options.sides > most))
        throw std::invalid_argument("mesh_of: a bore has 3 to 360 sides, or 0 to leave bores out");
    if (body.bores_clear || options.sides == 0) return MeshBuilder(body, options.sides).build();
    const Body wood = carved(body, options.sides);
    Mesh mesh = MeshBuilder(wood, 0).build();
    mesh.edges = edges_round_bores(wood.hewn, body.bores, options.sides);
    return mesh;
}

double volume(const Mesh &mesh) {
    if (mesh.points.empty()) return 0;
    const Vec3 origin = mesh.points.front(); // near the wood, so that little cancels
    double six = 0;
    for (const MeshTriangle &t : mesh.triangles) {
        const auto [a, b, c] = t.corners;
        six += dot(mesh.points[a] - origin, cross(mesh.points[b] - origin, mesh.points[c] - origin));
    }
    return six / 6;
}

Box3 bounds(const Mesh &mesh) {
    if (mesh.points.empty()) return {};
    Box3 box{mesh.points.front(), mesh.points.front()};
    for (const Vec3 p : mesh.points) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
    }
    return box;
}

bool is_closed(const Mesh &mesh) {
    std::vector<std::uint64_t> sides, opposite;
    for (const MeshTriangle &t : mesh.triangles) {
        for (int i = 0; i < 3; ++i) {
            const auto a = static_cast<std::uint64_t>(t.corners[i]);
            const auto b = static_cast<std::uint64_t>(t.corners[(i + 1) % 3]);
            sides.push_back(a << 32 | b);
            opposite.push_back(b << 32 | a);
        }
    }
    std::sort(sides.begin(), sides.end());
    std::sort(opposite.begin(), opposite.end());
    return !sides.empty() && sides == opposite &&
           std::adjacent_find(sides.begin(), sides.end()) == sides.end();
}

double prism_volume(const Bore &bore, int sides) {
    const double radius = bore.diameter / 2;
    const double base = sides / 2.0 * radius * radius * std::sin(2 * std::numbers::pi / sides);
    return base * (bore.z_to - bore.z_from);
}

} // namespace roundlay
