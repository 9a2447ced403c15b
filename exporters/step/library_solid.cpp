#include "exporters/step/library_solid.h"

#include "exporters/part21/part21_reader.h"
#include "exporters/step/library_settings.h"
#include "kernel/solid/guarded.h"

#include <STEPConstruct.hxx>
#include <STEPControl_Writer.hxx>
#include <StepData_Protocol.hxx>
#include <StepData_StepModel.hxx>
#include <StepData_StepWriter.hxx>
#include <StepRepr_RepresentationItem.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <TopoDS_Shape.hxx>
#include <Transfer_FinderProcess.hxx>
#include <XSControl_TransferWriter.hxx>
#include <XSControl_WorkSession.hxx>

#include <charconv>
#include <sstream>
#include <unordered_map>

namespace roundlay::step {

using part21::Ref;

namespace {

/// Numbers the faces in the order of their map, as their names: the library would spell none of ours.
void number_faces(STEPControl_Writer &writer, const TopoDS_Shape &shape) {
    TopTools_IndexedMapOfShape faces;
    TopExp::MapShapes(shape, TopAbs_FACE, faces);
    const Handle(Transfer_FinderProcess) done = writer.WS()->TransferWriter()->FinderProcess();
    for (int i = 1; i <= faces.Extent(); ++i) {
        const Handle(StepRepr_RepresentationItem) item = STEPConstruct::FindEntity(done, faces(i));
        if (!item.IsNull()) item->SetName(new TCollection_HAsciiString(i - 1));
    }
}

/// What the library writes for one shape, header and all; each face is called by its number.
std::string library_text(const TopoDS_Shape &shape) {
    const LibrarySettings settings;
    STEPControl_Writer writer;
    if (writer.Transfer(shape, STEPControl_ManifoldSolidBrep) != IFSelect_RetDone)
        throw std::runtime_error("OpenCASCADE could not translate a solid to STEP.");
    number_faces(writer, shape);
    StepData_StepWriter text(writer.Model(false));
    text.SendModel(Handle(StepData_Protocol)::DownCast(writer.WS()->Protocol()));
    std::ostringstream out;
    if (!text.Print(out)) throw std::runtime_error("OpenCASCADE could not write a solid as STEP text.");
    return out.str();
}

/// Copies an instance and what it refers to, referred ones first: the order follows from the solid alone,
/// not from the addresses the library ordered its own text by.
class Graft {
  public:
    Graft(part21::DataWriter &data, const part21::Instances &from, const std::vector<std::string> &faces)
        : data_(data), from_(from), faces_(faces) {}

    Ref copy(int id, const std::string &name = "") {
        if (const auto known = done_.find(id); known != done_.end()) return known->second;
        const part21::Instance &instance = from_.at(id);
        std::string text;
        std::size_t place = 0;
        for (const part21::Instance::Reference &reference : instance.references) {
            text.append(instance.text, place, reference.at - place);
            text += '#' + std::to_string(copy(reference.id).id);
            place = reference.at + reference.length;
        }
        text.append(instance.text, place);
        if (instance.type() == "ADVANCED_FACE") text = named(text, face_name(text));
        const Ref made = data_.add_text(name.empty() ? text : named(text, name));
        done_.emplace(id, made);
        return made;
    }

  private:
    /// By the number that it is called by now.
    std::string face_name(const std::string &text) const {
        const std::size_t open = text.find("('") + 2, close = text.find('\'', open);
        std::size_t number = faces_.size();
        std::from_chars(text.data() + open, text.data() + close, number);
        return number < faces_.size() ? faces_[number] : "";
    }

    /// The first attribute of every representation item is its name; the library leaves it empty.
    static std::string named(const std::string &text, const std::string &name) {
        const std::size_t open = text.find("('");
        const std::size_t close = text.find('\'', open + 2);
        if (open == std::string::npos || close == std::string::npos)
            throw std::runtime_error("OpenCASCADE wrote a solid without a place for its name.");
        return text.substr(0, open + 1) + part21::spelt(name) + text.substr(close + 1);
    }

    part21::DataWriter &data_;
    const part21::Instances &from_;
    const std::vector<std::string> &faces_;
    std::unordered_map<int, Ref> done_;
};

int find_solid(const part21::Instances &all) {
    int found = 0;
    for (const auto &[id, instance] : all) {
        if (instance.type() != "MANIFOLD_SOLID_BREP" && instance.type() != "BREP_WITH_VOIDS") continue;
        if (found != 0) throw std::runtime_error("A piece came out of the library as more than one solid.");
        found = id;
    }
    if (found == 0) throw std::runtime_error("A piece came out of the library without a solid.");
    return found;
}

} // namespace

Ref add_library_solid(part21::DataWriter &data, const Solid &solid, const std::string &name,
                      const std::vector<std::string> &faces) {
    if (count_solids(solid) != 1)
        throw std::runtime_error("Piece " + name + " has " + std::to_string(count_solids(solid)) +
                                 " solids; its STEP product needs exactly one.");
    return guarded("writing piece " + name + " as STEP", [&] {
        const part21::Instances all = part21::read_data(library_text(solid.shape()));
        return Graft(data, all, faces).copy(find_solid(all), name);
    });
}

} // namespace roundlay::step
