// Triangles as STL, which knows neither units nor names: millimetres are meant.
#pragma once

#include "exporters/mesh/mesh.h"

#include <string>

namespace roundlay {

/// Binary STL of these meshes one behind the other, single precision. The same meshes give the same bytes.
std::string write_stl(const std::vector<Mesh> &meshes);

} // namespace roundlay
