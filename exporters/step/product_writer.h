// Products, assembly, colours, attributes and validation properties as STEP text.
#pragma once

#include "exporters/step/part21_text.h"
#include "exporters/step/product_tree.h"
#include "kernel/solid/boundary.h"

#include <vector>

namespace roundlay::step {

struct Extras {
    bool attributes = true; ///< user defined attributes
    bool validation = true; ///< volume, area and centroid of every part
};

/// The data section for a tree. `borders` are those of the bodies that the parts name.
std::string data_of(const ProductTree &tree, const std::vector<Boundary> &borders, const Extras &extras);

} // namespace roundlay::step
