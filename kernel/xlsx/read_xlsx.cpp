#include "kernel/xlsx/read_xlsx.h"

#include "kernel/xlsx/sheet_parts.h"
#include "kernel/xlsx/xml_reader.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr std::string_view packed = "PK\x03\x04", old_kind = "\xD0\xCF\x11\xE0";
constexpr char too_large[] = "this file holds more than anybody fills in by hand (64 MB, or 4 million cells)";

struct Tab {
    std::string name, id;
};

struct Workbook {
    std::vector<Tab> tabs;
    bool from_1904 = false;
};

Workbook workbook_of(const std::string &xml) {
    Workbook book;
    const auto open = [&](std::string_view name, const XmlAttributes &attributes) {
        if (name == "sheet") book.tabs.push_back({attributes["name"], attributes["id"]});
        if (name == "workbookPr")
            book.from_1904 = attributes["date1904"] == "1" || attributes["date1904"] == "true";
    };
    read_xml(xml, {open, [](std::string_view) {}});
    return book;
}

std::string part_of_kind(const std::vector<PartReference> &references, const std::string &kind) {
    const auto found = std::ranges::find(references, kind, &PartReference::kind);
    return found == references.end() ? "" : found->part;
}

std::string content(PackedParts &parts, const std::string &part) {
    return part.empty() ? "" : parts.part(part).value_or("");
}

/// Why the bytes are no workbook that can be read.
std::string no_workbook(std::string_view bytes, PackedParts &parts) {
    if (parts.is_too_large()) return too_large;
    if (bytes.starts_with(old_kind))
        return "this is a spreadsheet of the old kind, or one with a password: save it as XLSX without a "
               "password, or as CSV";
    if (parts.good() && parts.has("content.xml"))
        return "this is an OpenDocument spreadsheet: save it as XLSX or as CSV";
    return "this is no XLSX file, or a damaged one: save it as XLSX again, or as CSV";
}

} // namespace

bool looks_like_spreadsheet(std::string_view bytes) {
    return bytes.starts_with(packed) || bytes.starts_with(old_kind);
}

std::variant<std::vector<ReadSheet>, std::string> read_xlsx(std::string_view bytes) {
    PackedParts parts(bytes);
    const std::string workbook = part_of_kind(references_of(parts, ""), "officeDocument");
    const Workbook book = workbook_of(content(parts, workbook));
    if (book.tabs.empty()) return no_workbook(bytes, parts);
    const std::vector<PartReference> references = references_of(parts, workbook);
    const auto texts = shared_texts(content(parts, part_of_kind(references, "sharedStrings")));
    const auto looks = looks_of(content(parts, part_of_kind(references, "styles")));
    std::vector<ReadSheet> sheets;
    for (const Tab &tab : book.tabs) {
        const auto reference = std::ranges::find(references, tab.id, &PartReference::id);
        if (reference == references.end() || reference->kind != "worksheet") continue; // a chart
        ReadSheet sheet;
        sheet.name = tab.name;
        const auto xml = parts.part(reference->part);
        if (!xml) return no_workbook(bytes, parts);
        if (!read_sheet(*xml, {texts, looks, book.from_1904}, sheet))
            return std::string("its sheet \"") + tab.name +
                   "\" is damaged, or holds more than 4 million cells";
        if (!sheet.rows.rows.empty() || !sheet.remarks.empty()) sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay
