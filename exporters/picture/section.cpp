#include "exporters/picture/section.h"

#include <algorithm>
#include <optional>

namespace roundlay {
namespace {

using Line = std::array<Vec3, 2>;

bool reaches(const Box3 &box, const Plane &plane) {
    const Vec3 middle = 0.5 * (box.low + box.high), half = 0.5 * (box.high - box.low);
    const Vec3 n = plane.normal;
    return std::abs(plane.distance(middle)) <=
           std::abs(n.x) * half.x + std::abs(n.y) * half.y + std::abs(n.z) * half.z;
}

/// A corner on the plane counts as beyond it, so that neighbouring triangles agree.
std::optional<Line> cut_line(const std::array<Vec3, 3> &corners, const std::array<double, 3> &beyond) {
    Line line;
    std::size_t found = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const std::size_t j = (i + 1) % 3;
        if ((beyond[i] >= 0) == (beyond[j] >= 0)) continue;
        const double t = beyond[i] / (beyond[i] - beyond[j]);
        line[found++] = corners[i] + t * (corners[j] - corners[i]);
    }
    if (found < 2) return std::nullopt;
    return line;
}

void add_lines(const ShadedMesh &mesh, const Frame &frame, const Plane &world_plane, std::vector<Line> &out) {
    const Plane plane = to_local(world_plane, frame);
    for (std::size_t i = 0; i + 2 < mesh.triangles.size(); i += 3) {
        std::array<Vec3, 3> corners;
        std::array<double, 3> beyond{};
        for (std::size_t k = 0; k < 3; ++k) {
            const auto &p = mesh.corners[mesh.triangles[i + k]].position;
            corners[k] = {p[0], p[1], p[2]};
            beyond[k] = plane.distance(corners[k]);
        }
        if (const auto line = cut_line(corners, beyond))
            out.push_back({frame.to_world((*line)[0]), frame.to_world((*line)[1])});
    }
}

} // namespace

std::vector<Line> section_outline(const Scene &scene, const Plane &plane) {
    std::vector<Line> lines;
    for (const Instance &instance : scene.instances) {
        const SceneModel &model = *scene.models[instance.model];
        if (instance.visible && reaches(model.box, to_local(plane, instance.frame)))
            add_lines(model.levels[0], instance.frame, plane, lines);
    }
    return lines;
}

} // namespace roundlay
