#include "kernel/solid/boolean.h"

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <TopExp_Explorer.hxx>
#include <gp_Ax2.hxx>

#include <sstream>
#include <stdexcept>

namespace roundlay {

namespace {

TopoDS_Shape single_solid_or_all(const TopoDS_Shape &result) {
    TopExp_Explorer each(result, TopAbs_SOLID);
    if (!each.More()) throw std::runtime_error("The solid modeller left no wood after a cut.");
    const TopoDS_Shape first = each.Current();
    each.Next();
    return each.More() ? result : first;
}

} // namespace

TopoDS_Shape bore_tool(const Bore &bore) {
    // Where a bore is open its face may slant: the tool goes on past it by as much as it is thick.
    const double past = bore.diameter / 2;
    const double from = bore.through || !bore.from_top ? bore.z_from - past : bore.z_from;
    const double to = bore.through || bore.from_top ? bore.z_to + past : bore.z_to;
    const gp_Ax2 axes(gp_Pnt(bore.x, bore.y, from), gp::DZ(), gp::DX());
    return BRepPrimAPI_MakeCylinder(axes, bore.diameter / 2, to - from).Shape();
}

TopoDS_Shape cut(const TopoDS_Shape &wood, const TopTools_ListOfShape &tools) {
    TopTools_ListOfShape arguments;
    arguments.Append(wood);
    BRepAlgoAPI_Cut operation;
    operation.SetArguments(arguments);
    operation.SetTools(tools);
    operation.SetRunParallel(false);
    operation.Build();
    if (operation.HasErrors()) {
        std::ostringstream report;
        operation.DumpErrors(report);
        throw std::runtime_error("The solid modeller could not take the cuts out of the wood: " +
                                 report.str());
    }
    return single_solid_or_all(operation.Shape());
}

} // namespace roundlay
