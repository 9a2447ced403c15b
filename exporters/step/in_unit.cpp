#include "exporters/step/in_unit.h"

#include "kernel/boundary/scaled.h"
#include "kernel/solid/scaled.h"

namespace roundlay::step {

double per_millimetre(StepUnit unit) {
    constexpr double inch = 25.4; // mm
    return unit == StepUnit::inch ? 1 / inch : 1;
}

ProductTree in_unit(ProductTree tree, StepUnit unit) {
    const double factor = per_millimetre(unit);
    for (Group &group : tree.groups) {
        group.frame.origin = factor * group.frame.origin;
        for (Use &use : group.uses)
            use.frame.origin = factor * use.frame.origin;
    }
    return tree;
}

PartSolid in_unit(PartSolid solid, StepUnit unit) {
    if (unit == StepUnit::millimetre) return solid;
    const double factor = per_millimetre(unit);
    if (solid.border) solid.border = scaled(*std::move(solid.border), factor);
    if (!solid.built.empty()) solid.built = scaled(solid.built, factor);
    Measures &measures = solid.measures;
    measures.volume *= factor * factor * factor;
    measures.area *= factor * factor;
    measures.centroid = factor * measures.centroid;
    return solid;
}

} // namespace roundlay::step
