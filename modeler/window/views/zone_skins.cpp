#include "modeler/window/views/zone_skins.h"

#include "modeler/window/views/placed_zones.h"
#include "modeler/window/views/record_marks.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr double band = 160;                    // mm along the log
constexpr double lifted = 3, lifted_more = 1.5; // mm over the wood; what is worse lies over what is not

using Corners = std::vector<ShadedCorner>;

ShadedCorner between(const ShadedCorner &a, const ShadedCorner &b, double x) {
    const float t = (static_cast<float>(x) - a.position[0]) / (b.position[0] - a.position[0]);
    ShadedCorner made;
    for (std::size_t i = 0; i < 3; ++i) {
        made.position[i] = a.position[i] + t * (b.position[i] - a.position[i]);
        made.normal[i] = a.normal[i] + t * (b.normal[i] - a.normal[i]);
    }
    return made;
}

/// What lies on one side of a plane across the log.
Corners clipped(const Corners &corners, double x, bool beyond) {
    Corners kept;
    const auto is_in = [&](const ShadedCorner &c) {
        return beyond ? c.position[0] >= x : c.position[0] <= x;
    };
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const ShadedCorner &a = corners[i], &b = corners[(i + 1) % corners.size()];
        if (is_in(a)) kept.push_back(a);
        if (is_in(a) != is_in(b)) kept.push_back(between(a, b, x));
    }
    return kept;
}

/// Closed prisms over triangles of the wood.
class SkinMesh {
  public:
    explicit SkinMesh(double thick) : thick_(static_cast<float>(thick)) {}

    void add(const Corners &base) {
        if (base.size() < 3) return;
        Corners top = base;
        for (ShadedCorner &corner : top)
            for (std::size_t i = 0; i < 3; ++i)
                corner.position[i] += thick_ * corner.normal[i];
        const auto over = put(top), under = put(base);
        const auto count = static_cast<std::uint32_t>(base.size());
        for (std::uint32_t i = 2; i < count; ++i) {
            triangle(over, over + i - 1, over + i);
            triangle(under, under + i, under + i - 1);
        }
        for (std::uint32_t i = 0; i < count; ++i) {
            const std::uint32_t next = (i + 1) % count;
            triangle(under + i, under + next, over + next);
            triangle(under + i, over + next, over + i);
        }
    }

    std::shared_ptr<const SceneModel> model() const {
        if (mesh_.corners.empty()) return nullptr;
        auto made = std::make_shared<SceneModel>();
        made->levels = {mesh_, mesh_, mesh_};
        const auto at = [](const ShadedCorner &c) {
            return Vec3{c.position[0], c.position[1], c.position[2]};
        };
        made->box = {at(mesh_.corners.front()), at(mesh_.corners.front())};
        for (const ShadedCorner &corner : mesh_.corners) {
            const Vec3 p = at(corner);
            Box3 &box = made->box;
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
        }
        return made;
    }

  private:
    std::uint32_t put(const Corners &corners) {
        const auto first = static_cast<std::uint32_t>(mesh_.corners.size());
        mesh_.corners.insert(mesh_.corners.end(), corners.begin(), corners.end());
        return first;
    }
    void triangle(std::uint32_t a, std::uint32_t b, std::uint32_t c) {
        mesh_.triangles.insert(mesh_.triangles.end(), {a, b, c});
    }

    float thick_;
    ShadedMesh mesh_;
};

/// Which face of its log a triangle is of; none at an end, or on the walls of a notch across.
std::optional<FoundFace> face_of(const Corners &triangle, const Frame &piece, const Frame &wall) {
    Vec3 normal;
    for (const ShadedCorner &corner : triangle)
        normal = normal + Vec3{corner.normal[0], corner.normal[1], corner.normal[2]};
    const Vec3 world = piece.direction_to_world(normal);
    const double along = std::abs(dot(world, wall.x)), in = dot(world, wall.y), up = world.z;
    if (along > std::max(std::abs(in), std::abs(up))) return {};
    if (std::abs(in) >= std::abs(up)) return in < 0 ? FoundFace::outside : FoundFace::inside;
    return up > 0 ? FoundFace::top : FoundFace::under;
}

struct Stretch {
    double from = 0, to = 0; ///< in the piece's x
};

/// Bands stand at the same places all along a log, so that zones of one kind that meet are one.
std::vector<Stretch> bands_of(const Stretch &whole, double share) {
    if (share >= 1) return {whole};
    std::vector<Stretch> all;
    for (double at = std::floor(whole.from / band) * band; at < whole.to; at += band) {
        const Stretch painted{std::max(at, whole.from), std::min(at + share * band, whole.to)};
        if (painted.from < painted.to) all.push_back(painted);
    }
    // A zone that lies between two bands is seen all the same.
    if (all.empty()) all.push_back({whole.from, std::min(whole.to, whole.from + share * band)});
    return all;
}

std::shared_ptr<const SceneModel> skin_of(const SceneModel &wood, const Frame &piece, const Frame &wall,
                                          const ConditionZone &zone, const Stretch &stretch) {
    const std::size_t mark = condition_mark(zone.what);
    SkinMesh skin(lifted + lifted_more * static_cast<double>(mark));
    const ShadedMesh &mesh = wood.levels.back(); // without bores, whose walls face all ways
    const std::vector<Stretch> bands = bands_of(stretch, painted_share(mark));
    for (std::size_t i = 0; i + 2 < mesh.triangles.size(); i += 3) {
        const Corners triangle{mesh.corners[mesh.triangles[i]], mesh.corners[mesh.triangles[i + 1]],
                               mesh.corners[mesh.triangles[i + 2]]};
        const auto face = face_of(triangle, piece, wall);
        if (!face || (!zone.faces.empty() && std::ranges::find(zone.faces, *face) == zone.faces.end()))
            continue;
        for (const Stretch &each : bands)
            skin.add(clipped(clipped(triangle, each.from, true), each.to, false));
    }
    return skin.model();
}

} // namespace

double painted_share(std::size_t mark) {
    constexpr std::array shares{0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0};
    return shares[mark];
}

ZoneSkins zone_skins(const State &state) {
    const Layout &layout = state.job.layout;
    PlacedZones zones = placed_zones(state.job);
    ZoneSkins all{{}, std::move(zones.whole)};
    for (const PlacedZone &each : zones.zones) {
        const Piece &piece = layout.pieces[each.piece];
        const double start = sheets::along_of(layout, piece).from;
        auto model = skin_of(*state.models[piece.model.at()], piece.frame, layout.walls[piece.wall].frame,
                             each.zone, {each.along.from - start, each.along.to - start});
        if (model) all.skins.push_back({each.piece, std::move(model), condition_mark(each.zone.what)});
    }
    return all;
}

void add_skins(Scene &scene, const ZoneSkins &skins) {
    const auto marks = record_marks(Colouring::condition);
    for (const ZoneSkins::Skin &skin : skins.skins) {
        Instance made = scene.instances[skin.piece.at()];
        const QColor &fill = marks[skin.mark].fill;
        made.model = scene.models.size();
        made.colour = {static_cast<std::uint8_t>(fill.red()), static_cast<std::uint8_t>(fill.green()),
                       static_cast<std::uint8_t>(fill.blue())};
        made.marked = false;
        scene.models.push_back(skin.model);
        scene.instances.push_back(made);
    }
}

} // namespace roundlay::window
