// One box and one boolean per cut, one after another. Shares nothing with the direct way but what
// it is held against.
#include "kernel/layout/cuts/match.h"
#include "kernel/solid/boolean.h"
#include "kernel/solid/guarded.h"
#include "kernel/solid/round_tools.h"
#include "kernel/solid/solid.h"

#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <TopoDS_Face.hxx>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace roundlay {

namespace {

/// Tools reach this far past the blank where they are open, so that no faces of tool and blank coincide.
constexpr double reach = 50;

TopoDS_Shape box(Vec3 low, Vec3 high) {
    return BRepPrimAPI_MakeBox(gp_Pnt(low.x, low.y, low.z), gp_Pnt(high.x, high.y, high.z)).Shape();
}

/// The outline from above of a stretch between two x whose ends lean by `skew`, with room to spare on both
/// sides.
std::array<Vec2, 4> leaning(double from, double to, double skew, double width) {
    const double low = -reach, high = width + reach, middle = width / 2;
    return {Vec2{from + skew * (low - middle), low}, Vec2{to + skew * (low - middle), low},
            Vec2{to + skew * (high - middle), high}, Vec2{from + skew * (high - middle), high}};
}

/// The wood beyond the seam plane between two x: a piece of that plane pushed upright past the blank.
TopoDS_Shape tool_of(const SeamCut &seam, const Blank &blank) {
    const bool open_from = seam.x_from <= 0 || (seam.open && seam.end == End::datum);
    const bool open_to = seam.x_to >= blank.length || (seam.open && seam.end == End::far);
    const double from = open_from ? seam.x_from - reach : seam.x_from;
    const double to = open_to ? seam.x_to + reach : seam.x_to;
    BRepBuilderAPI_MakePolygon outline;
    double lowest = HUGE_VAL, highest = -HUGE_VAL;
    for (const Vec2 corner : leaning(from, to, seam.skew, blank.width)) {
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

/// A piece of the plane of a hewn face, larger than the blank.
TopoDS_Face face_of(const FaceCut &cut, const Blank &blank) {
    const Vec3 n = cut.plane.normal;
    const bool level = cut.face == LogFace::top || cut.face == LogFace::under;
    const bool end = cut.face == LogFace::datum_end || cut.face == LogFace::far_end;
    const double along = reach + (end ? blank.width : blank.length),
                 up = reach + (level ? blank.width : blank.height);
    BRepBuilderAPI_MakePolygon outline;
    for (const Vec2 corner : {Vec2{-reach, -reach}, Vec2{along, -reach}, Vec2{along, up}, Vec2{-reach, up}}) {
        if (end) // upright, over y and z
            outline.Add(gp_Pnt((cut.plane.offset - n.y * corner.x) / n.x, corner.x, corner.y));
        else if (level)
            outline.Add(gp_Pnt(corner.x, corner.y, cut.plane.height_at(corner.x, corner.y)));
        else
            outline.Add(
                gp_Pnt(corner.x, (cut.plane.offset - n.x * corner.x - n.z * corner.y) / n.y, corner.y));
    }
    outline.Close();
    return BRepBuilderAPI_MakeFace(outline.Wire(), true).Face();
}

/// The wood beyond a hewn face: a piece of its plane pushed out past the blank.
TopoDS_Shape tool_of(const FaceCut &cut, const Blank &blank) {
    const Vec3 n = cut.plane.normal;
    const double push = reach + blank.width + blank.height;
    return BRepPrimAPI_MakePrism(face_of(cut, blank), gp_Vec(push * n.x, push * n.y, push * n.z)).Shape();
}

/// What stands over an outline seen from above, from a plane up.
TopoDS_Shape column(const std::vector<Vec2> &outline, const Plane &floor, double height) {
    BRepBuilderAPI_MakePolygon ring;
    for (const Vec2 p : outline)
        ring.Add(gp_Pnt(p.x, p.y, floor.height_at(p.x, p.y)));
    ring.Close();
    return BRepPrimAPI_MakePrism(BRepBuilderAPI_MakeFace(ring.Wire(), true).Face(), gp_Vec(0, 0, height))
        .Shape();
}

TopoDS_Shape tool_of(const BoxCut &cut, const Blank &blank) {
    const Vec3 low = cut.box.low, high = cut.box.high;
    if (cut.fall == 0) return box(low, high);
    const Plane floor = plane_over(low.z - cut.fall * cut.fall_from, 0, cut.fall);
    return column({{low.x, low.y}, {high.x, low.y}, {high.x, high.y}, {low.x, high.y}}, floor,
                  blank.height + reach);
}

/// Open at the face that it is let into; with a level ceiling where the log closes it.
TopoDS_Shape tool_of(const PocketCut &cut, const Blank &blank) {
    const double way = cut.y_face > cut.y_back ? 1 : -1;
    const double widens = (cut.half_at_face - cut.half_at_back) / std::abs(cut.y_face - cut.y_back);
    const double open = std::abs(cut.y_face - cut.y_back) + reach,
                 far_half = cut.half_at_back + widens * open;
    const double y = cut.y_back + way * open;
    const std::vector<Vec2> outline{{cut.x - cut.half_at_back, cut.y_back},
                                    {cut.x + cut.half_at_back, cut.y_back},
                                    {cut.x + far_half, y},
                                    {cut.x - far_half, y}};
    double lowest = HUGE_VAL, highest = -HUGE_VAL;
    for (const Vec2 p : outline) {
        lowest = std::min(lowest, cut.bed.height_at(p.x, p.y));
        highest = std::max(highest, cut.bed.height_at(p.x, p.y));
    }
    const TopoDS_Shape tool = column(outline, cut.bed, blank.height + reach - std::min(lowest, 0.0));
    if (cut.z_top >= blank.height) return tool;
    TopTools_ListOfShape over;
    over.Append(box({-reach, -2 * reach, cut.z_top},
                    {blank.length + reach, blank.width + 2 * reach,
                     3 * reach + highest + 2 * blank.height - std::min(lowest, 0.0)}));
    return roundlay::cut(tool, over);
}

TopoDS_Shape tool_of(const CheekCut &cut, const Blank &blank) {
    const double from = cut.x_from <= 0 ? -reach : cut.x_from;
    const double to = cut.x_to >= blank.length ? blank.length + reach : cut.x_to;
    const auto y = [&](double x) { return (cut.plane.offset - cut.plane.normal.x * x) / cut.plane.normal.y; };
    const double out = cut.plane.normal.y > 0 ? blank.width + reach : -reach;
    return column({{from, y(from)}, {to, y(to)}, {to, out}, {from, out}}, plane_over(-reach, 0, 0),
                  blank.height + 2 * reach);
}

/// From the bed on past the blank, open wherever the mend runs out.
TopoDS_Shape tool_of(const MendCut &cut, const Blank &blank) {
    const bool side = cut.face == LogFace::outside || cut.face == LogFace::inside;
    const double whole = side ? blank.height : blank.width;
    const double from = cut.x_from <= 0 ? -reach : cut.x_from,
                 to = cut.x_to >= blank.length ? blank.length + reach : cut.x_to,
                 low = cut.low <= 0 ? -reach : cut.low, high = cut.high >= whole ? whole + reach : cut.high;
    if (!side) {
        const double push = cut.face == LogFace::top ? blank.height + reach : -(blank.height + reach);
        return column({{from, low}, {to, low}, {to, high}, {from, high}}, cut.bed, push);
    }
    const Vec3 &n = cut.bed.normal;
    const auto y = [&](double x) { return (cut.bed.offset - n.x * x) / n.y; };
    const double out = cut.face == LogFace::inside ? blank.width + reach : -reach;
    return column({{from, y(from)}, {to, y(to)}, {to, out}, {from, out}}, plane_over(low, 0, 0), high - low);
}

TopoDS_Shape tool_of(const RoundCut &cut, const Blank &blank) {
    return stick_tool(cut, cut.radius + blank.width + blank.height + reach);
}

TopoDS_Shape tool_of(const ScopeCut &cut, const Blank &blank) {
    return scope_tool(cut, blank);
}

struct ToolOf {
    const Blank &blank;
    TopoDS_Shape operator()(const FaceCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const RoundCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const SeamCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const ScopeCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const BoxCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const PocketCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const CheekCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const MendCut &cut) const { return tool_of(cut, blank); }
    TopoDS_Shape operator()(const Bore &cut) const { return bore_tool(cut); }
};

} // namespace

Solid build_plainly(const Piece &piece) {
    return guarded("building piece " + piece.tag + " plainly", [&] {
        const Blank &blank = piece.blank;
        TopoDS_Shape wood = box({0, 0, 0}, {blank.length, blank.width, blank.height});
        for (const Cut &each : piece.cuts) {
            TopTools_ListOfShape tools;
            tools.Append(match(each, ToolOf{blank}));
            wood = cut(wood, tools);
        }
        Solid solid(wood);
        hold_against(solid, body_of(piece));
        return solid;
    });
}

} // namespace roundlay
