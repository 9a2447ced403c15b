#include "exporters/step/stock_solid.h"

#include "kernel/boundary/face_words.h"
#include "kernel/geometry/cell.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/body.h"
#include "kernel/solid/seen_faces.h"

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

PartSolid solid_of(const Piece &stick) {
    const Body body = body_of(stick);
    PartSolid solid;
    solid.border = boundary_of(body);
    if (!solid.border) solid.built = build(body).solid;
    solid.faces = solid.border ? face_names(stick, *solid.border, true)
                               : face_names(stick, seen_faces(solid.built), true);
    solid.measures = solid.border ? measures_of(*solid.border) : measures_of(solid.built);
    return solid;
}

} // namespace

PartSolid stock_solid(const Piece &piece) {
    if (hewn_faces(piece).round) return solid_of(round_stick(piece));
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
