// A rebuilt solid held against the STEP file, which is read by OpenCASCADE.
#include "tests/machining/support/rebuilt.h"
#include "tests/machining/support/tools.h"

#include <BRepBuilderAPI_MakeVertex.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <Interface_Static.hxx>
#include <STEPControl_Reader.hxx>
#include <StepRepr_RepresentationItem.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TransferBRep.hxx>
#include <Transfer_TransientProcess.hxx>
#include <XSControl_TransferReader.hxx>
#include <XSControl_WorkSession.hxx>
#include <gp_Pnt.hxx>

#include <algorithm>
#include <sstream>
#include <stdexcept>

namespace operations_check {

namespace {

double area_of(const TopoDS_Shape &face, bool round) {
    GProp_GProps properties;
    if (round)
        BRepGProp::SurfaceProperties(face, properties, 1e-9);
    else
        BRepGProp::SurfaceProperties(face, properties);
    return properties.Mass();
}

bool same_surface(const FaceAt &a, const FaceAt &b) {
    constexpr double same = 1e-5;
    if (a.round != b.round) return false;
    if (!a.round)
        return length(a.way - b.way) < same && std::abs(dot(a.point - b.point, a.way)) < 1e-3 * same + same;
    const Vector off = a.axis - b.axis;
    return std::abs(a.radius - b.radius) < same && std::abs(std::abs(dot(a.way, b.way)) - 1) < same &&
           length(off - dot(off, a.way) * a.way) < same;
}

bool holds(const TopoDS_Shape &face, Vector place) {
    const TopoDS_Shape vertex = BRepBuilderAPI_MakeVertex(gp_Pnt(place.x, place.y, place.z)).Shape();
    const BRepExtrema_DistShapeShape apart(vertex, face);
    return apart.IsDone() && apart.Value() < 1e-5;
}

std::string joined(const std::vector<std::string> &names) {
    std::string text;
    for (const std::string &name : names)
        text += (text.empty() ? "\"" : " or \"") + name + "\"";
    return text.empty() ? "nothing" : text;
}

/// A face of the STEP file, and how much of it the rebuilt faces cover.
struct Covered {
    const NamedFace *face;
    FaceAt at;
    double area = 0, covered = 0;
};

} // namespace

Read read_step(const std::string &bytes) {
    STEPControl_Reader reader;
    std::istringstream stream(bytes);
    if (reader.ReadStream("piece", stream) != IFSelect_RetDone) throw std::runtime_error("no STEP file");
    reader.TransferRoots();
    Read read{reader.OneShape(), {}};
    const Handle(XSControl_TransferReader) transferred = reader.WS()->TransferReader();
    for (TopExp_Explorer each(read.solid, TopAbs_FACE); each.More(); each.Next()) {
        const Handle(StepRepr_RepresentationItem) item = Handle(StepRepr_RepresentationItem)::DownCast(
            transferred->EntityFromShapeResult(each.Current(), 1));
        const std::string name = item.IsNull() || item->Name().IsNull() ? "" : item->Name()->ToCString();
        read.faces.push_back({each.Current(), {name}});
    }
    return read;
}

double volume_of(const TopoDS_Shape &solid, bool round) {
    GProp_GProps properties;
    if (round)
        BRepGProp::VolumeProperties(solid, properties, 1e-11);
    else
        BRepGProp::VolumeProperties(solid, properties);
    return properties.Mass();
}

std::vector<std::string> differences(const Rebuilt &rebuilt, const Read &step, int &shared) {
    std::vector<std::string> all;
    std::vector<Covered> known;
    for (const NamedFace &face : step.faces)
        known.push_back({&face, face_at(TopoDS::Face(face.face)), area_of(face.face, rebuilt.round), 0});
    for (const NamedFace &face : rebuilt.faces) {
        const FaceAt at = face_at(TopoDS::Face(face.face));
        const auto found = std::find_if(known.begin(), known.end(), [&](const Covered &each) {
            return same_surface(each.at, at) && holds(each.face->face, at.point);
        });
        if (found == known.end()) {
            all.push_back("no such face in STEP: " + joined(face.names));
            continue;
        }
        found->covered += area_of(face.face, rebuilt.round);
        const std::string &name = found->face->names.front();
        shared += face.names.size() > 1;
        if (std::find(face.names.begin(), face.names.end(), name) == face.names.end())
            all.push_back("\"" + name + "\" in STEP is " + joined(face.names) + " by the operations");
    }
    for (const Covered &each : known)
        if (std::abs(each.covered - each.area) > 1e-6 * each.area + 1e-3)
            all.push_back("\"" + each.face->names.front() + "\" has " + std::to_string(each.area) +
                          " mm2 in STEP, by the operations " + std::to_string(each.covered));
    return all;
}

} // namespace operations_check
