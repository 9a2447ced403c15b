#include "kernel/layout/mends/section_left.h"

#include "kernel/layout/cuts/match.h"
#include "kernel/layout/mends/mend_region.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

SectionLeft section_at(const MendCut &cut, const HewnFaces &faces, double x) {
    SectionLeft left;
    left.width = faces.innermost(x) - faces.outermost(x), left.height = faces.highest(x) - faces.lowest(x);
    left.from_side = is_side(cut.face);
    const double whole = left.from_side ? left.width : left.height;
    left.taken = std::clamp(depth_of(faces, cut, x), 0.0, whole);
    const double part = 1 - left.taken / whole;
    left.area = part, left.modulus = left.from_side ? part : part * part;
    return left;
}

int floored(double part) {
    constexpr double percent = 100, hair = 1e-9;
    return static_cast<int>(std::floor(percent * part + hair));
}

} // namespace

std::vector<SectionLeft> sections_left(const Piece &piece) {
    const HewnFaces faces = hewn_faces(piece);
    std::vector<SectionLeft> all;
    if (faces.round != nullptr) return all;
    const auto add = [&](const MendCut &cut) {
        const double from = std::max(0.0, cut.x_from), to = std::min(piece.blank.length, cut.x_to);
        const SectionLeft a = section_at(cut, faces, from), b = section_at(cut, faces, to);
        all.push_back(a.modulus < b.modulus ? a : b);
    };
    for (const Cut &cut : piece.cuts)
        match(cut, add, passing<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, Bore>);
    return all;
}

Said said_of(const SectionLeft &left) {
    const LengthAmount b = in_mm(left.width), h = in_mm(left.height), d = in_mm(left.taken);
    const int area = floored(left.area), modulus = floored(left.modulus);
    return left.from_side
               ? said("the old wood alone keeps %1 percent of the log's area and %2 percent of its section "
                      "modulus for loads from above, (b - d) / b of both, b = %3, h = %4, d = %5; nothing is "
                      "counted for the new wood. That is geometry, no verdict: local code and licensed "
                      "practice say what it may carry",
                      area, modulus, b, h, d)
               : said("the old wood alone keeps %1 percent of the log's area, (h - d) / h, and %2 percent of "
                      "its section modulus for loads from above, (h - d)^2 / h^2, b = %3, h = %4, d = %5; "
                      "nothing is counted for the new wood. That is geometry, no verdict: local code and "
                      "licensed practice say what it may carry",
                      area, modulus, b, h, d);
}

} // namespace roundlay
