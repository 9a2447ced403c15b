// What a picture shows, as plain values: models once, and where each piece stands.
#pragma once

#include "exporters/mesh/palette.h"
#include "exporters/mesh/shading.h"
#include "kernel/layout/layout.h"

#include <array>
#include <memory>
#include <vector>

namespace roundlay {

/// One model ready for drawing, in three levels of detail. Never changes once made.
struct SceneModel {
    std::array<ShadedMesh, 3>
        levels; ///< bores with 24 sides, with 8, left out; those that must be carved with 12, twice
    double widest_bore = 0; ///< mm: says from how far a coarser level looks the same
    Box3 box;               ///< piece frame
};

using SceneModels = std::vector<std::shared_ptr<const SceneModel>>;

/// One piece in the picture.
struct Instance {
    std::size_t model = 0; ///< index into Scene::models
    Frame frame;           ///< millimetres, world
    Colour colour;         ///< of long grain; end grain is drawn darker
    int id = -1; ///< what picking gives back, 0 to 2^31 - 2; by scene_of the index into Layout::pieces
    bool visible = true;
    bool marked = false; ///< drawn with stripes, so that it stands out without its colour
};

struct Scene {
    SceneModels models;
    std::vector<Instance> instances;
};

struct SceneOptions {
    double explode = 0; ///< 0 = as built; 1 = every round lifted by one more pitch and the walls moved apart
    int raised_up_to = -1; ///< show only pieces whose place in the raise is not beyond this; -1 = all
};

/// Meshes every model once. About 0.1 ms a model.
SceneModels models_of(const Bodies &bodies);

/// Cheap: made anew for every change of options, with the same models.
Scene scene_of(const Layout &layout, const SceneModels &models, const SceneOptions &options = {});
Scene scene_of(const Layout &layout, const Bodies &bodies_by_model, const SceneOptions &options = {});

/// World box of what is visible. An empty scene gives a box of size zero at the origin.
Box3 bounds(const Scene &scene);

} // namespace roundlay
