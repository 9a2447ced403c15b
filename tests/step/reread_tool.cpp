// Reads a STEP file with OpenCASCADE and prints as JSON what came in. A program of its own, so that nothing
// the writer left in memory can help the reader.
//
// Use: reread_tool FILE
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Quantity_Color.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <Standard_Failure.hxx>
#include <TColStd_HSequenceOfExtendedString.hxx>
#include <TColStd_SequenceOfAsciiString.hxx>
#include <TCollection_AsciiString.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedDataMapOfShapeListOfShape.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_Area.hxx>
#include <XCAFDoc_Centroid.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_LayerTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <XCAFDoc_Volume.hxx>
#include <XSControl_TransferReader.hxx>
#include <XSControl_WorkSession.hxx>
#include <nlohmann/json.hpp>

#include <iostream>

namespace {

using nlohmann::json;

std::string name_of(const TDF_Label &label) {
    Handle(TDataStd_Name) name;
    if (!label.FindAttribute(TDataStd_Name::GetID(), name)) return "";
    std::string text(static_cast<std::size_t>(name->Get().LengthOfCString()), '\0');
    Standard_PCharacter to = text.data();
    name->Get().ToUTF8CString(to);
    return text;
}

json colour_of(const Quantity_Color &colour) {
    double red = 0, green = 0, blue = 0;
    colour.Values(red, green, blue, Quantity_TOC_sRGB);
    return {red, green, blue};
}

int count(const TopoDS_Shape &shape, TopAbs_ShapeEnum kind) {
    int found = 0;
    for (TopExp_Explorer each(shape, kind); each.More(); each.Next())
        ++found;
    return found;
}

int free_edges(const TopoDS_Shape &shape) {
    TopTools_IndexedDataMapOfShapeListOfShape faces;
    TopExp::MapShapesAndAncestors(shape, TopAbs_EDGE, TopAbs_FACE, faces);
    int found = 0;
    for (int i = 1; i <= faces.Extent(); ++i)
        if (faces(i).Extent() != 2) ++found;
    return found;
}

json measured(const TopoDS_Shape &shape) {
    GProp_GProps volume, area;
    BRepGProp::VolumeProperties(shape, volume);
    BRepGProp::SurfaceProperties(shape, area);
    const gp_Pnt c = volume.CentreOfMass();
    return {{"volume", volume.Mass()}, {"area", area.Mass()}, {"centroid", {c.X(), c.Y(), c.Z()}}};
}

/// The validation properties that stood in the file.
json stated(const TDF_Label &label) {
    json found = json::object();
    double value = 0;
    gp_Pnt point;
    if (XCAFDoc_Volume::Get(label, value)) found["volume"] = value;
    if (XCAFDoc_Area::Get(label, value)) found["area"] = value;
    if (XCAFDoc_Centroid::Get(label, point)) found["centroid"] = {point.X(), point.Y(), point.Z()};
    return found;
}

class Reader {
  public:
    explicit Reader(const Handle(TDocStd_Document) & document)
        : shapes_(XCAFDoc_DocumentTool::ShapeTool(document->Main())),
          colours_(XCAFDoc_DocumentTool::ColorTool(document->Main())),
          layers_(XCAFDoc_DocumentTool::LayerTool(document->Main())) {}

    json read() {
        TDF_LabelSequence roots, all;
        shapes_->GetFreeShapes(roots);
        shapes_->GetShapes(all);
        json result{{"products", json::array()}, {"uses", json::array()}, {"roots", json::array()}};
        for (int i = 1; i <= roots.Length(); ++i) {
            result["roots"].push_back(name_of(roots.Value(i)));
            result["solids"] =
                result.value("solids", 0) + count(shapes_->GetShape(roots.Value(i)), TopAbs_SOLID);
        }
        for (int i = 1; i <= all.Length(); ++i)
            read_label(all.Value(i), result);
        return result;
    }

  private:
    void read_label(const TDF_Label &label, json &result) {
        if (XCAFDoc_ShapeTool::IsAssembly(label)) {
            TDF_LabelSequence uses;
            XCAFDoc_ShapeTool::GetComponents(label, uses);
            for (int i = 1; i <= uses.Length(); ++i)
                result["uses"].push_back(read_use(label, uses.Value(i)));
        } else if (XCAFDoc_ShapeTool::IsSimpleShape(label)) {
            result["products"].push_back(read_product(label));
        }
    }

    json read_product(const TDF_Label &label) {
        const TopoDS_Shape shape = XCAFDoc_ShapeTool::GetShape(label);
        json product{{"name", name_of(label)},
                     {"solids", count(shape, TopAbs_SOLID)},
                     {"shells", count(shape, TopAbs_SHELL)},
                     {"faces", count(shape, TopAbs_FACE)},
                     {"free_edges", free_edges(shape)},
                     {"valid", static_cast<bool>(BRepCheck_Analyzer(shape).IsValid())},
                     {"measured", measured(shape)},
                     {"stated", stated(label)}};
        if (const json colour = find_colour(label, shape); !colour.is_null()) product["colour"] = colour;
        product["layers"] = layers_of(label, shape);
        return product;
    }

    json read_use(const TDF_Label &parent, const TDF_Label &use) {
        TDF_Label product;
        XCAFDoc_ShapeTool::GetReferredShape(use, product);
        const gp_Trsf place = XCAFDoc_ShapeTool::GetLocation(use).Transformation();
        json rows = json::array();
        for (int row = 1; row <= 3; ++row)
            for (int column = 1; column <= 4; ++column)
                rows.push_back(place.Value(row, column));
        json found{
            {"name", name_of(use)}, {"in", name_of(parent)}, {"of", name_of(product)}, {"place", rows}};
        if (const json colour = find_colour(use, XCAFDoc_ShapeTool::GetShape(use)); !colour.is_null())
            found["colour"] = colour;
        return found;
    }

    /// Of the product, or of its solid.
    json layers_of(const TDF_Label &label, const TopoDS_Shape &shape) {
        json found = json::array();
        const auto add = [&](const Handle(TColStd_HSequenceOfExtendedString) & names) {
            if (names.IsNull()) return;
            for (int i = 1; i <= names->Length(); ++i)
                found.push_back(TCollection_AsciiString(names->Value(i)).ToCString());
        };
        add(layers_->GetLayers(label));
        for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next())
            add(layers_->GetLayers(each.Current()));
        return found;
    }

    json find_colour(const TDF_Label &label, const TopoDS_Shape &shape) {
        Quantity_Color colour;
        for (const XCAFDoc_ColorType type : {XCAFDoc_ColorSurf, XCAFDoc_ColorGen}) {
            if (colours_->GetColor(label, type, colour)) return colour_of(colour);
            if (colours_->GetInstanceColor(shape, type, colour)) return colour_of(colour);
            for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next())
                if (colours_->GetColor(each.Current(), type, colour)) return colour_of(colour);
        }
        return {};
    }

    Handle(XCAFDoc_ShapeTool) shapes_;
    Handle(XCAFDoc_ColorTool) colours_;
    Handle(XCAFDoc_LayerTool) layers_;
};

json read_file(const char *path) {
    Handle(TDocStd_Document) document;
    XCAFApp_Application::GetApplication()->NewDocument("BinXCAF", document);
    STEPCAFControl_Reader reader;
    reader.SetNameMode(true);
    reader.SetColorMode(true);
    reader.SetPropsMode(true);
    reader.SetLayerMode(true);
    if (reader.ReadFile(path) != IFSelect_RetDone) return {{"error", "the file could not be read"}};
    TColStd_SequenceOfAsciiString lengths, angles, solid_angles;
    reader.ChangeReader().FileUnits(lengths, angles, solid_angles);
    if (!reader.Transfer(document)) return {{"error", "nothing could be taken over"}};
    json result = Reader(document).read();
    result["unit"] = lengths.IsEmpty() ? "" : lengths.First().ToCString();
    return result;
}

} // namespace

int main(int argc, char **argv) {
    if (argc != 2) return 2;
    try {
        // The library would print its own progress between the JSON.
        Message::DefaultMessenger()->ChangePrinters().Clear();
        const json result = read_file(argv[1]);
        std::cout << result.dump() << std::endl;
        return result.contains("error") ? 1 : 0;
    } catch (const Standard_Failure &failure) {
        std::cerr << failure.GetMessageString() << '\n';
        return 1;
    }
}
