#include "kernel/solid/scaled.h"

#include "kernel/solid/guarded.h"

#include <BRepBuilderAPI_Transform.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Pnt.hxx>
#include <gp_Trsf.hxx>

namespace roundlay {

Solid scaled(const Solid &solid, double factor) {
    return guarded("scaling a solid", [&] {
        gp_Trsf times;
        times.SetScale(gp_Pnt(0, 0, 0), factor);
        return Solid(BRepBuilderAPI_Transform(solid.shape(), times, true).Shape());
    });
}

} // namespace roundlay
