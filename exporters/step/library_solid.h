// The other way of writing a solid: OpenCASCADE's, for what is more than planes and upright bores.
//
// Only the solid is the library's. It is taken out of the text the library writes and put, renumbered, into
// ours: products, names, colours and header are the same whichever way a solid came.
#pragma once

#include "exporters/part21/part21_text.h"
#include "kernel/solid/solid.h"

#include <string>

namespace roundlay::step {

/// Adds one MANIFOLD_SOLID_BREP. Throws std::runtime_error where the shape is not exactly one solid, or the
/// library fails.
part21::Ref add_library_solid(part21::DataWriter &data, const Solid &solid, const std::string &name);

} // namespace roundlay::step
