#include "kernel/xlsx/sheet_parts.h"

#include "kernel/xlsx/xml_reader.h"

#include <algorithm>
#include <charconv>

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

std::size_t number_or(const std::string &text, std::size_t otherwise) {
    std::size_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() ? value : otherwise;
}

/// Built-in formats of dates and times (ECMA-376, 18.8.30).
bool is_built_in_date(std::size_t format) {
    return (format >= 14 && format <= 22) || (format >= 45 && format <= 47);
}

/// A format of one's own with a day, month, year, hour or second in it, outside of quotes and brackets.
bool shows_a_date(const std::string &code) {
    bool quoted = false, bracketed = false;
    for (std::size_t i = 0; i < code.size(); ++i) {
        const char c = code[i];
        if (c == '"') quoted = !quoted;
        if (c == '\\' || c == '_' || c == '*') ++i;
        if (c == '[') bracketed = true;
        if (c == ']') bracketed = false;
        if (!quoted && !bracketed && std::string_view("dDmMyYhHsS").find(c) != std::string_view::npos)
            return true;
    }
    return false;
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

std::set<std::size_t> date_styles(const std::string &xml) {
    std::set<std::size_t> own, styles;
    std::size_t style = 0;
    bool in_styles = false;
    const auto open = [&](std::string_view name, const XmlAttributes &attributes) {
        if (name == "numFmt" && shows_a_date(attributes["formatCode"]))
            own.insert(number_or(attributes["numFmtId"], 0));
        if (name == "cellXfs") in_styles = true;
        if (name != "xf" || !in_styles) return;
        const std::size_t format = number_or(attributes["numFmtId"], 0);
        if (is_built_in_date(format) || own.contains(format)) styles.insert(style);
        ++style;
    };
    const auto close = [&](std::string_view name) {
        if (name == "cellXfs") in_styles = false;
    };
    read_xml(xml, {open, close});
    return styles;
}

} // namespace roundlay
