#include "exporters/machining/raw_stock.h"

#include "kernel/layout/cuts/match.h"

#include <algorithm>

namespace roundlay::machining {

namespace {

constexpr double touching = 0.01; ///< mm: a side so near the round is no flat of it

std::vector<RoundStick> rounds_of(const Piece &piece, const FaceNames &names) {
    std::vector<RoundStick> rounds;
    for (std::size_t i = 0; i < piece.cuts.size(); ++i)
        match(
            piece.cuts[i],
            [&](const RoundCut &cut) {
                rounds.push_back(
                    {cut.from, unit(cut.to - cut.from), cut.radius, names.name({i, FacePart::wane})});
            },
            passing<FaceCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>); // off the stick
    return rounds;
}

} // namespace

Vec3 outward(LogFace side) {
    switch (side) {
    case LogFace::top:
        return {0, 0, 1};
    case LogFace::under:
        return {0, 0, -1};
    case LogFace::outside:
        return {0, -1, 0};
    case LogFace::inside:
        return {0, 1, 0};
    case LogFace::datum_end:
        return {-1, 0, 0};
    case LogFace::far_end:
        break;
    }
    return {1, 0, 0};
}

Plane plane_of(const Blank &size, const Frame &frame, LogFace side) {
    const Vec3 out = outward(side);
    const Vec3 corner = dot(out, {1, 1, 1}) > 0 ? Vec3{size.length, size.width, size.height} : Vec3{};
    const Vec3 normal = frame.direction_to_world(out);
    return {normal, dot(normal, frame.to_world(corner))};
}

bool is_outside_round(const std::vector<RoundStick> &rounds, double length, const Plane &plane) {
    return std::ranges::any_of(rounds, [&](const RoundStick &round) {
        const double here = -plane.distance(round.at),
                     there = -plane.distance(round.at + (length / round.along.x) * round.along);
        return std::min(here, there) > round.radius - touching;
    });
}

Cell cell_of(const Stock &stock) {
    return moved(box_cell({{0, 0, 0}, {stock.size.length, stock.size.width, stock.size.height}}),
                 stock.frame);
}

RawStock raw_stock(const Piece &piece, const FaceNames &names) {
    RawStock raw{stock_of(piece), rounds_of(piece, names), {}};
    for (const LogFace side : all_sides) {
        const Plane plane = plane_of(raw.stock.size, raw.stock.frame, side);
        if (is_outside_round(raw.rounds, piece.blank.length, plane)) continue;
        raw.faces.push_back({side, plane, names.name({{}, part_of(side)})});
    }
    return raw;
}

} // namespace roundlay::machining
