#include "kernel/solid/solid.h"

#include "kernel/boundary/measures.h"
#include "kernel/solid/guarded.h"

#include <BOPAlgo_ArgumentAnalyzer.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shape.hxx>

namespace roundlay {

Solid::Solid() : shape_(std::make_shared<const TopoDS_Shape>()) {}

Solid::Solid(const TopoDS_Shape &shape) : shape_(std::make_shared<const TopoDS_Shape>(shape)) {}

bool Solid::empty() const {
    return shape_->IsNull();
}

const TopoDS_Shape &Solid::shape() const {
    return *shape_;
}

double volume(const Solid &solid) {
    if (solid.empty()) return 0;
    return guarded("measuring a volume", [&] {
        GProp_GProps properties;
        BRepGProp::VolumeProperties(solid.shape(), properties);
        return properties.Mass();
    });
}

Measures measures_of(const Solid &solid) {
    if (solid.empty()) return {};
    return guarded("measuring a solid", [&]() -> Measures {
        GProp_GProps inside, outside;
        BRepGProp::VolumeProperties(solid.shape(), inside);
        BRepGProp::SurfaceProperties(solid.shape(), outside);
        const gp_Pnt centre = inside.CentreOfMass();
        return {inside.Mass(), outside.Mass(), {centre.X(), centre.Y(), centre.Z()}};
    });
}

bool is_valid(const Solid &solid) {
    if (solid.empty()) return false;
    return guarded("checking a solid", [&] { return BRepCheck_Analyzer(solid.shape()).IsValid(); });
}

bool is_free_of_self_interference(const Solid &solid) {
    if (solid.empty()) return false;
    return guarded("looking for self-interference", [&] {
        BOPAlgo_ArgumentAnalyzer analyzer;
        analyzer.SetShape1(solid.shape());
        analyzer.ArgumentTypeMode() = true;
        analyzer.SelfInterMode() = true;
        analyzer.Perform();
        return !analyzer.HasFaulty();
    });
}

int count_solids(const Solid &solid) {
    int count = 0;
    if (solid.empty()) return count;
    for (TopExp_Explorer each(solid.shape(), TopAbs_SOLID); each.More(); each.Next())
        ++count;
    return count;
}

} // namespace roundlay
