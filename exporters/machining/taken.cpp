#include "exporters/machining/taken.h"

#include "exporters/machining/raw_stock.h"
#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::machining {

namespace {

/// Does the plane bound anything of the blank? What lies past the blank is taken off by operations of its
/// own.
bool bounds_wood(const Plane &plane, const Blank &blank) {
    for (const double x : {0.0, blank.length})
        for (const double y : {0.0, blank.width})
            for (const double z : {0.0, blank.height})
                if (plane.distance({x, y, z}) > tolerance::thinnest) return true;
    return false;
}

/// +/- mm. No standard has them for this work: what a person may hold who sets out with a knife, proposed.
double tolerance_of(FacePart part) {
    switch (part) {
    case FacePart::top:
    case FacePart::under:
    case FacePart::outside:
    case FacePart::inside:
    case FacePart::datum_end:
    case FacePart::far_end:
    case FacePart::wane:
        return 3;
    case FacePart::sill:
    case FacePart::head:
    case FacePart::jamb:
        return 2;
    case FacePart::seam:
    case FacePart::shoulder:
    case FacePart::scope:
    case FacePart::cheek:
    case FacePart::bottom:
    case FacePart::side:
    case FacePart::seat:
    case FacePart::bed:
    case FacePart::back:
    case FacePart::ceiling:
    case FacePart::end:
    case FacePart::bore:
        break;
    }
    return 1;
}

std::string made_for(const Cut &cut) {
    const std::string_view corner = corner_of(cut);
    return std::string(corner.empty() ? neighbour_of(cut).name : corner);
}

/// One operation of each cut.
class Taking {
  public:
    Taking(const Piece &piece, const FaceNames &names) : piece_(piece), names_(names) {}

    std::optional<Operation> of(std::size_t cut) const {
        const Cut &each = piece_.cuts[cut];
        Operation made;
        made.cut = cut;
        made.mark = names_.marks()[cut];
        if (names_.alone()) made.made_for = made_for(each);
        for (const CutSide &side : sides_of(each, piece_.blank)) {
            made.tolerance = made.sides.empty() ? tolerance_of(side.part)
                                                : std::min(made.tolerance, tolerance_of(side.part));
            if (bounds_wood(side.plane, piece_.blank) || side.part == FacePart::cheek)
                made.sides.push_back({side.plane, name(cut, side.part)});
        }
        const bool is_one = match(
            each, [&](const ScopeCut &scope) { return round(made, cut, scope); },
            [&](const Bore &bore) { return drilled(made, cut, bore); },
            [&](const FaceCut &) {
                made.kind = OperationKind::plane;
                return true;
            },
            [](const RoundCut &) { return false; }, // of the stock
            giving<SeamCut, BoxCut, PocketCut, CheekCut, MendCut>(true));
        if (!is_one) return {};
        if (!made.round && !made.bore && made.kind == OperationKind::plane && !is_hewn(each))
            made.kind = OperationKind::slot; // pocket where it turns out to be closed
        return made;
    }

  private:
    std::string name(std::size_t cut, FacePart part) const { return names_.name({cut, part}); }

    static bool is_hewn(const Cut &cut) {
        return match(cut, giving<FaceCut, RoundCut>(true),
                     giving<SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(false));
    }

    /// The cheeks of a scope go with its round, all that is left of its sides are the ends of a groove.
    bool round(Operation &made, std::size_t cut, const ScopeCut &scope) const {
        const bool groove = scope.use == ScopeUse::groove;
        made.kind = groove ? OperationKind::groove : OperationKind::saddle;
        made.round = {scope.at,
                      scope.along,
                      scope.radius,
                      scope.half_width(),
                      name(cut, FacePart::scope),
                      name(cut, FacePart::cheek)};
        made.tolerance = tolerance_of(FacePart::scope);
        std::erase_if(made.sides, [&](const TakenSide &side) { return side.face == made.round->cheek; });
        return true;
    }

    bool drilled(Operation &made, std::size_t cut, const Bore &bore) const {
        made.kind = OperationKind::bore;
        const double entry = bore.from_top ? bore.z_to : bore.z_from, way = bore.from_top ? -1 : 1;
        made.bore = {{bore.x, bore.y, entry},
                     {0, 0, way},
                     bore.diameter,
                     bore.z_to - bore.z_from,
                     bore.through,
                     name(cut, FacePart::bore),
                     bore.through ? "" : name(cut, FacePart::bottom)};
        made.tolerance = tolerance_of(FacePart::bore);
        return true;
    }

    const Piece &piece_;
    const FaceNames &names_;
};

/// Where the stock is larger than the blank, whose faces are faces of the piece.
std::vector<Operation> down_to_blank(const Piece &piece, const RawStock &raw, const FaceNames &names) {
    std::vector<Operation> all;
    for (const LogFace side : all_sides) {
        const Plane plane = plane_of(piece.blank, Frame{}, side);
        if (is_outside_round(raw.rounds, piece.blank.length, plane)) continue;
        Operation made;
        made.sides = {{plane.flipped(), names.name({{}, part_of(side)})}};
        made.tolerance = tolerance_of(part_of(side));
        all.push_back(made);
    }
    return all;
}

/// A flat-sided cell drawn round the cylinder and all below it.
Cell below_round(Cell cell, const TakenRound &round) {
    constexpr int flats = 16;
    const Vec3 across = cross({0, 0, 1}, round.along);
    for (int i = 1; i < flats; ++i) {
        const double angle = i * std::numbers::pi / flats;
        const Vec3 n = std::cos(angle) * across + std::sin(angle) * Vec3{0, 0, 1};
        cell = clipped(cell, {n, dot(n, round.at) + round.radius});
    }
    for (const Vec3 &n : {across, -across})
        cell = clipped(cell, {n, dot(n, round.at) + round.half_width});
    return cell;
}

Cell round_bore(Cell cell, const Drilled &bore) {
    const double r = bore.diameter / 2;
    const Vec3 end = bore.entry + bore.depth * bore.along;
    for (const Vec3 &n : {Vec3{1, 0, 0}, Vec3{-1, 0, 0}, Vec3{0, 1, 0}, Vec3{0, -1, 0}})
        cell = clipped(cell, {n, dot(n, bore.entry) + r});
    return bore.through ? cell : clipped(cell, {bore.along, dot(bore.along, end)});
}

} // namespace

Cell cell_taken(const Operation &operation, const Cell &stock) {
    Cell cell = stock;
    for (const TakenSide &side : operation.sides)
        cell = clipped(cell, side.plane);
    if (operation.round) cell = below_round(std::move(cell), *operation.round);
    if (operation.bore) cell = round_bore(std::move(cell), *operation.bore);
    return cell;
}

std::vector<Operation> taken(const Piece &piece, const RawStock &raw, const FaceNames &names) {
    std::vector<Operation> all = down_to_blank(piece, raw, names);
    const Taking taking(piece, names);
    for (std::size_t i = 0; i < piece.cuts.size(); ++i)
        if (auto made = taking.of(i)) all.push_back(std::move(*made));
    const Cell stock = cell_of(raw.stock);
    std::erase_if(all, [&](Operation &operation) {
        const Cell cell = cell_taken(operation, stock);
        if (!cell.empty()) operation.box = bounds(cell);
        return cell.empty();
    });
    return all;
}

} // namespace roundlay::machining
