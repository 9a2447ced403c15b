// What a file begins with: who made it, units, contexts, the project. Private to this room.
#pragma once

#include "exporters/building/house.h"
#include "exporters/building/ifc_text.h"

#include <cstdint>

namespace roundlay::building {

/// Of the representations of products.
struct IfcContexts {
    Ref body, box;
};

struct IfcProject {
    Ref project;
    IfcContexts contexts;
};

/// What is written behind it is owned by whom the document names.
IfcProject add_project(IfcText &text, const House &house, std::int64_t seconds);

} // namespace roundlay::building
