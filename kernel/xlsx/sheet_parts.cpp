#include "kernel/xlsx/sheet_parts.h"

#include "kernel/xlsx/xml_reader.h"

namespace roundlay {

namespace {

std::string folder_of(const std::string &part) {
    const std::size_t slash = part.rfind('/');
    return slash == std::string::npos ? "" : part.substr(0, slash + 1);
}

/// A reference from a part in that folder, with its way up (..) gone.
std::string resolved(const std::string &folder, const std::string &target) {
    if (target.starts_with('/')) return target.substr(1);
    std::string path = folder;
    std::string rest = target;
    while (rest.starts_with("../")) {
        rest.erase(0, 3);
        if (!path.empty()) path.pop_back();
        path = folder_of(path);
    }
    return path + rest;
}

} // namespace

std::vector<PartReference> references_of(PackedParts &parts, const std::string &part) {
    const std::string folder = folder_of(part);
    const auto xml = parts.part(folder + "_rels/" + part.substr(folder.size()) + ".rels");
    std::vector<PartReference> all;
    if (!xml) return all;
    const auto open = [&](std::string_view name, const XmlAttributes &attributes) {
        if (name != "Relationship") return;
        const std::string type = attributes["Type"];
        all.push_back(
            {attributes["Id"], type.substr(type.rfind('/') + 1), resolved(folder, attributes["Target"])});
    };
    read_xml(*xml, {open, [](std::string_view) {}});
    return all;
}

std::vector<std::string> shared_texts(const std::string &xml) {
    std::vector<std::string> all;
    bool in_text = false, said_how = false; // how it is said: phonetic, and no part of it
    const auto open = [&](std::string_view name, const XmlAttributes &) {
        if (name == "si") all.emplace_back();
        if (name == "rPh") said_how = true;
        if (name == "t") in_text = !said_how;
    };
    const auto close = [&](std::string_view name) {
        if (name == "rPh") said_how = false;
        if (name == "t") in_text = false;
    };
    const auto text = [&](std::string_view letters) {
        if (in_text && !all.empty()) all.back() += letters;
    };
    read_xml(xml, {open, close, text});
    return all;
}

} // namespace roundlay
