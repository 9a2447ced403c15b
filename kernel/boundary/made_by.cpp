#include "kernel/boundary/made_by.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace roundlay {

namespace {

constexpr double same_place = 1e-4;     ///< mm: planes and axes this near are one
constexpr double same_direction = 1e-7; ///< of unit vectors
constexpr double aside = 0.01;          ///< mm: how far from an edge, and out of the face, is looked

bool same_way(Vec3 a, Vec3 b) {
    return length(a - b) < same_direction;
}

/// A plane face, and a place just outside it over its middle or near its longest edge.
struct Looked {
    Plane plane;
    Vec3 outside;
};

Looked looked_at(const Boundary &border, const BoundaryFace &face) {
    const auto at = [&](int vertex) { return border.vertices[static_cast<std::size_t>(vertex)]; };
    Vec3 middle = at(border.edges[static_cast<std::size_t>(face.loops.front().front().edge)].from);
    double longest = 0;
    for (const EdgeUse &use : face.loops.front()) {
        const BoundaryEdge &edge = border.edges[static_cast<std::size_t>(use.edge)];
        if (!edge.is_line()) continue;
        const Vec3 from = at(use.forward ? edge.from : edge.to), to = at(use.forward ? edge.to : edge.from);
        if (length(to - from) <= longest) continue;
        longest = length(to - from);
        middle = 0.5 * (from + to) + aside * unit(cross(face.plane.normal, to - from));
    }
    return {face.plane, middle + aside * face.plane.normal};
}

/// Does that side of the region, seen from the wood, lie where the face does?
bool is_side(const Plane &side, const Looked &face) {
    return same_way(side.normal, -face.plane.normal) &&
           std::abs(side.offset + face.plane.offset) < same_place;
}

/// Of a scope: does it lie under the round? Other cuts are bounded by their sides alone.
bool is_below(const Cut &cut, Vec3 place) {
    return match(
        cut, [&](const ScopeCut &scope) { return place.z < scoped_to(scope, place) + same_place; },
        giving<FaceCut, RoundCut, SeamCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(true));
}

/// What the face is of that cut; none where it is none, or that was taken elsewhere. A round surface is told
/// by itself, and the bottom of a bore by its rim.
std::optional<FacePart> part_made_by(const Cut &cut, const Looked &face, const Blank &blank) {
    const std::vector<CutSide> sides = sides_of(cut, blank);
    for (const CutSide &side : sides)
        if (side.plane.distance(face.outside) > same_place) return {};
    if (!is_below(cut, face.outside)) return {};
    for (const CutSide &side : sides)
        if (is_side(side.plane, face)) return side.part;
    return {};
}

/// Of the blank's own faces, where no cut has taken them.
FacePart part_of_blank(const Vec3 &normal) {
    const double x = std::abs(normal.x), y = std::abs(normal.y), z = std::abs(normal.z);
    if (x > y && x > z) return normal.x < 0 ? FacePart::datum_end : FacePart::far_end;
    if (y > z) return normal.y < 0 ? FacePart::outside : FacePart::inside;
    return normal.z < 0 ? FacePart::under : FacePart::top;
}

double off_axis(Vec3 point, Vec3 at, Vec3 along) {
    return length(cross(point - at, along));
}

class Naming {
  public:
    explicit Naming(const Piece &piece) : piece_(piece) {}

    MadeBy name(const Boundary &border, const BoundaryFace &face) const {
        if (face.bore) return {bored_at(border.bores[*face.bore]), FacePart::bore};
        if (face.round) return of_round(border.rounds[*face.round].surface);
        if (const auto blind = bottom_of(border, face)) return {blind, FacePart::bottom};
        return of_plane(looked_at(border, face));
    }

    MadeBy name(const FaceSeen &face) const {
        if (const Plane *plane = std::get_if<Plane>(&face.surface)) {
            if (const auto blind = blind_at(*plane, face.outside)) return {blind, FacePart::bottom};
            return of_plane({*plane, face.outside});
        }
        const RoundSurface &round = std::get<RoundSurface>(face.surface);
        const bool upright = std::hypot(round.along.x, round.along.y) < same_direction;
        if (!upright) return of_round(round);
        return {bored_at({round.at.x, round.at.y}, face.outside.z, face.outside.z), FacePart::bore};
    }

  private:
    /// A bore that ends at that level plane, around that place.
    std::optional<std::size_t> blind_at(const Plane &plane, Vec3 place) const {
        if (std::hypot(plane.normal.x, plane.normal.y) > same_direction) return {};
        const double z = place.z - aside * plane.normal.z;
        for (std::size_t i = 0; i < piece_.cuts.size(); ++i) {
            const Bore *cut = bore_of(piece_.cuts[i]);
            if (!cut || std::hypot(cut->x - place.x, cut->y - place.y) > cut->diameter / 2) continue;
            if (std::abs((plane.normal.z > 0 ? cut->z_from : cut->z_to) - z) < same_place) return i;
        }
        return {};
    }

    std::optional<std::size_t> bored_at(const BoundaryBore &bore) const {
        return bored_at(bore.axis, bore.below.z, bore.above.z);
    }

    std::optional<std::size_t> bored_at(Vec2 axis, double low, double high) const {
        std::optional<std::size_t> found;
        double most = -std::numeric_limits<double>::max();
        for (std::size_t i = 0; i < piece_.cuts.size(); ++i) {
            const Bore *cut = bore_of(piece_.cuts[i]);
            if (!cut || std::hypot(cut->x - axis.x, cut->y - axis.y) > same_place) continue;
            const double shared = std::min(high, cut->z_to) - std::max(low, cut->z_from);
            if (shared > most) most = shared, found = i;
        }
        return found;
    }

    /// A face whose whole border is the rim of a bore that ends there.
    std::optional<std::size_t> bottom_of(const Boundary &border, const BoundaryFace &face) const {
        if (face.loops.size() != 1 || face.loops.front().size() != 1) return {};
        const BoundaryEdge &edge = border.edges[static_cast<std::size_t>(face.loops.front().front().edge)];
        if (!edge.bore) return {};
        return bored_at(border.bores[*edge.bore]);
    }

    MadeBy of_round(const RoundSurface &round) const {
        for (std::size_t i = 0; i < piece_.cuts.size(); ++i) {
            const auto is = [&](const RoundSurface &surface) {
                return surface.hollow == round.hollow &&
                       std::abs(surface.radius - round.radius) < same_place &&
                       off_axis(round.at, surface.at, surface.along) < same_place &&
                       length(cross(round.along, surface.along)) < same_direction;
            };
            const auto part = match(
                piece_.cuts[i],
                [&](const RoundCut &cut) {
                    return is(surface_of(cut)) ? std::optional(FacePart::wane) : std::nullopt;
                },
                [&](const ScopeCut &cut) {
                    return is(surface_of(cut)) ? std::optional(FacePart::scope) : std::nullopt;
                },
                giving<FaceCut, SeamCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(
                    std::optional<FacePart>()));
            if (part) return {i, *part};
        }
        return {{}, FacePart::wane};
    }

    /// Where two cuts have the same plane there, the last: its tool went over it.
    MadeBy of_plane(const Looked &face) const {
        for (std::size_t i = piece_.cuts.size(); i-- > 0;)
            if (const auto part = part_made_by(piece_.cuts[i], face, piece_.blank)) return {i, *part};
        return {{}, part_of_blank(face.plane.normal)};
    }

    const Piece &piece_;
};

} // namespace

std::vector<MadeBy> made_by(const Piece &piece, const Boundary &border) {
    const Naming naming(piece);
    std::vector<MadeBy> all;
    for (const BoundaryFace &face : border.faces)
        all.push_back(naming.name(border, face));
    return all;
}

MadeBy made_by(const Piece &piece, const FaceSeen &face) {
    return Naming(piece).name(face);
}

} // namespace roundlay
