#include "kernel/layout/pieces/piece_shape.h"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace roundlay {

namespace {

constexpr double lever = 1000; ///< mm, so that a plane's slopes weigh as much as its place

/// Cuts are taken apart name by name: one that learns another does not compile here until it is put in or
/// left out.
class PutCut {
  public:
    explicit PutCut(PieceShape &shape) : shape_(shape) {}

    void operator()(const FaceCut &cut) {
        const auto &[face, plane] = cut;
        put(face, plane);
    }
    void operator()(const SeamCut &cut) {
        const auto &[end, side, x_from, x_to, seam, corner, other, skew, proud, runs_on, open] = cut;
        static_cast<void>(corner), static_cast<void>(other); // what it is called
        put(end, side, runs_on, open, x_from, x_to, skew, proud, seam.round);
        // Heights at two ends of the seam tell the plane in millimetres.
        put(seam.height_at(x_from, 0), seam.height_at(x_to, 0), seam.height_at(x_from, lever));
    }
    void operator()(const BoxCut &cut) {
        const auto &[use, box, opening, fall, fall_from] = cut;
        static_cast<void>(opening);
        put(use, box.low, box.high, lever * fall, fall_from);
    }
    void operator()(const PocketCut &cut) {
        const auto &[x, y_face, y_back, half_at_face, half_at_back, bed, z_top, holds] = cut;
        static_cast<void>(holds);
        put(x, y_face, y_back, half_at_face, half_at_back, bed, z_top);
    }
    void operator()(const CheekCut &cut) {
        const auto &[end, side, x_from, x_to, plane] = cut;
        put(end, side, x_from, x_to, plane);
    }
    void operator()(const Bore &cut) {
        const auto &[x, y, z_from, z_to, diameter, peg, from_top, through, use] = cut;
        static_cast<void>(peg); // which of the pegs goes into it
        put(x, y, z_from, z_to, diameter, from_top, through, use ? static_cast<int>(*use) : -1);
    }
    void operator()(const RoundCut &cut) {
        const auto &[from, to, radius] = cut;
        put(from, to, radius);
    }
    void operator()(const ScopeCut &cut) {
        const auto &[use, at, along, radius, scribe, cheeks, x_from, x_to, end, runs_on, corner, other] = cut;
        static_cast<void>(corner), static_cast<void>(other);
        const Vec3 foot = at - dot(at, along) * along; // any point of the axis tells the same line
        put(use, end, runs_on, foot, lever * along, radius, scribe, cheeks, x_from, x_to);
    }
    void operator()(const Blank &blank) {
        const auto &[length, width, height] = blank;
        put(length, width, height);
    }

    template <typename... All> void put(const All &...all) { (put_one(all), ...); }

  private:
    template <typename Number> void put_one(const Number &number) {
        if constexpr (std::is_floating_point_v<Number>)
            shape_.numbers.push_back(number);
        else
            shape_.kinds.push_back(static_cast<int>(number));
    }
    void put_one(const Vec3 &p) { put(p.x, p.y, p.z); }
    void put_one(const Plane &plane) {
        put(plane.round);
        for (const Vec3 p : {Vec3{}, Vec3{lever, 0, 0}, Vec3{0, lever, 0}, Vec3{0, 0, lever}})
            put(plane.distance(p));
    }

    PieceShape &shape_;
};

/// FNV-1a, 64 bits.
class Hash {
  public:
    void add(std::int64_t number) {
        auto bits = static_cast<std::uint64_t>(number);
        for (int i = 0; i < 8; ++i) {
            state_ = (state_ ^ (bits & 0xFFU)) * 0x100000001B3ULL;
            bits >>= 8U;
        }
    }
    std::uint64_t value() const { return state_; }

  private:
    std::uint64_t state_ = 0xCBF29CE484222325ULL;
};

template <typename Number> void append(std::string &bytes, const std::vector<Number> &all) {
    bytes.append(reinterpret_cast<const char *>(all.data()), all.size() * sizeof(Number));
}

} // namespace

PieceShape shape_of_wood(const Piece &piece) {
    PieceShape shape;
    PutCut put(shape);
    put(piece.blank);
    for (const Cut &cut : piece.cuts) {
        shape.kinds.push_back(static_cast<int>(cut.index()));
        std::visit(put, cut);
    }
    return shape;
}

PieceShape shape_as_made(const Piece &piece) {
    PieceShape shape = shape_of_wood(piece);
    PutCut(shape).put(piece.datum.kind, piece.far.kind, piece.butt_at_datum, piece.timber >= 0, piece.finish,
                      piece.fabric, piece.datum.shoulder, piece.far.shoulder);
    return shape;
}

bool alike(const PieceShape &a, const PieceShape &b) {
    constexpr double within = 1e-6;
    return a.kinds == b.kinds &&
           std::equal(a.numbers.begin(), a.numbers.end(), b.numbers.begin(), b.numbers.end(),
                      [](double x, double y) { return std::abs(x - y) <= within; });
}

std::string bytes_of(const PieceShape &shape) {
    std::string bytes;
    append(bytes, shape.kinds);
    append(bytes, shape.numbers);
    return bytes;
}

std::uint32_t digest_of(const PieceShape &shape) {
    constexpr double steps = 100, off_the_half = 0.2718; // no length is stated at 0.0023 mm
    Hash hash;
    for (const int kind : shape.kinds)
        hash.add(kind);
    for (const double number : shape.numbers)
        hash.add(std::llround(number * steps + off_the_half));
    return static_cast<std::uint32_t>(hash.value() ^ (hash.value() >> 32U));
}

} // namespace roundlay
