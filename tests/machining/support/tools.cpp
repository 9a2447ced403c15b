#include "tests/machining/support/tools.h"

#include <BOPTools_AlgoTools3D.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <BRepAlgoAPI_Common.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeSolid.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRepLib.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <IntTools_Context.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Solid.hxx>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>
#include <gp_Cylinder.hxx>
#include <gp_Pln.hxx>

#include <algorithm>
#include <stdexcept>

namespace operations_check {

namespace {

gp_Pnt point(Vector p) {
    return {p.x, p.y, p.z};
}
gp_Dir direction(Vector v) {
    return {v.x, v.y, v.z};
}
gp_Vec way(Vector v) {
    return {v.x, v.y, v.z};
}
Vector from(const gp_XYZ &p) {
    return {p.X(), p.Y(), p.Z()};
}
Vector unit(Vector v) {
    return (1 / length(v)) * v;
}

/// What of a ring lies within a plane, cut by Sutherland and Hodgman.
std::vector<Vector> within(const std::vector<Vector> &ring, const HalfSpace &plane) {
    std::vector<Vector> left;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vector a = ring[i], b = ring[(i + 1) % ring.size()];
        const double da = dot(a - plane.point, plane.normal), db = dot(b - plane.point, plane.normal);
        if (da <= 0) left.push_back(a);
        if ((da < 0 && db > 0) || (da > 0 && db < 0)) left.push_back(a + (da / (da - db)) * (b - a));
    }
    return left;
}

/// The ring of one plane that all others leave; without points that are one.
std::vector<Vector> ring_of(const std::vector<HalfSpace> &planes, std::size_t which) {
    const HalfSpace &own = planes[which];
    const Vector u =
        unit(std::abs(own.normal.z) < 0.9 ? cross({0, 0, 1}, own.normal) : cross({0, 1, 0}, own.normal));
    const Vector v = cross(own.normal, u);
    constexpr double far = 1e5;
    std::vector<Vector> ring;
    for (const auto &[a, b] : {std::pair{-far, -far}, {far, -far}, {far, far}, {-far, far}})
        ring.push_back(own.point + a * u + b * v);
    for (std::size_t i = 0; i < planes.size(); ++i)
        if (i != which) ring = within(ring, planes[i]);
    std::vector<Vector> apart;
    for (const Vector &p : ring)
        if (apart.empty() || length(p - apart.back()) > 1e-6) apart.push_back(p);
    while (apart.size() > 1 && length(apart.front() - apart.back()) <= 1e-6)
        apart.pop_back();
    return apart;
}

TopoDS_Shape drill(const Json &bore) {
    const double r = bore["diameter"].get<double>() / 2, depth = bore["depth"];
    const Vector along = vector(bore["along"]), entry = vector(bore["entry"]) - r * along;
    const double deep = depth + (bore["through"] ? 2 * r : r);
    return BRepPrimAPI_MakeCylinder(gp_Ax2(point(entry), direction(along)), r, deep).Shape();
}

/// Furthest that the room reaches along a way from a point, before and behind it.
std::pair<double, double> reach_along(const Room &room, Vector at, Vector along) {
    double least = HUGE_VAL, most = -HUGE_VAL;
    for (const double x : {room.low.x, room.high.x})
        for (const double y : {room.low.y, room.high.y})
            for (const double z : {room.low.z, room.high.z}) {
                const double s = dot(Vector{x, y, z} - at, along);
                least = std::min(least, s), most = std::max(most, s);
            }
    return {least, most};
}

TopoDS_Shape below_round(const Json &round, const Room &room) {
    const Vector along = vector(round["along"]), across = cross({0, 0, 1}, along), up{0, 0, 1};
    const double r = round["radius"], half = round["half_width"];
    const auto [first, last] = reach_along(room, vector(round["point"]), along);
    const Vector foot = vector(round["point"]) + first * along;
    const double rise = std::sqrt(std::max(0.0, r * r - half * half));
    const double down = std::max(foot.z - room.low.z, 0.0) + rise + 91;
    const Vector right = foot + half * across + rise * up, left = foot - half * across + rise * up;
    const gp_Circ circle(gp_Ax2(point(foot), direction(along), direction(across)), r);
    BRepBuilderAPI_MakeWire outline(BRepBuilderAPI_MakeEdge(circle, point(right), point(left)).Edge());
    outline.Add(BRepBuilderAPI_MakeEdge(point(left), point(left - down * up)).Edge());
    outline.Add(BRepBuilderAPI_MakeEdge(point(left - down * up), point(right - down * up)).Edge());
    outline.Add(BRepBuilderAPI_MakeEdge(point(right - down * up), point(right)).Edge());
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(outline.Wire(), true).Face(),
                                 way((last - first) * along))
        .Shape();
}

} // namespace

Room room_round(const Json &stock) {
    const Vector a = vector(stock["origin"]);
    Room room{a, a};
    const Vector edges[] = {stock["length"].get<double>() * vector(stock["x"]),
                            stock["width"].get<double>() * vector(stock["y"]),
                            stock["height"].get<double>() * vector(stock["z"])};
    for (unsigned i = 0; i < 8; ++i) {
        Vector p = a;
        for (unsigned k = 0; k < 3; ++k)
            if (i >> k & 1U) p = p + edges[k];
        room.low = {std::min(room.low.x, p.x), std::min(room.low.y, p.y), std::min(room.low.z, p.z)};
        room.high = {std::max(room.high.x, p.x), std::max(room.high.y, p.y), std::max(room.high.z, p.z)};
    }
    const Vector spare{137, 113, 127};
    return {room.low - spare, room.high + spare};
}

TopoDS_Shape convex(std::vector<HalfSpace> planes, const Room &room) {
    planes.push_back({room.low, {-1, 0, 0}});
    planes.push_back({room.low, {0, -1, 0}});
    planes.push_back({room.low, {0, 0, -1}});
    planes.push_back({room.high, {1, 0, 0}});
    planes.push_back({room.high, {0, 1, 0}});
    planes.push_back({room.high, {0, 0, 1}});
    BRepBuilderAPI_Sewing sewing(1e-6);
    for (std::size_t i = 0; i < planes.size(); ++i) {
        const std::vector<Vector> ring = ring_of(planes, i);
        if (ring.size() < 3) continue;
        BRepBuilderAPI_MakePolygon outline;
        for (const Vector &p : ring)
            outline.Add(point(p));
        outline.Close();
        const gp_Pln plane(point(planes[i].point), direction(planes[i].normal));
        sewing.Add(BRepBuilderAPI_MakeFace(plane, outline.Wire(), true).Face());
    }
    sewing.Perform();
    TopExp_Explorer shell(sewing.SewedShape(), TopAbs_SHELL);
    if (!shell.More()) throw std::runtime_error("planes that enclose nothing");
    TopoDS_Solid solid = BRepBuilderAPI_MakeSolid(TopoDS::Shell(shell.Current())).Solid();
    BRepLib::OrientClosedSolid(solid);
    return solid;
}

TopoDS_Shape stick(const Json &round, const Room &room) {
    const Vector along = vector(round["along"]), at = vector(round["point"]);
    const auto [first, last] = reach_along(room, at, along);
    const Vector seam = unit(cross(along, {0, 0.3, 1})); // where nothing else is likely to lie
    return BRepPrimAPI_MakeCylinder(gp_Ax2(point(at + first * along), direction(along), direction(seam)),
                                    round["radius"].get<double>(), last - first)
        .Shape();
}

TopoDS_Shape tool_of(const Json &operation, const Room &room) {
    if (operation.contains("bore")) return drill(operation["bore"]);
    std::vector<HalfSpace> sides;
    for (const Json &side : operation["sides"])
        sides.push_back({vector(side["point"]), vector(side["normal"])});
    if (!operation.contains("round")) return convex(sides, room);
    const TopoDS_Shape tool = below_round(operation["round"], room);
    if (sides.empty()) return tool;
    BRepAlgoAPI_Common ended(tool, convex(sides, room));
    if (!ended.IsDone()) throw std::runtime_error("a groove without ends");
    return ended.Shape();
}

FaceAt face_at(const TopoDS_Face &face) {
    const Handle(IntTools_Context) context = new IntTools_Context;
    gp_Pnt at;
    gp_Pnt2d on;
    if (BOPTools_AlgoTools3D::PointInFace(face, at, on, context) != 0)
        throw std::runtime_error("a face without an inside");
    const BRepAdaptor_Surface surface(face);
    FaceAt found;
    found.point = from(at.XYZ());
    gp_Pnt p;
    gp_Vec du, dv;
    surface.D1(on.X(), on.Y(), p, du, dv);
    found.out = unit(from(du.Crossed(dv).XYZ()));
    if (face.Orientation() == TopAbs_REVERSED) found.out = -1.0 * found.out;
    if (surface.GetType() == GeomAbs_Plane) {
        found.way = found.out;
        return found;
    }
    if (surface.GetType() != GeomAbs_Cylinder) throw std::runtime_error("neither plane nor cylinder");
    const gp_Cylinder cylinder = surface.Cylinder();
    found.round = true;
    found.way = from(cylinder.Axis().Direction().XYZ());
    found.axis = from(cylinder.Location().XYZ());
    found.radius = cylinder.Radius();
    return found;
}

} // namespace operations_check
