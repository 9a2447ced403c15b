#include "kernel/layout/pieces/stock.h"

#include "kernel/geometry/cell.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Between the slopes of its two faces every stick is as high as the log where it is highest: the one nearest
/// to level.
double lean_of(const Piece &piece) {
    const HewnFaces faces = hewn_faces(piece);
    const double under = faces.under.per_mm, top = faces.top.per_mm;
    return std::clamp(0.0, std::min(under, top), std::max(under, top));
}

Frame leaning(double lean) {
    const double k = 1 / std::sqrt(1 + lean * lean);
    Frame frame;
    frame.x = {k, 0, k * lean};
    frame.y = {0, 1, 0};
    frame.z = {-k * lean, 0, k};
    return frame;
}

/// No wood lies further out this way than the round stick does.
Plane beside(const RoundCut &round, Vec3 out) {
    return {out, std::max(dot(out, round.from), dot(out, round.to)) + round.radius};
}

/// The log with its hewn faces and ends and nothing else cut.
Cell hewn_cell(const Piece &piece, const Frame &frame) {
    Cell cell = box_cell({{0, 0, 0}, {piece.blank.length, piece.blank.width, piece.blank.height}});
    for (const Cut &cut : piece.cuts)
        match(
            cut, [&](const FaceCut &face) { cell = clipped(cell, face.plane); },
            [&](const RoundCut &round) {
                for (const Vec3 &out : {frame.y, -frame.y, frame.z, -frame.z})
                    cell = clipped(cell, beside(round, out));
            },
            passing_all<Joinery, Boring>);
    return cell;
}

} // namespace

Stock stock_of(const Piece &piece) {
    Stock stock;
    stock.lean = lean_of(piece);
    stock.frame = leaning(stock.lean);
    const Cell hewn = hewn_cell(piece, stock.frame);
    if (hewn.empty()) {
        stock.size = piece.blank;
        return stock;
    }
    Vec3 low = stock.frame.to_local(hewn.faces.front().ring.front()), high = low;
    for (const CellFace &face : hewn.faces)
        for (const Vec3 &corner : face.ring) {
            const Vec3 p = stock.frame.to_local(corner);
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
    stock.size = {high.x - low.x, high.y - low.y, high.z - low.z};
    stock.frame.origin = stock.frame.to_world(low);
    return stock;
}

bool is_boxed(const Piece &piece, const Stock &stock) {
    constexpr double alike = 0.01;
    const auto differ = [](double a, double b) { return std::abs(a - b) > alike; };
    return stock.lean != 0 || differ(stock.size.length, piece.blank.length) ||
           differ(stock.size.width, piece.blank.width) || differ(stock.size.height, piece.blank.height);
}

double hewn_off(const Piece &piece, const Stock &stock, const FaceCut &cut, double x) {
    const Plane &p = cut.plane;
    const Vec3 corner = stock.frame.origin;
    const double middle = piece.blank.width / 2, half_height = piece.blank.height / 2;
    const double floor = corner.z + stock.lean * (x - corner.x);
    const auto z = [&] { return p.height_at(x, middle); };
    const auto y = [&] { return (p.offset - p.normal.x * x - p.normal.z * half_height) / p.normal.y; };
    switch (cut.face) {
    case LogFace::top:
        return floor + stock.size.height * std::sqrt(1 + stock.lean * stock.lean) - z();
    case LogFace::under:
        return z() - floor;
    case LogFace::outside:
        return y() - corner.y;
    case LogFace::inside:
        return corner.y + stock.size.width - y();
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return 0;
}

} // namespace roundlay
