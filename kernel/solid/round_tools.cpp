#include "kernel/solid/round_tools.h"

#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>

#include <array>
#include <cmath>

namespace roundlay {

namespace {

/// Tools reach this far past the wood where they are open, so that no faces of tool and wood coincide.
constexpr double past = 60;

gp_Pnt point(Vec3 p) {
    return {p.x, p.y, p.z};
}
gp_Dir direction(Vec3 v) {
    return {v.x, v.y, v.z};
}
gp_Vec vector(Vec3 v) {
    return {v.x, v.y, v.z};
}

/// Square to an axis that is nearly level: across it and level, and up.
struct Around {
    Vec3 along, across, over;
    explicit Around(Vec3 v)
        : along(unit(v)), across(unit(cross({0, 0, 1}, along))), over(cross(along, across)) {}
};

} // namespace

TopoDS_Shape stick_tool(const RoundCut &cut, double room) {
    const Around a(cut.to - cut.from);
    const Vec3 foot = cut.from - past * a.along;
    BRepBuilderAPI_MakeWire outside;
    const std::array<Vec3, 4> corners{
        foot - room * a.across - room * a.over, foot + room * a.across - room * a.over,
        foot + room * a.across + room * a.over, foot - room * a.across + room * a.over};
    for (std::size_t i = 0; i < corners.size(); ++i)
        outside.Add(
            BRepBuilderAPI_MakeEdge(point(corners[i]), point(corners[(i + 1) % corners.size()])).Edge());
    const gp_Circ circle(gp_Ax2(point(foot), direction(a.along), direction(a.across)), cut.radius);
    BRepBuilderAPI_MakeWire hole(BRepBuilderAPI_MakeEdge(circle).Edge());
    BRepBuilderAPI_MakeFace face(outside.Wire(), true);
    face.Add(TopoDS::Wire(hole.Wire().Reversed()));
    return BRepPrimAPI_MakePrism(face.Face(), vector((length(cut.to - cut.from) + 2 * past) * a.along))
        .Shape();
}

TopoDS_Shape scope_tool(const ScopeCut &cut, const Blank &blank) {
    const Around a(cut.along);
    const bool groove = cut.use == ScopeUse::groove;
    const double reach = blank.length + blank.width + past;
    const double from =
        groove ? std::max(cut.x_from, -past) : dot(Vec3{0, blank.width / 2, 0} - cut.at, a.along) - reach;
    const double to = groove ? std::min(cut.x_to, blank.length + past) : from + 2 * reach;
    const Vec3 foot = groove ? Vec3{from, cut.at.y, cut.at.z} : cut.at + from * a.along;
    const double half = cut.half_width(), rise = std::sqrt(cut.radius * cut.radius - half * half);
    const double down = std::max(foot.z, 0.0) + rise + past;
    const Vec3 left = foot + half * a.across + rise * a.over, right = foot - half * a.across + rise * a.over,
               drop = down * a.over;
    const gp_Circ circle(gp_Ax2(point(foot), direction(a.along), direction(a.across)), cut.radius);
    BRepBuilderAPI_MakeWire outline;
    outline.Add(BRepBuilderAPI_MakeEdge(circle, point(left), point(right)).Edge());
    outline.Add(BRepBuilderAPI_MakeEdge(point(right), point(right - drop)).Edge());
    outline.Add(BRepBuilderAPI_MakeEdge(point(right - drop), point(left - drop)).Edge());
    outline.Add(BRepBuilderAPI_MakeEdge(point(left - drop), point(left)).Edge());
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(outline.Wire(), true).Face(),
                                 vector((to - from) * a.along))
        .Shape();
}

} // namespace roundlay
