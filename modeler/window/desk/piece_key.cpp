#include "modeler/window/desk/piece_key.h"

#include <type_traits>

namespace roundlay::window {

namespace {

/// Cuts are taken apart name by name: one that learns another does not compile here until it is put in or
/// left out.
class PutCut {
  public:
    explicit PutCut(std::string &key) : key_(key) {}

    void operator()(const FaceCut &cut) {
        const auto &[face, plane] = cut;
        put(face, plane);
    }
    void operator()(const SeamCut &cut) {
        const auto &[end, side, x_from, x_to, seam, corner, other, skew, proud, runs_on] = cut;
        static_cast<void>(corner), static_cast<void>(other); // what it is called
        put(end, side, x_from, x_to, seam, skew, proud, runs_on);
    }
    void operator()(const BoxCut &cut) {
        const auto &[use, box, opening, fall, fall_from] = cut;
        static_cast<void>(opening);
        put(use, box, fall, fall_from);
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
        const auto &[use, at, along, radius, scribe, x_from, x_to, end, runs_on, corner, other] = cut;
        static_cast<void>(corner), static_cast<void>(other);
        put(use, at, along, radius, scribe, x_from, x_to, end, runs_on);
    }
    void operator()(const Blank &blank) {
        const auto &[length, width, height] = blank;
        put(length, width, height);
    }

  private:
    template <typename... All> void put(const All &...all) { (put_one(all), ...); }
    template <typename Number> void put_one(const Number &number) {
        static_assert(std::is_arithmetic_v<Number> || std::is_enum_v<Number>);
        key_.append(reinterpret_cast<const char *>(&number), sizeof number);
    }
    void put_one(const Vec3 &p) { put(p.x, p.y, p.z); }
    void put_one(const Box3 &box) { put(box.low, box.high); }
    void put_one(const Plane &plane) { put(plane.normal, plane.offset, plane.round); }

    std::string &key_;
};

} // namespace

std::string piece_key(const Piece &piece) {
    std::string key;
    PutCut put(key);
    put(piece.blank);
    for (const Cut &cut : piece.cuts) {
        key += static_cast<char>(cut.index());
        std::visit(put, cut);
    }
    return key;
}

} // namespace roundlay::window
