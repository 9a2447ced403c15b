// A solid as STEP text, straight from its border in doubles.
#pragma once

#include "exporters/part21/part21_text.h"
#include "kernel/boundary/boundary.h"

#include <string>
#include <vector>

namespace roundlay::step {

/// Adds one MANIFOLD_SOLID_BREP and everything it stands on. Points are
/// rounded to 1e-10 mm. `faces`: names of Boundary::faces; empty: they have none.
part21::Ref add_solid(part21::DataWriter &data, const Boundary &boundary, const std::string &name,
                      const std::vector<std::string> &faces);

/// Adds an AXIS2_PLACEMENT_3D.
part21::Ref add_placement(part21::DataWriter &data, const Frame &frame);

} // namespace roundlay::step
