// Where a picture is taken from.
#pragma once

#include "kernel/geometry/vec.h"

#include <array>

namespace roundlay {

enum class Projection { parallel, perspective };

struct Camera {
    Vec3 eye{0, -10000, 0};    ///< millimetres, world
    Vec3 target;               ///< in the middle of the picture
    Vec3 up{0, 0, 1};          ///< not along the line of sight
    double view_height = 5000; ///< mm that the picture's height shows at the target, under either projection
    Projection projection = Projection::parallel;
};

/// Standard views. Elevations are named by the side they are seen from; the others look down on a corner.
enum class View { south, east, north, west, plan, south_east, north_east, north_west, south_west };

/// Looks at the whole box with a margin. aspect = width / height of the picture.
Camera looking_at(const Box3 &box, View view, double aspect, Projection projection = Projection::parallel);

/// The same direction of sight, moved so that the whole box fits.
Camera fitted(Camera camera, const Box3 &box, double aspect);

/// Turned about the target: by azimuth to the right round the upright axis, by elevation upward. Radians. The
/// eye stays a little short of straight above and below, so that up stays up.
Camera orbited(Camera camera, double azimuth, double elevation);

/// Column-major, as graphics libraries take it.
struct Matrix4 {
    std::array<double, 16> m{};
    double operator()(int row, int column) const { return m[static_cast<std::size_t>(4 * column + row)]; }
    double &operator()(int row, int column) { return m[static_cast<std::size_t>(4 * column + row)]; }
};
Matrix4 operator*(const Matrix4 &a, const Matrix4 &b);
std::array<double, 4> transformed(const Matrix4 &matrix, Vec3 p); ///< homogeneous

/// World to eye: x right, y up, z toward the viewer, origin at the eye.
Matrix4 view_matrix(const Camera &camera);

/// How deep the picture reaches: distances along the line of sight from the eye, mm. near < far; near > 0 in
/// perspective.
struct DepthRange {
    double near = 1, far = 2;
};
DepthRange depth_range(const Camera &camera, const Box3 &box);

/// Eye to clip space, -1..1 on each axis.
Matrix4 projection_matrix(const Camera &camera, double aspect, DepthRange range);

/// Millimetres that one pixel shows at a world point.
double pixel_size(const Camera &camera, Vec3 point, int picture_height);

} // namespace roundlay
