// What the colours of the model tell.
#pragma once

#include "exporters/picture/scene.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/state.h"
#include "modeler/window/views/legend.h"

namespace roundlay::window {

struct ZoneSkins;

enum class Colouring { wall, finding, alike, fabric, condition, decision, certainty, progress };

/// Colours the instances of a scene made from the state's layout; what is chosen stands out, also by stripes;
/// of a corner the walls' logs by colour alone.
/// `skins`: of that state, for Colouring::condition: what lies under them, zone by zone; null: each log as a
/// whole.
void colour(Scene &scene, const State &state, Colouring colouring, const Chosen &chosen,
            const ZoneSkins *skins = nullptr);

/// What they mean.
std::vector<LegendEntry> legend_of(const State &state, Colouring colouring);

} // namespace roundlay::window
