#include "kernel/solid/boolean.h"

#include "kernel/solid/solid.h"

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <TopExp_Explorer.hxx>
#include <gp_Ax2.hxx>

#include <cmath>
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

namespace {

double volume_of(const TopTools_ListOfShape &tools) {
    double all = 0;
    for (const TopoDS_Shape &tool : tools)
        all += volume(Solid(tool));
    return all;
}

/// An operation can end well and be wrong: it may not take more than its tools are, nor add wood.
void check_left(const TopoDS_Shape &left, const TopoDS_Shape &wood, const TopTools_ListOfShape &tools) {
    constexpr double within = 1e-6;
    if (!is_valid(Solid(left)))
        throw std::runtime_error("The solid modeller left no valid solid after a cut.");
    const double before = volume(Solid(wood)), after = volume(Solid(left)), room = within * before;
    if (after > before + room || after < before - volume_of(tools) - room)
        throw std::runtime_error("The solid modeller left " + std::to_string(std::llround(after)) +
                                 " mm3 of " + std::to_string(std::llround(before)) +
                                 " mm3, which its tools cannot leave.");
}

} // namespace

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
    TopoDS_Shape left = single_solid_or_all(operation.Shape());
    check_left(left, wood, tools);
    return left;
}

} // namespace roundlay
