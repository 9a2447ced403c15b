#include "kernel/layout/pieces/piece_shape.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

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
    put_numbers(shape, piece.blank);
    for (const Cut &cut : piece.cuts)
        put_numbers(shape, cut);
    return shape;
}

PieceShape shape_as_made(const Piece &piece) {
    PieceShape shape = shape_of_wood(piece);
    shape.put(piece.datum.kind, piece.far.kind, piece.butt_at_datum, piece.timber.has_value(), piece.finish,
              piece.fabric, piece.datum.shoulder, piece.far.shoulder, piece.mends.has_value());
    for (const char letter : piece.species)
        shape.put(static_cast<int>(letter));
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
