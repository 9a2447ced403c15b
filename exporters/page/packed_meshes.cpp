#include "exporters/mesh/shading.h"
#include "exporters/page/parts.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace roundlay {

namespace {

using Point = std::array<float, 3>;

class Packer {
  public:
    void add(const Mesh &mesh) {
        static_assert(std::endian::native == std::endian::little, "numbers are written as they lie");
        const ShadedMesh shown = shaded(mesh);
        const Box3 box = bounds(mesh);
        low_ = {box.low.x, box.low.y, box.low.z};
        size_ = {box.high.x - low_[0], box.high.y - low_[1], box.high.z - low_[2]};
        for (const auto &numbers : {low_, size_})
            for (const double number : numbers)
                put(static_cast<float>(number));
        put_count(shown.corners.size());
        put_count(shown.triangles.size() / 3);
        put_count(shown.points.size());
        put_count(shown.edges.size() / 2);
        for (const ShadedCorner &corner : shown.corners)
            put_place(corner.position);
        for (const ShadedCorner &corner : shown.corners)
            put_normal(corner.normal);
        for (const std::uint32_t corner : shown.triangles)
            put(corner);
        for (const Point &point : shown.points)
            put_place(point);
        for (const std::uint32_t end : shown.edges)
            put(end);
    }

    std::string bytes;

  private:
    template <typename Number> void put(Number number) {
        std::array<char, sizeof(Number)> room{};
        std::memcpy(room.data(), &number, sizeof(Number));
        bytes.append(room.data(), room.size());
    }
    void put_count(std::size_t count) { put(static_cast<std::uint32_t>(count)); }

    /// Of a log of 12 m to a fifth of a millimetre: no eye sees less of it on a phone.
    void put_place(const Point &point) {
        constexpr double steps = 65535;
        for (std::size_t i = 0; i < point.size(); ++i) {
            const double part = size_[i] > 0 ? (double{point[i]} - low_[i]) / size_[i] : 0;
            put(static_cast<std::uint16_t>(std::lround(std::clamp(part, 0.0, 1.0) * steps)));
        }
    }

    void put_normal(const Point &normal) {
        constexpr double steps = 127;
        for (const float part : normal)
            put(static_cast<std::int8_t>(std::lround(std::clamp(double{part}, -1.0, 1.0) * steps)));
    }

    std::array<double, 3> low_{}, size_{};
};

} // namespace

std::string packed_meshes(const Yard &yard) {
    Packer packer;
    for (const Mesh &mesh : yard.meshes)
        packer.add(mesh);
    return packer.bytes;
}

} // namespace roundlay
