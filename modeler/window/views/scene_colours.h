// What the colours of the model tell.
#pragma once

#include "exporters/picture/scene.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/state.h"
#include "modeler/window/views/legend.h"

namespace roundlay::window {

enum class Colouring { wall, finding, alike, fabric, condition, decision, certainty };

/// Colours the instances of a scene made from the state's layout; what is chosen stands out, also by stripes;
/// of a corner the walls' logs by colour alone.
void colour(Scene &scene, const State &state, Colouring colouring, const Chosen &chosen);

/// What they mean.
std::vector<LegendEntry> legend_of(const State &state, Colouring colouring);

} // namespace roundlay::window
