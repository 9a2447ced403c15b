// The other way of writing: OpenCASCADE's, for solids that are more than planes and upright bores.
#pragma once

#include "exporters/step/product_tree.h"
#include "exporters/step/product_writer.h"
#include "kernel/layout/body.h"

#include <string>
#include <vector>

namespace roundlay::step {

/// The data section for a tree. One writer at a time in the whole process: the library's writer and its
/// settings are global. Throws std::runtime_error where the library fails.
std::string library_data_of(const ProductTree &tree, const std::vector<const Body *> &bodies,
                            const Extras &extras);

} // namespace roundlay::step
