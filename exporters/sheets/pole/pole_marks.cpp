#include "exporters/sheets/cut_sheet/features.h"
#include "exporters/sheets/pole/story_pole.h"
#include "kernel/layout/cuts/asked.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double same_height = 0.01; ///< mm

bool meets(const Piece &piece, const CornerPlace &corner) {
    for (const Cut &cut : piece.cuts)
        if (corner_of(cut) == corner.name) return true;
    return piece.datum.at == corner.name || piece.far.at == corner.name;
}

} // namespace

std::vector<PoleMark> line_marks(const Layout &layout, const CornerPlace &corner, UnitSystem units) {
    std::vector<PoleMark> marks;
    for (const Piece &piece : layout.pieces) {
        if (piece.timber || !meets(piece, corner)) continue;
        const Vec3 at = piece.frame.to_local({corner.centre.x, corner.centre.y, 0});
        const double x = std::clamp(at.x, 0.0, piece.blank.length);
        const double z = piece.frame.origin.z + features_of(piece, units).level.at.at(x);
        const auto same = [&](const PoleMark &known) {
            return known.line_of == piece.round && std::abs(known.z - z) < same_height;
        };
        if (std::none_of(marks.begin(), marks.end(), same))
            marks.push_back({z, false, piece.tag, piece.round});
    }
    std::sort(marks.begin(), marks.end(), [](const PoleMark &a, const PoleMark &b) { return a.z < b.z; });
    return marks;
}

std::vector<PoleMark> pole_marks(const Layout &layout, const CornerPlace &corner) {
    Vec3 arris = layout.walls.at(corner.starts).frame.origin;
    if (corner.kind != CornerKind::corner) arris = {corner.centre.x, corner.centre.y, 0};
    std::vector<PoleMark> marks;
    const auto add = [&](double z, bool seam, const std::string &words) {
        for (PoleMark &known : marks)
            if (known.seam == seam && std::abs(known.z - z) < same_height) return;
        marks.push_back({z, seam, words});
    };
    for (const Piece &piece : layout.pieces) {
        if (!meets(piece, corner)) continue;
        add(piece.frame.origin.z + piece.blank.height, false, piece.tag);
        for (const Cut &cut : piece.cuts) {
            const SeamCut *seam = top_seam_at(cut, corner.name);
            if (seam == nullptr) continue;
            const Plane plane = to_world(seam->seam, piece.frame);
            add(plane.height_at(arris.x, arris.y), true, piece.tag + " / " + seam->other);
        }
    }
    std::sort(marks.begin(), marks.end(), [](const PoleMark &a, const PoleMark &b) { return a.z < b.z; });
    return marks;
}

} // namespace roundlay::sheets
