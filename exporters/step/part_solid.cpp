#include "exporters/step/part_solid.h"

#include "kernel/boundary/face_words.h"
#include "kernel/solid/seen_faces.h"

namespace roundlay::step {

PartSolid part_solid(const Piece &piece, const Body &body, bool alone, StepRoute route) {
    PartSolid solid;
    if (route == StepRoute::automatic) solid.border = boundary_of(body);
    if (!solid.border) solid.built = build(body).solid;
    solid.faces = solid.border ? face_names(piece, *solid.border, alone)
                               : face_names(piece, seen_faces(solid.built), alone);
    solid.measures = solid.border ? measures_of(*solid.border) : measures_of(solid.built);
    return solid;
}

} // namespace roundlay::step
