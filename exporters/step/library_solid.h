// The other way of writing a solid: OpenCASCADE's, for what is more than planes and upright bores.
//
// Only the solid is the library's. It is taken out of the text the library writes and put, renumbered, into
// ours: products, names, colours and header are the same whichever way a solid came.
#pragma once

#include "exporters/part21/part21_text.h"
#include "kernel/solid/solid.h"

#include <string>
#include <vector>

namespace roundlay::step {

/// Adds one MANIFOLD_SOLID_BREP. Throws std::runtime_error where the shape is not exactly one solid, or the
/// library fails. `faces`: their names in the order of seen_faces; empty: they have none.
part21::Ref add_library_solid(part21::DataWriter &data, const Solid &solid, const std::string &name,
                              const std::vector<std::string> &faces);

} // namespace roundlay::step
