#include "modeler/window/views/elevation_scene.h"

#include "kernel/review/opening_facts.h"

#include <algorithm>

namespace roundlay::window {

namespace {

constexpr double faces_us = 0.99; // cosine: hewn faces may lean a little
constexpr double in_face = 1;     // mm behind the outside face that still counts as in it

Vec2 seen(const WallPlace &wall, const Piece &piece, Vec3 point) {
    const Vec3 local = wall.frame.to_local(piece.frame.to_world(point));
    return {local.x, local.z};
}

/// The parts of a piece's border that look at whoever stands before the wall, and stand in its face or before
/// it.
std::vector<std::vector<Vec2>> seen_rings(const WallPlace &wall, const Piece &piece, const Body &body,
                                          bool own) {
    std::vector<std::vector<Vec2>> rings;
    for (const Face &face : body.hewn.faces) {
        const Vec3 normal = piece.frame.direction_to_world(face.plane.normal);
        if (-dot(normal, wall.frame.y) < faces_us) continue;
        const Vec3 first = body.hewn.vertices[static_cast<std::size_t>(face.loops.front().front())];
        const double deep = wall.frame.to_local(piece.frame.to_world(first)).y;
        if (deep > (own ? wall.thickness / 2 : in_face)) continue;
        for (const std::vector<int> &loop : face.loops) {
            std::vector<Vec2> &ring = rings.emplace_back();
            for (const int vertex : loop)
                ring.push_back(seen(wall, piece, body.hewn.vertices[static_cast<std::size_t>(vertex)]));
        }
    }
    return rings;
}

/// At a corner, or as a partition in a tee or a crossing.
bool meets(const Layout &layout, const Piece &piece, int wall) {
    return std::any_of(layout.corners.begin(), layout.corners.end(), [&](const CornerPlace &c) {
        return (c.ends == wall && c.starts == piece.wall) || (c.starts == wall && c.ends == piece.wall);
    });
}

void add_shapes(ElevationScene &scene, const ExportJob &job, const WallPlace &wall) {
    for (std::size_t i = 0; i < job.layout.pieces.size(); ++i) {
        const Piece &piece = job.layout.pieces[i];
        const bool own = is_log_of(piece, scene.wall);
        if (piece.timber >= 0) continue; // let into the logs from behind
        if (!own && !meets(job.layout, piece, scene.wall)) continue;
        auto rings = seen_rings(wall, piece, job.bodies[static_cast<std::size_t>(piece.model)], own);
        if (!rings.empty())
            scene.shapes.push_back({static_cast<int>(i), own, piece.island, std::move(rings)});
        if (!own) continue;
        scene.faces.push_back(piece.frame.origin.z);
        scene.faces.push_back(piece.frame.origin.z + piece.blank.height);
    }
    std::sort(scene.faces.begin(), scene.faces.end());
    scene.faces.erase(std::unique(scene.faces.begin(), scene.faces.end()), scene.faces.end());
}

void add_pegs(ElevationScene &scene, const Layout &layout, const WallPlace &wall) {
    for (const Peg &peg : layout.pegs) {
        if (!is_log_of(layout.pieces[static_cast<std::size_t>(peg.upper)], scene.wall)) continue;
        const Vec3 top = wall.frame.to_local(peg.top);
        scene.pegs.push_back({{top.x, top.z}, {top.x, top.z - peg.length}, peg.diameter});
    }
}

/// The end of a timber at x of its own, where it lies in the wall.
void add_end(ElevationScene &scene, const WallPlace &wall, const Piece &piece, int index, double x) {
    const Vec3 low = wall.frame.to_local(piece.frame.to_world({x, 0, 0}));
    const Vec3 high = wall.frame.to_local(piece.frame.to_world({x, piece.blank.width, piece.blank.height}));
    const bool in_wall = low.y > 0 && low.y < wall.thickness && std::max(low.x, high.x) > 0 &&
                         std::min(low.x, high.x) < wall.length;
    if (in_wall)
        scene.timbers.push_back({index, {std::min(low.x, high.x), low.z, std::max(low.x, high.x), high.z}});
}

void add_timbers(ElevationScene &scene, const Layout &layout, const WallPlace &wall) {
    for (const Timber &timber : layout.timbers) {
        const Piece &piece = layout.pieces[static_cast<std::size_t>(timber.piece)];
        for (const double x : {0.0, piece.blank.length})
            add_end(scene, wall, piece, timber.piece, x);
    }
}

void add_holes(ElevationScene &scene, const ExportJob &job, const std::string &wall) {
    const Shell &shell = job.shell;
    const auto facts = opening_facts(shell, job.layout);
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        if (o.wall != wall) continue;
        const double x = o.from_left.mm(), z = o.sill.mm();
        scene.holes.push_back({static_cast<int>(i),
                               o.kind == OpeningKind::door,
                               o.name,
                               {x, z, x + o.width.mm(), z + o.height.mm()},
                               i < facts.size() ? facts[i].header : -1,
                               i < facts.size() ? facts[i].settle_space : 0});
    }
}

} // namespace

ElevationScene elevation_of(const State &state, const std::string &wall) {
    ElevationScene scene;
    const Layout &layout = state.job.layout;
    for (std::size_t i = 0; i < layout.walls.size(); ++i)
        if (layout.walls[i].name == wall) scene.wall = static_cast<int>(i);
    if (scene.wall < 0) return scene;
    const WallPlace &place = layout.walls[static_cast<std::size_t>(scene.wall)];
    scene.length = place.length;
    scene.height = std::max(layout.height, place.top);
    for (int round = 0; round <= layout.rounds; ++round)
        scene.round_lines.push_back(round * layout.pitch);
    add_shapes(scene, state.job, place);
    add_pegs(scene, layout, place);
    add_timbers(scene, layout, place);
    add_holes(scene, state.job, wall);
    return scene;
}

} // namespace roundlay::window
