#include "exporters/step/stock_solid.h"

#include "exporters/step/part_solid.h"
#include "kernel/geometry/cell.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/body.h"

#include <cmath>

namespace roundlay::step {

namespace {

bool is_round(const Cut &cut) {
    return match(
        cut, [](const RoundCut &) { return true; },
        giving<FaceCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
}

/// As the piece, with nothing but the round of its stick.
Piece round_stick(Piece piece) {
    std::erase_if(piece.cuts, [](const Cut &cut) { return !is_round(cut); });
    return piece;
}

const char *side_of(Vec3 out, const Frame &stick) {
    const Vec3 n = stick.direction_to_local(out);
    if (std::abs(n.x) > 0.5) return n.x < 0 ? "datum end" : "far end";
    if (std::abs(n.y) > 0.5) return n.y < 0 ? "outside" : "inside";
    return n.z < 0 ? "under" : "top";
}

} // namespace

PartSolid stock_solid(const Piece &piece) {
    if (hewn_faces(piece).round) {
        const Piece stick = round_stick(piece);
        return part_solid(stick, body_of(stick), true);
    }
    const Stock stock = stock_of(piece);
    const Box3 box{{0, 0, 0}, {stock.size.length, stock.size.width, stock.size.height}};
    PartSolid solid;
    solid.border = boundary_of(border_of({moved(box_cell(box), stock.frame)}));
    for (const BoundaryFace &face : solid.border->faces)
        solid.faces.emplace_back(side_of(face.plane.normal, stock.frame));
    solid.measures = measures_of(*solid.border);
    return solid;
}

} // namespace roundlay::step
