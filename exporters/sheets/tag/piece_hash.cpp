#include "exporters/sheets/tag/tags.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>

namespace roundlay::sheets {
namespace {

/// FNV-1a, 64 bits.
class Hash {
  public:
    void add(double mm) { add_number(std::llround(mm * 100)); }
    /// A slope or a direction: finer, since it is measured over a length.
    void add_fine(double v) { add_number(std::llround(v * 1e6)); }
    void add_number(std::int64_t number) {
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

void add(Hash &hash, const SeamCut &cut) {
    hash.add_number(cut.side == Side::top ? 1 : 2);
    hash.add(cut.x_from);
    hash.add(cut.x_to);
    hash.add_fine(cut.skew);
    hash.add(cut.proud);
    for (const double v : {cut.seam.normal.x, cut.seam.normal.y, cut.seam.normal.z})
        hash.add_fine(v);
    hash.add(cut.seam.offset);
}

void add(Hash &hash, const FaceCut &cut) {
    hash.add_number(6 + static_cast<int>(cut.face));
    for (const double v : {cut.plane.normal.x, cut.plane.normal.y, cut.plane.normal.z})
        hash.add_fine(v);
    hash.add(cut.plane.offset);
}

void add(Hash &hash, const BoxCut &cut) {
    hash.add_number(3);
    for (const Vec3 &p : {cut.box.low, cut.box.high})
        for (const double v : {p.x, p.y, p.z})
            hash.add(v);
    if (cut.fall == 0) return; // so that level sills keep the hash on tags that are printed
    hash.add_fine(cut.fall);
    hash.add(cut.fall_from);
}

void add(Hash &hash, const PocketCut &cut) {
    hash.add_number(12);
    for (const double v : {cut.x, cut.y_face, cut.y_back, cut.half_at_face, cut.half_at_back, cut.z_top})
        hash.add(v);
    for (const double v : {cut.bed.normal.x, cut.bed.normal.y, cut.bed.normal.z})
        hash.add_fine(v);
    hash.add(cut.bed.offset);
}

void add(Hash &hash, const CheekCut &cut) {
    hash.add_number(13);
    hash.add(cut.x_from);
    hash.add(cut.x_to);
    for (const double v : {cut.plane.normal.x, cut.plane.normal.y})
        hash.add_fine(v);
    hash.add(cut.plane.offset);
}

void add(Hash &hash, const Bore &bore) {
    hash.add_number(bore.from_top ? 4 : 5);
    for (const double v : {bore.x, bore.y, bore.z_from, bore.z_to, bore.diameter})
        hash.add(v);
}

void add(Hash &hash, const RoundCut &cut) {
    hash.add_number(12);
    for (const double v : {cut.from.y, cut.from.z, cut.to.y, cut.to.z, cut.radius})
        hash.add(v);
}

void add(Hash &hash, const ScopeCut &cut) {
    hash.add_number(cut.use == ScopeUse::groove ? 13 : 14);
    const Vec3 foot = cut.at - dot(cut.at, cut.along) * cut.along;
    for (const double v : {foot.x, foot.y, foot.z, cut.radius, cut.x_from, cut.x_to})
        hash.add(v);
    hash.add_fine(cut.along.y);
}

} // namespace

std::string piece_hash(const Piece &piece) {
    Hash hash;
    for (const double v : {piece.blank.length, piece.blank.width, piece.blank.height})
        hash.add(v);
    for (const Cut &cut : piece.cuts)
        std::visit([&](const auto &c) { add(hash, c); }, cut);
    const std::uint64_t folded = hash.value() ^ (hash.value() >> 32U);
    std::array<char, 16> room{};
    std::snprintf(room.data(), room.size(), "%08x", static_cast<unsigned>(folded & 0xFFFFFFFFU));
    return room.data();
}

std::string tag_code(const Piece &piece, const std::string &revision) {
    return piece.tag + (revision.empty() ? "" : " r." + revision) + " " + piece_hash(piece);
}

} // namespace roundlay::sheets
