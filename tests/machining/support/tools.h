// Shapes of what the file tells, and where faces lie. Shares nothing with the program.
#pragma once

#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <nlohmann/json.hpp>

#include <cmath>
#include <vector>

namespace operations_check {

using Json = nlohmann::json;

struct Vector {
    double x = 0, y = 0, z = 0;
};
inline Vector operator+(Vector a, Vector b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
inline Vector operator-(Vector a, Vector b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
inline Vector operator*(double k, Vector a) {
    return {k * a.x, k * a.y, k * a.z};
}
inline double dot(Vector a, Vector b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
inline Vector cross(Vector a, Vector b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(Vector a) {
    return std::sqrt(dot(a, a));
}
inline Vector vector(const Json &numbers) {
    return {numbers.at(0), numbers.at(1), numbers.at(2)};
}

/// What lies on the inner side of a plane.
struct HalfSpace {
    Vector point, normal;
};

/// A box with room to spare round the stock.
struct Room {
    Vector low, high;
};
Room room_round(const Json &stock);

TopoDS_Shape convex(std::vector<HalfSpace> planes, const Room &room);
TopoDS_Shape stick(const Json &round, const Room &room);
TopoDS_Shape tool_of(const Json &operation, const Room &room);

/// A place inside a face.
struct FaceAt {
    bool round = false;
    Vector point, out; ///< unit, out of the wood
    Vector way;        ///< the plane's normal out of the wood, or the axis
    Vector axis;       ///< a point of it
    double radius = 0;
};
FaceAt face_at(const TopoDS_Face &face);

} // namespace operations_check
