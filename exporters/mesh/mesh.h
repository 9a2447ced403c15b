// The border of a piece as triangles, in doubles: for pictures, phones and whatever else wants no exact
// solid.
#pragma once

#include "kernel/geometry/vec.h"
#include "kernel/layout/wood/body.h"

#include <array>
#include <optional>
#include <vector>

namespace roundlay {

/// A part of the border that is shaded as one: a plane face, a flat of a round surface, or the wall of a
/// bore.
struct Surface {
    Vec3 normal;        ///< plane face: unit, out of the wood. Unused for a bore's wall.
    bool round = false; ///< wall of an upright bore: the normal points to the axis
    Vec2 axis;          ///< of the bore
    std::optional<RoundSurface> flat_of = std::nullopt; ///< shaded as that surface, not as the flat
};

/// Unit, out of the wood.
Vec3 normal_at(const Surface &surface, Vec3 point);

struct MeshTriangle {
    std::array<int, 3> corners; ///< counter-clockwise seen from outside; indices into Mesh::points
    int surface;                ///< index into Mesh::surfaces
};

/// Closed: neighbouring triangles share their points, every side of a triangle is used exactly once in each
/// direction. Millimetres, piece frame. A bore of diameter d is a prism whose corners lie on its circle.
struct Mesh {
    std::vector<Vec3> points;
    std::vector<Surface> surfaces;
    std::vector<MeshTriangle> triangles;
    std::vector<std::array<int, 2>> edges; ///< true edges for drawing: between faces, and the bores' circles
};

struct MeshOptions {
    int sides = 24; ///< of the prism that stands for a bore; 0 leaves the bores out, else 3 to 360
};

/// Bores that are not clear (Body::bores_clear) are carved out of body.cells, which takes milliseconds
/// instead of microseconds and shades their walls flat. Throws std::invalid_argument for a number of sides
/// out of range.
Mesh mesh_of(const Body &body, const MeshOptions &options = {});

double volume(const Mesh &mesh); ///< mm3
Box3 bounds(const Mesh &mesh);
/// Every side of a triangle is used exactly once in each direction.
bool is_closed(const Mesh &mesh);

/// What a prism with this many sides takes out in place of the bore's cylinder, mm3.
double prism_volume(const Bore &bore, int sides);

} // namespace roundlay
