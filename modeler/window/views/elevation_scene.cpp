#include "modeler/window/views/elevation_scene.h"

#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/review/opening_facts.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace roundlay::window {

namespace {

constexpr double faces_us = 0.99;    // cosine: hewn faces may lean a little
constexpr double end_faces_us = 0.3; // cosine: ends at corners that are not square
constexpr double along_log = 0.6;    // cosine to its log: of an end
constexpr double just = 1e-6;        // cosine: of a flat of a round log, seen at a glance
constexpr double in_face = 1;        // mm behind the outside face that still counts as in it

Vec2 seen(const WallPlace &wall, const Piece &piece, Vec3 point) {
    const Vec3 local = wall.frame.to_local(piece.frame.to_world(point));
    return {local.x, local.z};
}

/// Does the face look at whoever stands before the wall? Of a round log each flat of its surface that does.
bool looks_at_us(const WallPlace &wall, const Piece &piece, const Body &body, const Face &face, bool own) {
    const double toward = -dot(piece.frame.direction_to_world(face.plane.normal), wall.frame.y);
    if (toward >= faces_us) return true;
    if (!own) return toward >= end_faces_us && std::abs(face.plane.normal.x) >= along_log;
    const auto round = static_cast<std::size_t>(face.plane.round);
    return round > 0 && !body.rounds[round - 1].hollow && toward > just;
}

double nearest(const WallPlace &wall, const Piece &piece, const Body &body, const Face &face) {
    double deep = 1e300;
    for (const int vertex : face.loops.front())
        deep = std::min(
            deep,
            wall.frame.to_local(piece.frame.to_world(body.hewn.vertices[static_cast<std::size_t>(vertex)]))
                .y);
    return deep;
}

/// What is left of the faces' sides where two of them meet in none: the flats of a round log are one shape.
std::vector<std::vector<int>> outlines(const std::vector<const Face *> &faces) {
    std::set<std::pair<int, int>> sides;
    for (const Face *face : faces)
        for (const std::vector<int> &loop : face->loops)
            for (std::size_t i = 0; i < loop.size(); ++i) {
                const int a = loop[i], b = loop[(i + 1) % loop.size()];
                if (sides.erase({b, a}) == 0) sides.insert({a, b});
            }
    std::vector<std::vector<int>> rings;
    while (!sides.empty()) {
        std::vector<int> &ring = rings.emplace_back();
        for (auto side = sides.begin(); side != sides.end(); side = sides.lower_bound({ring.back(), 0})) {
            if (!ring.empty() && side->first != ring.back()) break;
            if (ring.empty()) ring.push_back(side->first);
            ring.push_back(side->second);
            sides.erase(side);
        }
        ring.pop_back(); // it ends where it starts
    }
    return rings;
}

/// The parts of a piece's border that look at whoever stands before the wall, and stand in its face or before
/// it.
std::vector<std::vector<Vec2>> seen_rings(const WallPlace &wall, const Piece &piece, const Body &body,
                                          bool own) {
    std::vector<const Face *> faces;
    for (const Face &face : body.hewn.faces)
        if (looks_at_us(wall, piece, body, face, own) &&
            nearest(wall, piece, body, face) <= (own ? wall.thickness / 2 : in_face))
            faces.push_back(&face);
    std::vector<std::vector<Vec2>> rings;
    for (const std::vector<int> &loop : outlines(faces)) {
        std::vector<Vec2> &ring = rings.emplace_back();
        for (const int vertex : loop)
            ring.push_back(seen(wall, piece, body.hewn.vertices[static_cast<std::size_t>(vertex)]));
    }
    return rings;
}

/// A side that a log at a slant turns to whoever stands before the wall: no end, and no slope of a tail.
bool is_side_toward_us(const WallPlace &wall, const Piece &piece, const Face &face) {
    constexpr double upright = 0.5; // cosine
    const Vec3 normal = piece.frame.direction_to_world(face.plane.normal);
    return -dot(normal, wall.frame.y) >= end_faces_us && std::abs(face.plane.normal.x) < along_log &&
           std::abs(normal.z) < upright;
}

/// What of a face lies before the wall's inside, as it is seen; points in the wall's frame.
std::vector<Vec2> before_inside(const std::vector<Vec3> &points, double thickness) {
    std::vector<Vec2> ring;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Vec3 a = points[i], b = points[(i + 1) % points.size()];
        if (a.y <= thickness) ring.push_back({a.x, a.z});
        if ((a.y <= thickness) == (b.y <= thickness)) continue;
        const double part = (thickness - a.y) / (b.y - a.y);
        ring.push_back({a.x + part * (b.x - a.x), a.z + part * (b.z - a.z)});
    }
    return ring;
}

/// Where a log crosses at a slant, its side shows between the logs of the wall.
std::vector<std::vector<Vec2>> seen_sides(const WallPlace &wall, const Piece &piece, const Body &body) {
    std::vector<std::vector<Vec2>> rings;
    for (const Face &face : body.hewn.faces) {
        if (!is_side_toward_us(wall, piece, face)) continue;
        std::vector<Vec3> points;
        for (const int vertex : face.loops.front())
            points.push_back(wall.frame.to_local(
                piece.frame.to_world(body.hewn.vertices[static_cast<std::size_t>(vertex)])));
        if (auto ring = before_inside(points, wall.thickness); ring.size() > 2)
            rings.push_back(std::move(ring));
    }
    return rings;
}

/// From behind: sides of crossing logs, the wall's own, ends.
int rank_of(const ElevationScene::Shape &shape) {
    return shape.side ? 0 : shape.own ? 1 : 2;
}

/// At a corner, or as a partition in a tee or a crossing.
bool meets(const Layout &layout, const Piece &piece, Index<WallPlace> wall) {
    return std::any_of(layout.corners.begin(), layout.corners.end(), [&](const CornerPlace &c) {
        return (c.ends == wall && c.starts == piece.wall) || (c.starts == wall && c.ends == piece.wall);
    });
}

void add_shapes(ElevationScene &scene, const ExportJob &job, const WallPlace &wall) {
    for (const auto i : job.layout.pieces.indices()) {
        const Piece &piece = job.layout.pieces[i];
        const bool own = is_log_of(piece, *scene.wall);
        if (piece.timber) continue; // let into the logs from behind
        if (!own && !meets(job.layout, piece, *scene.wall)) continue;
        auto rings = seen_rings(wall, piece, job.bodies[piece.model], own);
        if (!rings.empty()) scene.shapes.push_back({i, own, false, piece.island, std::move(rings)});
        if (!own) {
            auto sides = seen_sides(wall, piece, job.bodies[piece.model]);
            if (!sides.empty()) scene.shapes.push_back({i, false, true, false, std::move(sides)});
            continue;
        }
        scene.faces.push_back(piece.frame.origin.z);
        scene.faces.push_back(piece.frame.origin.z + piece.blank.height);
    }
    std::stable_sort(scene.shapes.begin(), scene.shapes.end(),
                     [](const auto &a, const auto &b) { return rank_of(a) < rank_of(b); });
    std::sort(scene.faces.begin(), scene.faces.end());
    scene.faces.erase(std::unique(scene.faces.begin(), scene.faces.end()), scene.faces.end());
}

void add_pegs(ElevationScene &scene, const Layout &layout, const WallPlace &wall) {
    for (const Peg &peg : layout.pegs) {
        if (!is_log_of(layout.pieces[peg.upper], *scene.wall)) continue;
        const Vec3 top = wall.frame.to_local(peg.top);
        scene.pegs.push_back({{top.x, top.z}, {top.x, top.z - peg.length}, peg.diameter});
    }
}

/// What a person placed, from log to log: it may drift.
void add_bores(ElevationScene &scene, const ExportJob &job, const WallPlace &wall) {
    for (const PlacedBore &bore : placed_bores(job.shell, job.layout)) {
        if (bore.wall != scene.wall || bore.logs.empty()) continue;
        ElevationScene::BoreLine line{bore.mark, {}};
        for (const BoredLog &log : bore.logs) {
            const Vec3 foot = wall.frame.to_local(log.foot);
            line.points.push_back({foot.x, foot.z});
            line.points.push_back({foot.x, foot.z + log.length});
        }
        scene.bores.push_back(std::move(line));
    }
}

/// The end of a timber at x of its own, where it lies in the wall.
void add_end(ElevationScene &scene, const WallPlace &wall, const Piece &piece, Index<Piece> index, double x) {
    const Vec3 low = wall.frame.to_local(piece.frame.to_world({x, 0, 0}));
    const Vec3 high = wall.frame.to_local(piece.frame.to_world({x, piece.blank.width, piece.blank.height}));
    const bool in_wall = low.y > 0 && low.y < wall.thickness && std::max(low.x, high.x) > 0 &&
                         std::min(low.x, high.x) < wall.length;
    if (in_wall)
        scene.timbers.push_back({index, {std::min(low.x, high.x), low.z, std::max(low.x, high.x), high.z}});
}

void add_timbers(ElevationScene &scene, const Layout &layout, const WallPlace &wall) {
    for (const Timber &timber : layout.timbers) {
        const Piece &piece = layout.pieces[timber.piece];
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
                               i < facts.size() ? facts[i].header : std::nullopt,
                               i < facts.size() ? facts[i].settle_space : 0});
    }
}

/// What a person states beside the openings, where no logs show it.
void add_as_stated(ElevationScene &scene, const Shell &shell, const std::string &wall) {
    for (std::size_t i = 0; i < shell.steps.size(); ++i) {
        const FoundationStep &step = shell.steps[i];
        if (step.wall != wall) continue;
        const double from = step.from_left.mm();
        scene.steps.push_back({static_cast<int>(i), {from, 0, from + step.width.mm(), step.rise.mm()}});
    }
    for (std::size_t i = 0; i < shell.floors.size(); ++i)
        if (const Floor &floor = shell.floors[i]; floor.from == wall || floor.to == wall)
            scene.floors.push_back({static_cast<int>(i), floor.name, floor.level.mm()});
}

} // namespace

ElevationScene elevation_of(const State &state, const std::string &wall) {
    ElevationScene scene;
    const Layout &layout = state.drawn();
    for (const auto i : layout.walls.indices())
        if (layout.walls[i].name == wall) scene.wall = i;
    if (!scene.wall) return scene;
    const WallPlace &place = layout.walls[*scene.wall];
    scene.length = place.length;
    scene.height = layout.height;
    if (!layout.heights.empty()) scene.height = std::max(scene.height, layout.heights[*scene.wall].top);
    for (int round = 0; round <= layout.rounds; ++round)
        scene.round_lines.push_back(round * layout.pitch);
    add_shapes(scene, state.job, place);
    add_pegs(scene, layout, place);
    add_bores(scene, state.job, place);
    add_timbers(scene, layout, place);
    add_holes(scene, state.job, wall);
    if (scene.shapes.empty()) add_as_stated(scene, state.job.shell, wall);
    return scene;
}

} // namespace roundlay::window
