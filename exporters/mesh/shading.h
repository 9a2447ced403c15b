// A mesh as a graphics library wants it: corners with normals in single precision.
#pragma once

#include "exporters/mesh/mesh.h"

#include <array>
#include <cstdint>
#include <vector>

namespace roundlay {

struct ShadedCorner {
    std::array<float, 3> position; ///< millimetres, piece frame
    std::array<float, 3> normal;   ///< unit: flat on plane faces, round in bores
};

struct ShadedMesh {
    std::vector<ShadedCorner> corners;        ///< a point appears once for each surface it lies on
    std::vector<std::uint32_t> triangles;     ///< three indices each
    std::vector<std::array<float, 3>> points; ///< of the true edges, each once
    std::vector<std::uint32_t> edges;         ///< two indices into `points` each
};

ShadedMesh shaded(const Mesh &mesh);

} // namespace roundlay
