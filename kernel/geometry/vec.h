// Points and vectors in millimetres, and rigid frames.
#pragma once

#include <cmath>

namespace roundlay {

struct Vec2 {
    double x = 0, y = 0;
    bool operator==(const Vec2 &) const = default;
};

constexpr Vec2 operator+(Vec2 a, Vec2 b) {
    return {a.x + b.x, a.y + b.y};
}
constexpr Vec2 operator-(Vec2 a, Vec2 b) {
    return {a.x - b.x, a.y - b.y};
}
constexpr Vec2 operator*(double k, Vec2 a) {
    return {k * a.x, k * a.y};
}
constexpr double dot(Vec2 a, Vec2 b) {
    return a.x * b.x + a.y * b.y;
}
/// Z of the cross product: positive when b lies counter-clockwise of a.
constexpr double cross(Vec2 a, Vec2 b) {
    return a.x * b.y - a.y * b.x;
}
inline double length(Vec2 a) {
    return std::sqrt(dot(a, a));
}

struct Vec3 {
    double x = 0, y = 0, z = 0;
    bool operator==(const Vec3 &) const = default;
};

constexpr Vec3 operator+(Vec3 a, Vec3 b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
constexpr Vec3 operator-(Vec3 a, Vec3 b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
constexpr Vec3 operator-(Vec3 a) {
    return {-a.x, -a.y, -a.z};
}
constexpr Vec3 operator*(double k, Vec3 a) {
    return {k * a.x, k * a.y, k * a.z};
}
constexpr double dot(Vec3 a, Vec3 b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
constexpr Vec3 cross(Vec3 a, Vec3 b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(Vec3 a) {
    return std::sqrt(dot(a, a));
}
inline Vec3 unit(Vec3 a) {
    return (1.0 / length(a)) * a;
}

/// A right-handed rigid frame: where a piece's own axes lie in the world.
struct Frame {
    Vec3 origin;
    Vec3 x{1, 0, 0}, y{0, 1, 0}, z{0, 0, 1}; ///< unit, orthogonal

    constexpr Vec3 to_world(Vec3 p) const { return origin + p.x * x + p.y * y + p.z * z; }
    constexpr Vec3 direction_to_world(Vec3 v) const { return v.x * x + v.y * y + v.z * z; }
    constexpr Vec3 to_local(Vec3 p) const {
        return {dot(p - origin, x), dot(p - origin, y), dot(p - origin, z)};
    }
    constexpr Vec3 direction_to_local(Vec3 v) const { return {dot(v, x), dot(v, y), dot(v, z)}; }
};

struct Box3 {
    Vec3 low, high;
};

} // namespace roundlay
