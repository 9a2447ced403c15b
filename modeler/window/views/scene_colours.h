// What the colours of the model tell.
#pragma once

#include "exporters/picture/scene.h"
#include "modeler/window/desk/selection.h"
#include "modeler/window/desk/state.h"

namespace roundlay::window {

enum class Colouring { wall, finding, alike, fabric };

/// Colours the instances of a scene made from the state's layout; what is chosen stands out.
void colour(Scene &scene, const State &state, Colouring colouring, const Chosen &chosen);

} // namespace roundlay::window
