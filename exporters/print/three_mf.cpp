// 3MF Consortium: 3D Manufacturing Format, Core Specification 1.x, from memory.
#include "exporters/print/three_mf.h"

#include "exporters/files/markup.h"
#include "exporters/print/zipped.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

namespace roundlay {

namespace {

std::string number(double value) {
    std::array<char, 40> room{};
    constexpr int decimals = 6; // a millionth of a millimetre
    const auto end = std::to_chars(room.data(), room.data() + room.size(), value + 0.0,
                                   std::chars_format::fixed, decimals);
    std::string text(room.data(), end.ptr);
    while (text.back() == '0')
        text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

/// In an attribute. Letters that XML forbids become a question mark.
std::string escaped(std::string words) {
    std::ranges::replace_if(
        words, [](char sign) { return static_cast<unsigned char>(sign) < 0x20; }, '?');
    return in_markup(words);
}

std::string object(std::size_t id, const PrintPart &part) {
    std::string xml = "<object id=\"" + std::to_string(id) + "\" type=\"model\" name=\"" +
                      escaped(part.name) + "\"><mesh><vertices>\n";
    for (const Vec3 &p : part.mesh.points)
        xml += "<vertex x=\"" + number(p.x) + "\" y=\"" + number(p.y) + "\" z=\"" + number(p.z) + "\"/>\n";
    xml += "</vertices><triangles>\n";
    for (const MeshTriangle &triangle : part.mesh.triangles) {
        const auto &[a, b, c] = triangle.corners;
        xml += "<triangle v1=\"" + std::to_string(a) + "\" v2=\"" + std::to_string(b) + "\" v3=\"" +
               std::to_string(c) + "\"/>\n";
    }
    return xml + "</triangles></mesh></object>\n";
}

/// Rows of the matrix one after the other; points are rows that it is put behind.
std::string placed(const PrintJob &job, const PrintPlace &place) {
    if (!place.turned) return "1 0 0 0 1 0 0 0 1 " + number(place.x) + " " + number(place.y) + " 0";
    const double depth =
        bounds(job.parts[place.part].mesh).high.y; // turned to the left, it lies left of its corner
    return "0 1 0 -1 0 0 0 0 1 " + number(place.x + depth) + " " + number(place.y) + " 0";
}

std::string model(const PrintJob &job, const PrintPlate &plate, const std::string &title) {
    std::string xml =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"millimeter\" xml:lang=\"en\" "
        "xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n<metadata name=\"Title\">" +
        escaped(title) + "</metadata>\n<metadata name=\"Application\">roundlay</metadata>\n<resources>\n";
    std::map<std::size_t, std::size_t> id_of;
    for (const PrintPlace &place : plate)
        if (const auto [found, fresh] = id_of.try_emplace(place.part, id_of.size() + 1); fresh)
            xml += object(found->second, job.parts[place.part]);
    xml += "</resources>\n<build>\n";
    for (const PrintPlace &place : plate)
        xml += "<item objectid=\"" + std::to_string(id_of.at(place.part)) + "\" partnumber=\"" +
               escaped(place.name) + "\" transform=\"" + placed(job, place) + "\"/>\n";
    return xml + "</build>\n</model>\n";
}

} // namespace

std::string write_3mf(const PrintJob &job, const PrintPlate &plate, const std::string &title) {
    return zipped({{"[Content_Types].xml",
                    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<Types "
                    "xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                    "<Default Extension=\"rels\" "
                    "ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                    "<Default Extension=\"model\" "
                    "ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/></Types>\n"},
                   {"_rels/.rels", "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<Relationships "
                                   "xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                                   "<Relationship Target=\"/3D/3dmodel.model\" Id=\"rel0\" "
                                   "Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
                                   "</Relationships>\n"},
                   {"3D/3dmodel.model", model(job, plate, title)}});
}

} // namespace roundlay
