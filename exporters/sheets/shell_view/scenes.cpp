#include "exporters/sheets/shell_view/scenes.h"

#include "kernel/layout/cuts/asked.h"

#include <algorithm>
#include <set>
#include <string>

namespace roundlay::sheets {
namespace {

constexpr double beyond_ends = 10; ///< mm of wood that a crossing log is shown beyond its own end or notch
constexpr double longest_overhang =
    600; ///< mm beyond the wall's own thickness: what runs further is no overhang
constexpr double square_on = 0.99999; ///< cosine: a face turned straight toward the viewer
constexpr double on_plane = 1e-3;     ///< mm

const Body &body_of_piece(const Bodies &bodies, const Piece &piece) {
    return bodies.at(piece.model);
}

/// Tags of pieces in other walls that the wall's pieces meet at notches. Of two round logs that cross only
/// the upper one is cut.
std::set<std::string> crossing_tags(const Layout &layout, Index<WallPlace> wall) {
    std::set<std::string> own, tags;
    for (const Piece &piece : layout.pieces)
        if (is_log_of(piece, wall)) own.insert(piece.tag);
    for (const Piece &piece : layout.pieces)
        for (const Cut &cut : piece.cuts) {
            const Neighbour met = neighbour_of(cut);
            if (met.what != Met::crossing_log) continue;
            const std::string other(met.name);
            if (own.contains(piece.tag)) tags.insert(other);
            if (own.contains(other)) tags.insert(piece.tag);
        }
    for (const std::string &tag : own)
        tags.erase(tag);
    return tags;
}

/// How far logs that end near the wall stand out from its faces: their overhang. Those that run on at both
/// sides are cut off anyway.
double deepest_overhang(const Layout &layout, const WallPlace &place, const std::set<std::string> &crossing) {
    double deepest = 0;
    for (const Piece &piece : layout.pieces) {
        if (!crossing.contains(piece.tag)) continue;
        const Frame frame = within(piece.frame, place.frame);
        double low = 1e300, high = -1e300;
        for (const double x : {0.0, piece.blank.length})
            for (const double y : {0.0, piece.blank.width}) {
                const double across = frame.to_world({x, y, 0}).y;
                low = std::min(low, across);
                high = std::max(high, across);
            }
        const double out = std::min(-low, high - place.thickness);
        if (out < place.thickness + longest_overhang) deepest = std::max(deepest, out);
    }
    return deepest;
}

std::vector<Cell> between(const std::vector<Cell> &cells, double low, double high) {
    std::vector<Cell> kept;
    for (const Cell &cell : cells) {
        Cell part = clipped(clipped(cell, {{0, -1, 0}, -low}), {{0, 1, 0}, high});
        if (!part.empty()) kept.push_back(std::move(part));
    }
    return kept;
}

void add_greys(std::vector<GreyFace> &greys, const Polyhedron &solid, const Projection &p, double cut_depth) {
    double nearest = -1e300; // faces further back lie behind other logs
    for (const Vec3 &v : solid.vertices)
        nearest = std::max(nearest, p.depth(v));
    for (const Face &face : solid.faces) {
        const double depth = p.depth(solid.vertices[static_cast<std::size_t>(face.loops[0][0])]);
        if (dot(face.plane.normal, p.toward) < square_on || depth < nearest - on_plane) continue;
        GreyFace grey;
        grey.sawn_through = std::abs(depth - cut_depth) < on_plane;
        for (const auto &loop : face.loops) {
            grey.rings.emplace_back();
            for (const int i : loop)
                grey.rings.back().push_back(p.flat(solid.vertices[static_cast<std::size_t>(i)]));
        }
        greys.push_back(std::move(grey));
    }
}

std::vector<Stretch> visible_edges(const Scene &scene, const Projection &projection) {
    std::vector<Stretch> all = edges_seen(scene, projection);
    std::erase_if(all, [](const Stretch &s) { return s.seen == Seen::hidden; });
    return tidied(all);
}

} // namespace

Frame within(const Frame &inner, const Frame &outer) {
    return {outer.to_local(inner.origin), outer.direction_to_local(inner.x),
            outer.direction_to_local(inner.y), outer.direction_to_local(inner.z)};
}

Polyhedron moved(const Polyhedron &solid, const Frame &frame) {
    Polyhedron out = solid;
    for (Vec3 &v : out.vertices)
        v = frame.to_world(v);
    for (Face &face : out.faces)
        face.plane = to_world(face.plane, frame);
    return out;
}

Projection projection_of(WallSide side) {
    if (side == WallSide::outside) return {{1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
    return {{-1, 0, 0}, {0, 0, 1}, {0, 1, 0}};
}

std::vector<Stretch> cut_through_mark(const GreyFace &face) {
    const auto furthest = [&](Vec2 way) {
        const auto &ring = face.rings.front();
        return *std::max_element(ring.begin(), ring.end(),
                                 [&](Vec2 a, Vec2 b) { return dot(a, way) < dot(b, way); });
    };
    return {{furthest({-1, -1}), furthest({1, 1})}, {furthest({-1, 1}), furthest({1, -1})}};
}

Projection section_projection() {
    return {{0, 1, 0}, {0, 0, 1}, {1, 0, 0}};
}

void add_greys_at(std::vector<GreyFace> &greys, const Polyhedron &solid, const Projection &projection,
                  double depth) {
    std::vector<GreyFace> all;
    add_greys(all, solid, projection, depth);
    for (GreyFace &grey : all)
        if (grey.sawn_through) greys.push_back(std::move(grey));
}

std::vector<Stretch> visible_edges_of(std::vector<Polyhedron> solids, const Projection &projection) {
    Scene scene;
    scene.solids = std::move(solids);
    return visible_edges(scene, projection);
}

SeenShell seen_wall(const Layout &layout, const Bodies &bodies, Index<WallPlace> wall, WallSide side) {
    const WallPlace &place = layout.walls.at(wall);
    const Projection p = projection_of(side);
    const std::set<std::string> crossing = crossing_tags(layout, wall);
    const double out = deepest_overhang(layout, place, crossing) + beyond_ends;
    const double low = -out, high = place.thickness + out;
    SeenShell seen;
    Scene scene;
    for (const Piece &piece : layout.pieces) {
        const Frame f = within(piece.frame, place.frame);
        const Body &body = body_of_piece(bodies, piece);
        if (is_log_of(piece, wall)) {
            scene.solids.push_back(moved(body.hewn, f));
        } else if (crossing.contains(piece.tag)) {
            std::vector<Cell> cells;
            for (const Cell &cell : body.cells)
                cells.push_back(moved(cell, f));
            scene.solids.push_back(border_of(between(cells, low, high)));
            add_greys(seen.greys, scene.solids.back(), p, side == WallSide::outside ? -low : high);
        }
    }
    seen.edges = visible_edges(scene, p);
    return seen;
}

SeenShell seen_round(const Layout &layout, const Bodies &bodies, int round) {
    const Projection p{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    Scene scene;
    for (const Piece &piece : layout.pieces)
        if (piece.round == round)
            scene.solids.push_back(moved(body_of_piece(bodies, piece).hewn, piece.frame));
    return {visible_edges(scene, p), {}};
}

} // namespace roundlay::sheets
