#include "exporters/picture/camera.h"

#include <algorithm>
#include <numbers>

namespace roundlay {
namespace {

constexpr double margin = 1.06;                               // around a fitted box
constexpr double field_of_view = 28 * std::numbers::pi / 180; // upright; a calm lens, little stretching

struct Axes {
    Vec3 right, up, back;
};

Axes axes(const Camera &camera) {
    const Vec3 back = unit(camera.eye - camera.target);
    const Vec3 right = unit(cross(camera.up, back));
    return {right, cross(back, right), back};
}

Vec3 corner_of(const Box3 &box, int i) {
    return {i & 1 ? box.high.x : box.low.x, i & 2 ? box.high.y : box.low.y, i & 4 ? box.high.z : box.low.z};
}

Vec3 direction_of(View view) {
    constexpr double lift = 0.46; // corners are looked at from 25 degrees above
    switch (view) {
    case View::south:
        return {0, -1, 0};
    case View::east:
        return {1, 0, 0};
    case View::north:
        return {0, 1, 0};
    case View::west:
        return {-1, 0, 0};
    case View::plan:
        return {0, 0, 1};
    // Off the diagonal, so that the two walls of a corner are seen at different slants.
    case View::south_east:
        return {0.62, -0.78, lift};
    case View::north_east:
        return {0.78, 0.62, lift};
    case View::north_west:
        return {-0.62, 0.78, lift};
    case View::south_west:
        return {-0.78, -0.62, lift};
    }
    return {0, -1, 0};
}

/// Half of the picture's height that a point needs, for an eye so far away that sight lines run parallel.
double needed_parallel(const Axes &a, Vec3 from_target, double aspect) {
    return std::max(std::abs(dot(from_target, a.up)), std::abs(dot(from_target, a.right)) / aspect);
}

/// How far the eye must stand from the target to have a point in the picture, with room around it. The room
/// is across the picture only: a deep box would else be pushed away by a share of its depth.
double needed_distance(const Axes &a, Vec3 from_target, double aspect) {
    const double across = margin * needed_parallel(a, from_target, aspect);
    return dot(from_target, a.back) + across / std::tan(field_of_view / 2);
}

/// The middle of what the box covers across and up the picture, at the depth of the box's centre.
Vec3 middle(const Axes &a, const Box3 &box) {
    const Vec3 centre = 0.5 * (box.low + box.high);
    double left = 0, right = 0, low = 0, high = 0;
    for (int i = 0; i < 8; ++i) {
        const Vec3 p = corner_of(box, i) - centre;
        left = std::min(left, dot(p, a.right));
        right = std::max(right, dot(p, a.right));
        low = std::min(low, dot(p, a.up));
        high = std::max(high, dot(p, a.up));
    }
    return centre + (left + right) / 2 * a.right + (low + high) / 2 * a.up;
}

constexpr double smallest = 100; // mm: an empty scene still has a camera

Camera fitted_parallel(Camera camera, const Axes &a, const Box3 &box, double aspect) {
    camera.view_height = smallest;
    for (int i = 0; i < 8; ++i) {
        const double needed = needed_parallel(a, corner_of(box, i) - camera.target, aspect);
        camera.view_height = std::max(camera.view_height, 2 * margin * needed);
    }
    camera.eye = camera.target + (2 * length(box.high - box.low) + smallest) * a.back;
    return camera;
}

/// Near corners spread wider than far ones: the target moves until both borders of the picture are as full.
Camera fitted_perspective(Camera camera, const Axes &a, const Box3 &box, double aspect) {
    constexpr int rounds = 8; // each leaves less than half of what is amiss
    double distance = smallest;
    for (int round = 0; round < rounds; ++round) {
        distance = smallest;
        for (int i = 0; i < 8; ++i)
            distance = std::max(distance, needed_distance(a, corner_of(box, i) - camera.target, aspect));
        double left = 0, right = 0, low = 0, high = 0; // of what is seen, at the target's distance
        for (int i = 0; i < 8; ++i) {
            const Vec3 p = corner_of(box, i) - camera.target;
            const double nearer = distance / (distance - dot(p, a.back));
            left = std::min(left, nearer * dot(p, a.right));
            right = std::max(right, nearer * dot(p, a.right));
            low = std::min(low, nearer * dot(p, a.up));
            high = std::max(high, nearer * dot(p, a.up));
        }
        camera.target = camera.target + (left + right) / 2 * a.right + (low + high) / 2 * a.up;
    }
    camera.view_height = 2 * distance * std::tan(field_of_view / 2);
    camera.eye = camera.target + distance * a.back;
    return camera;
}

} // namespace

Camera fitted(Camera camera, const Box3 &box, double aspect) {
    const Axes a = axes(camera);
    camera.target = middle(a, box);
    return camera.projection == Projection::parallel ? fitted_parallel(camera, a, box, aspect)
                                                     : fitted_perspective(camera, a, box, aspect);
}

Camera looking_at(const Box3 &box, View view, double aspect, Projection projection) {
    Camera camera;
    camera.projection = projection;
    camera.target = {};
    camera.eye = direction_of(view);
    camera.up = view == View::plan ? Vec3{0, 1, 0} : Vec3{0, 0, 1};
    return fitted(camera, box, aspect);
}

Camera orbited(Camera camera, double azimuth, double elevation) {
    constexpr double steepest = 89.5 * std::numbers::pi / 180;
    const Vec3 back = camera.eye - camera.target;
    const double distance = length(back);
    const bool from_plan = std::hypot(back.x, back.y) < distance * std::cos(steepest) / 2;
    // Straight from above or below the picture's upward direction tells where the eye came from.
    const double turned = from_plan ? std::atan2(-camera.up.y, -camera.up.x) : std::atan2(back.y, back.x);
    const double lifted = std::asin(std::clamp(back.z / distance, -1.0, 1.0));
    const double a = turned + azimuth, e = std::clamp(lifted + elevation, -steepest, steepest);
    camera.eye =
        camera.target + distance * Vec3{std::cos(e) * std::cos(a), std::cos(e) * std::sin(a), std::sin(e)};
    camera.up = {0, 0, 1};
    return camera;
}

Matrix4 operator*(const Matrix4 &a, const Matrix4 &b) {
    Matrix4 product;
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column)
            for (int k = 0; k < 4; ++k)
                product(row, column) += a(row, k) * b(k, column);
    return product;
}

std::array<double, 4> transformed(const Matrix4 &matrix, Vec3 p) {
    std::array<double, 4> out{};
    for (int row = 0; row < 4; ++row)
        out[static_cast<std::size_t>(row)] =
            matrix(row, 0) * p.x + matrix(row, 1) * p.y + matrix(row, 2) * p.z + matrix(row, 3);
    return out;
}

Matrix4 view_matrix(const Camera &camera) {
    const Axes a = axes(camera);
    Matrix4 view;
    int row = 0;
    for (const Vec3 axis : {a.right, a.up, a.back}) {
        view(row, 0) = axis.x;
        view(row, 1) = axis.y;
        view(row, 2) = axis.z;
        view(row, 3) = -dot(axis, camera.eye);
        ++row;
    }
    view(3, 3) = 1;
    return view;
}

DepthRange depth_range(const Camera &camera, const Box3 &box) {
    constexpr double slack = 10;          // mm in front and behind, so that nothing lies on a border
    constexpr double nearest_part = 1e-3; // of the far distance: what 24 bits of depth bear in perspective
    const Axes a = axes(camera);
    DepthRange range{1e300, -1e300};
    for (int i = 0; i < 8; ++i) {
        const double distance = -dot(corner_of(box, i) - camera.eye, a.back);
        range.near = std::min(range.near, distance - slack);
        range.far = std::max(range.far, distance + slack);
    }
    if (camera.projection == Projection::perspective) {
        range.far = std::max(range.far, slack);
        range.near = std::max(range.near, range.far * nearest_part);
        range.far = std::max(range.far, 2 * range.near);
    }
    return range;
}

Matrix4 projection_matrix(const Camera &camera, double aspect, DepthRange range) {
    const double deep = range.far - range.near;
    Matrix4 p;
    if (camera.projection == Projection::parallel) {
        p(0, 0) = 2 / (camera.view_height * aspect);
        p(1, 1) = 2 / camera.view_height;
        p(2, 2) = -2 / deep;
        p(2, 3) = -(range.far + range.near) / deep;
        p(3, 3) = 1;
        return p;
    }
    const double lens = 2 * length(camera.eye - camera.target) / camera.view_height;
    p(0, 0) = lens / aspect;
    p(1, 1) = lens;
    p(2, 2) = -(range.far + range.near) / deep;
    p(2, 3) = -2 * range.far * range.near / deep;
    p(3, 2) = -1;
    return p;
}

double pixel_size(const Camera &camera, Vec3 point, int picture_height) {
    const double at_target = camera.view_height / picture_height;
    if (camera.projection == Projection::parallel) return at_target;
    const double to_target = length(camera.eye - camera.target);
    const double to_point = dot(camera.eye - point, axes(camera).back);
    return at_target * std::max(to_point, 0.0) / to_target;
}

} // namespace roundlay
