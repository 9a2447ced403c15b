#include "kernel/layout/cuts/numbers.h"

#include "kernel/layout/cuts/match.h"

namespace roundlay {

namespace {

constexpr double lever = 1000; ///< mm, so that a plane's slopes weigh as much as its place

/// Cuts are taken apart name by name: one that learns another does not compile here until it is put in or
/// left out.
class PutCut {
  public:
    explicit PutCut(CutNumbers &all) : all_(all) {}

    void operator()(const FaceCut &cut) {
        const auto &[face, plane] = cut;
        all_.put(face, plane);
    }
    void operator()(const SeamCut &cut) {
        const auto &[end, side, x_from, x_to, seam, corner, other, skew, proud, runs_on, open] = cut;
        static_cast<void>(corner), static_cast<void>(other); // what it is called
        all_.put(end, side, runs_on, open, x_from, x_to, skew, proud, seam.round);
        // Heights at two ends of the seam tell the plane in millimetres.
        all_.put(seam.height_at(x_from, 0), seam.height_at(x_to, 0), seam.height_at(x_from, lever));
    }
    void operator()(const BoxCut &cut) {
        const auto &[use, box, opening, fall, fall_from] = cut;
        static_cast<void>(opening);
        all_.put(use, box.low, box.high, lever * fall, fall_from);
    }
    void operator()(const PocketCut &cut) {
        const auto &[x, y_face, y_back, half_at_face, half_at_back, bed, z_top, holds] = cut;
        static_cast<void>(holds);
        all_.put(x, y_face, y_back, half_at_face, half_at_back, bed, z_top);
    }
    void operator()(const CheekCut &cut) {
        const auto &[end, side, x_from, x_to, plane] = cut;
        all_.put(end, side, x_from, x_to, plane);
    }
    void operator()(const Bore &cut) {
        const auto &[x, y, z_from, z_to, diameter, peg, from_top, through, use] = cut;
        static_cast<void>(peg); // which of the pegs goes into it
        all_.put(x, y, z_from, z_to, diameter, from_top, through, use ? static_cast<int>(*use) : -1);
    }
    void operator()(const RoundCut &cut) {
        const auto &[from, to, radius] = cut;
        all_.put(from, to, radius);
    }
    void operator()(const ScopeCut &cut) {
        const auto &[use, at, along, radius, scribe, cheeks, x_from, x_to, end, runs_on, corner, other] = cut;
        static_cast<void>(corner), static_cast<void>(other);
        const Vec3 foot = at - dot(at, along) * along; // any point of the axis tells the same line
        all_.put(use, end, runs_on, foot, lever * along, radius, scribe, cheeks, x_from, x_to);
    }

    void operator()(const MendCut &cut) {
        const auto &[use, face, x_from, x_to, low, high, bed, piece] = cut;
        static_cast<void>(piece);
        all_.put(use, face, x_from, x_to, low, high, bed);
    }

  private:
    CutNumbers &all_;
};

} // namespace

void CutNumbers::put_one(const Plane &plane) {
    put(plane.round);
    for (const Vec3 p : {Vec3{}, Vec3{lever, 0, 0}, Vec3{0, lever, 0}, Vec3{0, 0, lever}})
        put(plane.distance(p));
}

void put_numbers(CutNumbers &all, const Blank &blank) {
    const auto &[length, width, height] = blank;
    all.put(length, width, height);
}

void put_numbers(CutNumbers &all, const Cut &cut) {
    all.put(cut.index());
    match(cut, PutCut(all));
}

} // namespace roundlay
