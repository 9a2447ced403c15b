#include "exporters/picture/scene.h"

#include "exporters/mesh/mesh.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string>

namespace roundlay {
namespace {

constexpr std::array<int, 3> sides_by_level{24, 8, 0};
/// Bores that open in round surfaces are carved out cell by cell, which takes its time: once for two levels.
constexpr int sides_carved = 12;

void widen(Box3 &box, Vec3 p) {
    box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
    box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
}

/// No two logs of a wall are quite alike: up to 6 parts in 100 lighter or darker, always the same for a tag.
Colour varied(Colour colour, const std::string &tag) {
    std::uint32_t hash = 2166136261u; // FNV-1a
    for (const char c : tag)
        hash = (hash ^ static_cast<unsigned char>(c)) * 16777619u;
    hash ^= hash >> 15;
    const double factor = 0.94 + 0.12 * (hash % 1024) / 1023.0;
    const auto scaled = [factor](std::uint8_t channel) {
        return static_cast<std::uint8_t>(std::clamp(std::lround(channel * factor), 0L, 255L));
    };
    return {scaled(colour.r), scaled(colour.g), scaled(colour.b)};
}

Vec3 pulled_apart(const Layout &layout, const Piece &piece, double explode) {
    constexpr double apart = 3; // pitches that a wall moves outward at full explosion
    if (piece.timber) {         // floors rise with the rounds beside them
        const Timber &timber = layout.timbers[*piece.timber];
        const double level = layout.floors[timber.floor].level;
        return explode * std::max(0.0, level - layout.pitch) * Vec3{0, 0, 1};
    }
    const WallPlace &wall = layout.walls[piece.wall];
    return explode * layout.pitch * ((piece.round - 1.0) * Vec3{0, 0, 1} - apart * wall.frame.y);
}

} // namespace

SceneModels models_of(const Bodies &bodies) {
    SceneModels models;
    for (const Body &body : bodies) {
        auto model = std::make_shared<SceneModel>();
        for (std::size_t level = 0; level < sides_by_level.size(); ++level) {
            const bool carves = !body.bores_clear && sides_by_level[level] > 0;
            if (carves && level > 0) {
                model->levels[level] = model->levels[level - 1];
                continue;
            }
            const Mesh mesh = mesh_of(body, {carves ? sides_carved : sides_by_level[level]});
            if (level == 0) model->box = bounds(mesh);
            model->levels[level] = shaded(mesh);
        }
        for (const Bore &bore : body.bores)
            model->widest_bore = std::max(model->widest_bore, bore.diameter);
        models.push_back(std::move(model));
    }
    return models;
}

Scene scene_of(const Layout &layout, const SceneModels &models, const SceneOptions &options) {
    if (models.size() != layout.models.size())
        throw std::invalid_argument("scene_of: one body for each model of the layout is needed");
    Scene scene{models, {}};
    scene.instances.reserve(layout.pieces.size());
    for (const auto i : layout.pieces.indices()) {
        const Piece &piece = layout.pieces[i];
        Instance instance;
        instance.model = piece.model.at();
        instance.frame = piece.frame;
        instance.frame.origin = piece.frame.origin + pulled_apart(layout, piece, options.explode);
        instance.colour = varied(wall_colour(part_of(layout, piece).number()), piece.tag);
        instance.id = i.number();
        instance.visible = options.raised_up_to < 0 || piece.raise <= options.raised_up_to;
        scene.instances.push_back(instance);
    }
    return scene;
}

Scene scene_of(const Layout &layout, const Bodies &bodies_by_model, const SceneOptions &options) {
    return scene_of(layout, models_of(bodies_by_model), options);
}

Box3 bounds(const Scene &scene) {
    Box3 all;
    bool any = false;
    for (const Instance &instance : scene.instances) {
        if (!instance.visible) continue;
        const Box3 &box = scene.models[instance.model]->box;
        for (int corner = 0; corner < 8; ++corner) {
            const Vec3 p = instance.frame.to_world({corner & 1 ? box.high.x : box.low.x,
                                                    corner & 2 ? box.high.y : box.low.y,
                                                    corner & 4 ? box.high.z : box.low.z});
            if (!any) all = {p, p};
            any = true;
            widen(all, p);
        }
    }
    return all;
}

} // namespace roundlay
