#include "kernel/solid/seen_faces.h"

#include "kernel/solid/guarded.h"

#include <BOPTools_AlgoTools3D.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <IntTools_Context.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <gp_Cylinder.hxx>
#include <gp_Pln.hxx>
#include <gp_Pnt2d.hxx>

namespace roundlay {

namespace {

constexpr double aside = 0.01; // mm: see FaceSeen

template <typename Xyz> Vec3 vec(const Xyz &of) {
    return {of.X(), of.Y(), of.Z()};
}

Vec3 place_in(const TopoDS_Face &face) {
    gp_Pnt place;
    gp_Pnt2d on_it;
    if (BOPTools_AlgoTools3D::PointInFace(face, place, on_it, new IntTools_Context) != 0)
        throw std::runtime_error("OpenCASCADE found no place in a face.");
    return vec(place);
}

FaceSeen seen_plane(const TopoDS_Face &face, const gp_Pln &pln) {
    Vec3 normal = vec(pln.Axis().Direction());
    if (!pln.Direct()) normal = -normal; // of a frame turned inside out by a mirror
    if (face.Orientation() == TopAbs_REVERSED) normal = -normal;
    const Plane plane{normal, dot(normal, vec(pln.Location()))};
    return {plane, place_in(face) + aside * normal};
}

FaceSeen seen_round(const TopoDS_Face &face, const gp_Cylinder &cylinder) {
    const RoundSurface round{vec(cylinder.Location()), vec(cylinder.Axis().Direction()), cylinder.Radius(),
                             (face.Orientation() == TopAbs_REVERSED) == cylinder.Direct()};
    const Vec3 place = place_in(face), from = place - round.at;
    const Vec3 out = unit(from - dot(from, round.along) * round.along);
    return {round, place + (round.hollow ? -aside : aside) * out};
}

std::optional<FaceSeen> seen(const TopoDS_Face &face) {
    const BRepAdaptor_Surface surface(face);
    if (surface.GetType() == GeomAbs_Plane) return seen_plane(face, surface.Plane());
    if (surface.GetType() == GeomAbs_Cylinder) return seen_round(face, surface.Cylinder());
    return {};
}

} // namespace

std::vector<std::optional<FaceSeen>> seen_faces(const Solid &solid) {
    return guarded("looking at the faces of a solid", [&] {
        TopTools_IndexedMapOfShape faces;
        TopExp::MapShapes(solid.shape(), TopAbs_FACE, faces);
        std::vector<std::optional<FaceSeen>> all;
        for (int i = 1; i <= faces.Extent(); ++i)
            all.push_back(seen(TopoDS::Face(faces(i))));
        return all;
    });
}

} // namespace roundlay
