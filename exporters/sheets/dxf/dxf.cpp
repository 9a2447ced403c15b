#include "exporters/sheets/dxf/dxf.h"

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/dxf/groups.h"

#include <map>
#include <numeric>

namespace roundlay::sheets {
namespace {

using dxf::Groups;

// Handles of what every file has. Entities follow.
enum Handle : unsigned {
    vport_table = 1,
    ltype_table,
    layer_table,
    style_table,
    view_table,
    ucs_table,
    appid_table,
    dimstyle_table,
    block_table,
    model_record,
    paper_record,
    model_block,
    model_end,
    paper_block,
    paper_end,
    root_dictionary,
    group_dictionary,
    layout_dictionary,
    model_layout,
    paper_layout,
    style_standard,
    appid_acad,
    dimstyle_standard,
    vport_active,
    first_free = 0x40
};

constexpr int millimetres = 4, metric = 1;
constexpr int black_or_white = 7, grey_colour = 9;
constexpr double dark = 0.4;
constexpr const char *text_layer = "text", *fill_layer = "fill";

/// A layer and how its lines look.
struct Layer {
    std::string ltype = "Continuous";
    int weight = 25; ///< hundredths of a millimetre
};

class Writer {
  public:
    explicit Writer(const Sheet &sheet) : sheet_(sheet) { collect_layers(); }

    std::string write() {
        // entities first, since the header states the next free handle
        Groups body = entities();
        Groups tables = all_tables();
        std::string out = std::string(header().take()) + std::string(tables.take());
        out += std::string(blocks().take()) + std::string(body.take()) + std::string(objects().take());
        return out + "  0\nEOF\n";
    }

  private:
    unsigned next() { return free_++; }

    void collect_layers() {
        layers_["0"] = {};
        for (const Item &item : sheet_.items) {
            if (const Path *path = std::get_if<Path>(&item)) add_layer(path->layer, path->line);
            if (const Circle *circle = std::get_if<Circle>(&item)) add_layer(circle->layer, circle->line);
            if (const Arc *arc = std::get_if<Arc>(&item)) add_layer("", arc->line);
            if (const Text *text = std::get_if<Text>(&item))
                layers_[text->layer.empty() ? text_layer : text->layer];
            if (std::holds_alternative<Fill>(item)) layers_[fill_layer];
        }
    }

    void add_layer(const std::string &name, Line line) {
        const LineStyle style = style_of(line);
        layers_[name_for(name, line)] = {style.dashes.empty() ? "Continuous" : name_of(line),
                                         static_cast<int>(style.width * 100 + 0.5)};
    }

    static std::string name_for(const std::string &layer, Line line) {
        return layer.empty() ? name_of(line) : layer;
    }

    Groups header() const {
        Groups g;
        const auto variable = [&](const char *name) { g.text(9, name); };
        g.text(0, "SECTION");
        g.text(2, "HEADER");
        variable("$ACADVER"), g.text(1, "AC1015");
        variable("$DWGCODEPAGE"), g.text(3, "ANSI_1252");
        variable("$INSUNITS"), g.number(70, millimetres);
        variable("$MEASUREMENT"), g.number(70, metric);
        const Rect box = extents();
        variable("$EXTMIN"), g.point(10, box.x0, box.y0);
        variable("$EXTMAX"), g.point(10, box.x1, box.y1);
        variable("$HANDSEED"), g.handle(5, free_);
        g.text(0, "ENDSEC");
        g.text(0, "SECTION"), g.text(2, "CLASSES"), g.text(0, "ENDSEC");
        return g;
    }

    Rect extents() const {
        const Rect box = bounds(sheet_.items);
        return box.empty() ? Rect{0, 0, sheet_.size.width, sheet_.size.height} : box;
    }

    void table(Groups &g, const char *name, unsigned handle, std::size_t count) const {
        g.text(0, "TABLE"), g.text(2, name), g.handle(5, handle), g.handle(330, 0);
        g.text(100, "AcDbSymbolTable"), g.number(70, static_cast<int>(count));
    }

    void record(Groups &g, const char *name, const char *kind, unsigned handle, unsigned owner) const {
        g.text(0, name), g.handle(std::string_view(name) == "DIMSTYLE" ? 105 : 5, handle),
            g.handle(330, owner);
        g.text(100, "AcDbSymbolTableRecord"), g.text(100, kind);
    }

    Groups all_tables() {
        Groups g;
        g.text(0, "SECTION"), g.text(2, "TABLES");
        viewports(g);
        linetypes(g);
        layer_records(g);
        table(g, "STYLE", style_table, 1);
        record(g, "STYLE", "AcDbTextStyleTableRecord", style_standard, style_table);
        g.text(2, "Standard"), g.number(70, 0), g.real(40, 0), g.real(41, 1), g.real(50, 0), g.number(71, 0);
        g.real(42, least_lettering), g.text(3, "DejaVuSans.ttf"), g.text(4, ""), g.text(0, "ENDTAB");
        table(g, "VIEW", view_table, 0), g.text(0, "ENDTAB");
        table(g, "UCS", ucs_table, 0), g.text(0, "ENDTAB");
        table(g, "APPID", appid_table, 1);
        record(g, "APPID", "AcDbRegAppTableRecord", appid_acad, appid_table);
        g.text(2, "ACAD"), g.number(70, 0), g.text(0, "ENDTAB");
        table(g, "DIMSTYLE", dimstyle_table, 1), g.text(100, "AcDbDimStyleTable");
        record(g, "DIMSTYLE", "AcDbDimStyleTableRecord", dimstyle_standard, dimstyle_table);
        g.text(2, "Standard"), g.number(70, 0), g.text(0, "ENDTAB");
        table(g, "BLOCK_RECORD", block_table, 2);
        block_record(g, "*Model_Space", model_record, model_layout);
        block_record(g, "*Paper_Space", paper_record, paper_layout);
        g.text(0, "ENDTAB"), g.text(0, "ENDSEC");
        return g;
    }

    void block_record(Groups &g, const char *name, unsigned handle, unsigned layout) const {
        record(g, "BLOCK_RECORD", "AcDbBlockTableRecord", handle, block_table);
        g.text(2, name), g.handle(340, layout);
    }

    void viewports(Groups &g) const {
        const Rect box = extents();
        table(g, "VPORT", vport_table, 1);
        record(g, "VPORT", "AcDbViewportTableRecord", vport_active, vport_table);
        g.text(2, "*Active"), g.number(70, 0);
        g.real(10, 0), g.real(20, 0), g.real(11, 1), g.real(21, 1);
        g.real(12, box.centre().x), g.real(22, box.centre().y);
        g.real(40, std::max(box.height(), 1.0)),
            g.real(41, std::max(box.width(), 1.0) / std::max(box.height(), 1.0));
        g.text(0, "ENDTAB");
    }

    void linetypes(Groups &g) {
        std::vector<Line> dashed;
        for (const Line line : all_lines)
            if (!style_of(line).dashes.empty()) dashed.push_back(line);
        table(g, "LTYPE", ltype_table, dashed.size() + 3);
        for (const char *name : {"ByBlock", "ByLayer", "Continuous"})
            linetype(g, name, {});
        for (const Line line : dashed)
            linetype(g, name_of(line), style_of(line).dashes);
        g.text(0, "ENDTAB");
    }

    void linetype(Groups &g, const char *name, std::span<const double> dashes) {
        record(g, "LTYPE", "AcDbLinetypeTableRecord", next(), ltype_table);
        g.text(2, name), g.number(70, 0), g.text(3, ""), g.number(72, 65),
            g.number(73, static_cast<int>(dashes.size()));
        g.real(40, std::accumulate(dashes.begin(), dashes.end(), 0.0));
        for (std::size_t i = 0; i < dashes.size(); ++i) { // gaps are negative
            g.real(49, i % 2 == 0 ? dashes[i] : -dashes[i]);
            g.number(74, 0);
        }
    }

    void layer_records(Groups &g) {
        table(g, "LAYER", layer_table, layers_.size());
        for (const auto &[name, layer] : layers_) {
            record(g, "LAYER", "AcDbLayerTableRecord", next(), layer_table);
            g.text(2, dxf::layer_text(name)), g.number(70, 0), g.number(62, black_or_white),
                g.text(6, layer.ltype);
            g.number(370, layer.weight);
        }
        g.text(0, "ENDTAB");
    }

    static void block(Groups &g, const char *name, unsigned begin, unsigned end, unsigned record,
                      bool paper) {
        g.text(0, "BLOCK"), g.handle(5, begin), g.handle(330, record), g.text(100, "AcDbEntity");
        if (paper) g.number(67, 1);
        g.text(8, "0"), g.text(100, "AcDbBlockBegin"), g.text(2, name), g.number(70, 0), g.point(10, 0, 0);
        g.text(3, name), g.text(1, "");
        g.text(0, "ENDBLK"), g.handle(5, end), g.handle(330, record), g.text(100, "AcDbEntity");
        if (paper) g.number(67, 1);
        g.text(8, "0"), g.text(100, "AcDbBlockEnd");
    }

    static Groups blocks() {
        Groups g;
        g.text(0, "SECTION"), g.text(2, "BLOCKS");
        block(g, "*Model_Space", model_block, model_end, model_record, false);
        block(g, "*Paper_Space", paper_block, paper_end, paper_record, true);
        g.text(0, "ENDSEC");
        return g;
    }

    Groups entities() {
        Groups g;
        g.text(0, "SECTION"), g.text(2, "ENTITIES");
        for (const Item &item : sheet_.items)
            std::visit([&](const auto &it) { add(g, it); }, item);
        g.text(0, "ENDSEC");
        return g;
    }

    void entity(Groups &g, const char *type, const std::string &layer, const char *kind) {
        g.text(0, type), g.handle(5, next()), g.handle(330, model_record), g.text(100, "AcDbEntity");
        g.text(8, dxf::layer_text(layer)), g.text(100, kind);
    }

    void add(Groups &g, const Path &path) {
        if (path.points.size() < 2) return;
        const std::string layer = name_for(path.layer, path.line);
        if (path.points.size() == 2) {
            entity(g, "LINE", layer, "AcDbLine");
            g.point(10, path.points[0].x, path.points[0].y), g.point(11, path.points[1].x, path.points[1].y);
            return;
        }
        entity(g, "LWPOLYLINE", layer, "AcDbPolyline");
        g.number(90, static_cast<int>(path.points.size())), g.number(70, path.closed ? 1 : 0), g.real(43, 0);
        for (const Vec2 p : path.points)
            g.real(10, p.x), g.real(20, p.y);
    }

    void add(Groups &g, const Circle &circle) {
        entity(g, "CIRCLE", name_for(circle.layer, circle.line), "AcDbCircle");
        g.point(10, circle.centre.x, circle.centre.y), g.real(40, circle.radius);
    }

    void add(Groups &g, const Arc &arc) {
        entity(g, "ARC", name_of(arc.line), "AcDbCircle");
        g.point(10, arc.centre.x, arc.centre.y), g.real(40, arc.radius);
        g.text(100, "AcDbArc"), g.real(50, arc.from), g.real(51, arc.to);
    }

    void add(Groups &g, const Text &text) {
        if (text.words.empty()) return;
        const Vec2 start = start_of(text);
        entity(g, "TEXT", text.layer.empty() ? text_layer : text.layer, "AcDbText");
        g.point(10, start.x, start.y), g.real(40, text.height), g.text(1, dxf::value_text(text.words));
        g.real(50, text.turn), g.text(7, "Standard"), g.text(100, "AcDbText");
    }

    void add(Groups &g, const Fill &fill) {
        g.text(0, "HATCH"), g.handle(5, next()), g.handle(330, model_record), g.text(100, "AcDbEntity");
        g.text(8, fill_layer), g.number(62, fill.grey < dark ? black_or_white : grey_colour),
            g.text(100, "AcDbHatch");
        g.point(10, 0, 0), g.real(210, 0), g.real(220, 0), g.real(230, 1);
        g.text(2, "SOLID"), g.number(70, 1), g.number(71, 0),
            g.number(91, static_cast<int>(fill.rings.size()));
        for (const auto &ring : fill.rings) {
            g.number(92, 2), g.number(72, 0), g.number(73, 1), g.number(93, static_cast<int>(ring.size()));
            for (const Vec2 p : ring)
                g.real(10, p.x), g.real(20, p.y);
            g.number(97, 0);
        }
        g.number(75, 0), g.number(76, 1), g.number(98, 0);
    }

    void add(Groups &, const Picture &) {}
    void add(Groups &, const Link &) {}

    static void dictionary(Groups &g, unsigned handle, unsigned owner) {
        g.text(0, "DICTIONARY"), g.handle(5, handle), g.handle(330, owner), g.text(100, "AcDbDictionary"),
            g.number(281, 1);
    }

    static Groups objects() {
        Groups g;
        g.text(0, "SECTION"), g.text(2, "OBJECTS");
        dictionary(g, root_dictionary, 0);
        g.text(3, "ACAD_GROUP"), g.handle(350, group_dictionary);
        g.text(3, "ACAD_LAYOUT"), g.handle(350, layout_dictionary);
        dictionary(g, group_dictionary, root_dictionary);
        dictionary(g, layout_dictionary, root_dictionary);
        g.text(3, "Model"), g.handle(350, model_layout);
        g.text(3, "Layout1"), g.handle(350, paper_layout);
        layout(g, "Model", model_layout, model_record, 0);
        layout(g, "Layout1", paper_layout, paper_record, 1);
        g.text(0, "ENDSEC");
        return g;
    }

    static void layout(Groups &g, const char *name, unsigned handle, unsigned record, int order) {
        constexpr int model_type = 1024;
        g.text(0, "LAYOUT"), g.handle(5, handle), g.handle(330, layout_dictionary),
            g.text(100, "AcDbPlotSettings");
        g.text(1, ""), g.number(70, order == 0 ? model_type : 0), g.text(100, "AcDbLayout"), g.text(1, name);
        g.number(70, 1), g.number(71, order);
        g.real(10, 0), g.real(20, 0), g.real(11, 420), g.real(21, 297);
        g.point(12, 0, 0), g.point(14, 0, 0), g.point(15, 0, 0), g.real(146, 0);
        g.point(13, 0, 0), g.point(16, 1, 0), g.real(17, 0), g.real(27, 1), g.real(37, 0), g.number(76, 0),
            g.handle(330, record);
    }

    const Sheet &sheet_;
    unsigned free_ = first_free;
    std::map<std::string, Layer> layers_;
};

} // namespace

std::string write_dxf(const Sheet &sheet) {
    return Writer(sheet).write();
}

} // namespace roundlay::sheets
