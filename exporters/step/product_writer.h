// Products, assembly, colours, attributes and validation properties as STEP text.
#pragma once

#include "exporters/part21/part21_text.h"
#include "exporters/step/product_tree.h"
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/measures.h"
#include "kernel/solid/solid.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::step {

struct Extras {
    bool attributes = true; ///< user defined attributes
    bool validation = true; ///< volume, area and centroid of every part and assembly
    StepSchema schema = StepSchema::ap214;
    StepUnit unit = StepUnit::millimetre; ///< of the tree and the solids
};

/// A solid in the form it is written from.
struct PartSolid {
    std::optional<Boundary> border;
    std::vector<std::string> faces; ///< their names, of the border, or in the order of seen_faces
    Solid built;                    ///< where there is no border: the library writes it
    Measures measures;
};

/// The data section for a tree. `solids` are those of the bodies that the parts name.
std::string data_of(const ProductTree &tree, const std::vector<PartSolid> &solids, const Extras &extras);

} // namespace roundlay::step
