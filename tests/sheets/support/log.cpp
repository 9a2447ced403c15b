#include "tests/sheets/support/log.h"

namespace roundlay::test {
namespace {

constexpr double slope = 1.0 / 8;

/// Its height is stated at the shoulder on the outside face.
SeamCut tail(End end, Side side, double at_shoulder, const std::string &other) {
    SeamCut cut;
    cut.end = end;
    cut.side = side;
    cut.x_from = end == End::datum ? 0 : 4800;
    cut.x_to = end == End::datum ? 200 : 5000;
    const double shoulder = end == End::datum ? 200 : 4800;
    const double outward = end == End::datum ? -1 : 1, up = side == Side::top ? 1 : -1;
    const double slope_x = up * outward * slope, slope_y = slope * up;
    const Plane seam = plane_over(at_shoulder - slope_x * shoulder, slope_x, slope_y);
    cut.seam = side == Side::top ? seam : seam.flipped();
    cut.corner = end == End::datum ? "DA" : "AB";
    cut.other = other;
    return cut;
}

} // namespace

Bore peg(double x, bool through) {
    Bore bore;
    bore.x = x;
    bore.y = 100;
    bore.z_from = through ? 0 : 115;
    bore.z_to = 230;
    bore.diameter = 32;
    bore.through = through;
    return bore;
}

Piece sample_log() {
    Piece piece;
    piece.tag = "A-05-1";
    piece.round = 5;
    piece.blank = {5000, 200, 230};
    piece.cuts = {tail(End::datum, Side::top, 140, "D-06-1"), tail(End::datum, Side::under, 90, "D-05-1"),
                  tail(End::far, Side::top, 140, "B-06-1"), tail(End::far, Side::under, 90, "B-05-1")};
    BoxCut sill;
    sill.box = {{2000, -50, 150}, {2900, 250, 280}};
    sill.opening = "east window";
    piece.cuts.emplace_back(sill);
    for (const double x : {700.0, 1500.0, 3400.0, 4300.0})
        piece.cuts.emplace_back(peg(x, x < 3000));
    piece.above = {"A-06-1"};
    piece.below = {"A-04-1"};
    piece.raise = 17;
    return piece;
}

Layout layout_of(const Piece &piece) {
    Layout layout;
    layout.name = "Larch Hollow";
    WallPlace wall;
    wall.name = "A";
    layout.walls = {wall};
    layout.pieces = {piece};
    layout.models = {{{Index<Piece>(0)}}};
    return layout;
}

} // namespace roundlay::test
