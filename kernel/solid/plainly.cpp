// One box and one boolean per cut, one after another. Shares nothing with the direct way.
#include "kernel/solid/boolean.h"
#include "kernel/solid/guarded.h"
#include "kernel/solid/solid.h"

#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakePrism.hxx>

#include <algorithm>

namespace roundlay {

namespace {

/// Tools reach this far past the blank where they are open, so that no faces of tool and blank coincide.
constexpr double reach = 50;

TopoDS_Shape box(Vec3 low, Vec3 high) {
    return BRepPrimAPI_MakeBox(gp_Pnt(low.x, low.y, low.z), gp_Pnt(high.x, high.y, high.z)).Shape();
}

/// The wood beyond the seam plane between two x: a piece of that plane pushed upright past the blank.
TopoDS_Shape tool_of(const SeamCut &seam, const Blank &blank) {
    const double from = seam.x_from <= 0 ? -reach : seam.x_from;
    const double to = seam.x_to >= blank.length ? blank.length + reach : seam.x_to;
    BRepBuilderAPI_MakePolygon outline;
    double lowest = HUGE_VAL, highest = -HUGE_VAL;
    for (const Vec2 corner : {Vec2{from, -reach}, Vec2{to, -reach}, Vec2{to, blank.width + reach},
                              Vec2{from, blank.width + reach}}) {
        const double z = seam.seam.height_at(corner.x, corner.y);
        lowest = std::min(lowest, z);
        highest = std::max(highest, z);
        outline.Add(gp_Pnt(corner.x, corner.y, z));
    }
    outline.Close();
    const double push = seam.side == Side::top ? std::max(blank.height - lowest, 0.0) + reach
                                               : -(std::max(highest, 0.0) + reach);
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(outline.Wire(), true).Face(), gp_Vec(0, 0, push))
        .Shape();
}

/// The wood beyond a hewn face: a piece of its plane, over the whole log, pushed out past the blank.
TopoDS_Shape tool_of(const FaceCut &cut, const Blank &blank) {
    const Vec3 n = cut.plane.normal;
    const bool level = cut.face == LogFace::top || cut.face == LogFace::under;
    const double across = reach + (level ? blank.width : blank.height);
    BRepBuilderAPI_MakePolygon outline;
    for (const Vec2 corner : {Vec2{-reach, -reach}, Vec2{blank.length + reach, -reach},
                              Vec2{blank.length + reach, across}, Vec2{-reach, across}}) {
        const double rest = cut.plane.offset - n.x * corner.x;
        outline.Add(level ? gp_Pnt(corner.x, corner.y, (rest - n.y * corner.y) / n.z)
                          : gp_Pnt(corner.x, (rest - n.z * corner.y) / n.y, corner.y));
    }
    outline.Close();
    const double push = reach + (level ? blank.height : blank.width);
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(outline.Wire(), true).Face(),
                                 gp_Vec(push * n.x, push * n.y, push * n.z))
        .Shape();
}

TopoDS_Shape tool_of(const BoxCut &cut, const Blank &) {
    return box(cut.box.low, cut.box.high);
}

TopoDS_Shape tool_of(const Bore &bore, const Blank &) {
    return bore_tool(bore);
}

} // namespace

Solid build_plainly(const Piece &piece) {
    return guarded("building piece " + piece.tag + " plainly", [&] {
        const Blank &blank = piece.blank;
        TopoDS_Shape wood = box({0, 0, 0}, {blank.length, blank.width, blank.height});
        for (const Cut &each : piece.cuts) {
            TopTools_ListOfShape tools;
            tools.Append(std::visit([&](const auto &c) { return tool_of(c, blank); }, each));
            wood = cut(wood, tools);
        }
        return Solid(wood);
    });
}

} // namespace roundlay
