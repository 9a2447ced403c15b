#include "exporters/print/stl.h"

#include <array>
#include <bit>
#include <cstdint>
#include <cstring>

namespace roundlay {

namespace {

template <typename Number> void put(std::string &bytes, Number number) {
    static_assert(std::endian::native == std::endian::little, "numbers are written as they lie");
    std::array<char, sizeof(Number)> room{};
    std::memcpy(room.data(), &number, sizeof(Number));
    bytes.append(room.data(), room.size());
}

void put(std::string &bytes, Vec3 point) {
    for (const double part : {point.x, point.y, point.z})
        put(bytes, static_cast<float>(part));
}

void put_triangle(std::string &bytes, const Mesh &mesh, const MeshTriangle &triangle) {
    const auto point = [&](int corner) {
        return mesh.points[static_cast<std::size_t>(triangle.corners.at(corner))];
    };
    const Vec3 a = point(0), b = point(1), c = point(2), across = cross(b - a, c - a);
    const double size = length(across);
    put(bytes, size > 0 ? (1 / size) * across : Vec3{});
    for (const Vec3 corner : {a, b, c})
        put(bytes, corner);
    put(bytes, std::uint16_t{0});
}

} // namespace

std::string write_stl(const std::vector<Mesh> &meshes) {
    constexpr std::size_t header = 80;
    std::string bytes = "roundlay, millimetres"; // not "solid", by which readers know the other kind
    bytes.resize(header, ' ');
    std::size_t count = 0;
    for (const Mesh &mesh : meshes)
        count += mesh.triangles.size();
    put(bytes, static_cast<std::uint32_t>(count));
    for (const Mesh &mesh : meshes)
        for (const MeshTriangle &triangle : mesh.triangles)
            put_triangle(bytes, mesh, triangle);
    return bytes;
}

} // namespace roundlay
