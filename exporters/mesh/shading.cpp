#include "exporters/mesh/shading.h"

namespace roundlay {
namespace {

std::array<float, 3> single(Vec3 v) {
    return {static_cast<float>(v.x), static_cast<float>(v.y), static_cast<float>(v.z)};
}

/// Gives each point its number on the surface at hand. Triangles of one surface come one after another.
class Numbering {
  public:
    explicit Numbering(std::size_t points) : number_(points), surface_(points, -1) {}

    /// True when the point is new on this surface; it then gets `next`.
    bool is_new(int point, int surface, std::uint32_t next) {
        if (surface_[point] == surface) return false;
        surface_[point] = surface;
        number_[point] = next;
        return true;
    }
    std::uint32_t operator[](int point) const { return number_[point]; }

  private:
    std::vector<std::uint32_t> number_;
    std::vector<int> surface_;
};

} // namespace

ShadedMesh shaded(const Mesh &mesh) {
    ShadedMesh out;
    out.triangles.reserve(3 * mesh.triangles.size());
    Numbering corners(mesh.points.size());
    for (const MeshTriangle &t : mesh.triangles) {
        for (const int point : t.corners) {
            if (corners.is_new(point, t.surface, static_cast<std::uint32_t>(out.corners.size())))
                out.corners.push_back({single(mesh.points[point]),
                                       single(normal_at(mesh.surfaces[t.surface], mesh.points[point]))});
            out.triangles.push_back(corners[point]);
        }
    }
    Numbering ends(mesh.points.size());
    for (const auto &edge : mesh.edges) {
        for (const int point : edge) {
            if (ends.is_new(point, 0, static_cast<std::uint32_t>(out.points.size())))
                out.points.push_back(single(mesh.points[point]));
            out.edges.push_back(ends[point]);
        }
    }
    return out;
}

} // namespace roundlay
