#include "exporters/machining/operation_files.h"
#include "exporters/machining/operation_words.h"

#include <cmath>

namespace roundlay::machining {

namespace {

constexpr int decimals = 3;

Entry mm(double value) {
    return number(value, decimals);
}

/// Never less than it is.
Entry mm_up(double value) {
    return number(std::ceil(value * 1000 - 1e-6) / 1000, decimals);
}

std::vector<Column> columns() {
    std::vector<Column> all;
    for (const char *key :
         {"tag",          "pieces",      "setup",    "down",      "operation", "mark",
          "kind",         "for",         "from",     "reach_mm",  "tilt_deg",  "inside_radius_mm",
          "tolerance_mm", "x_from_mm",   "x_to_mm",  "y_from_mm", "y_to_mm",   "z_from_mm",
          "z_to_mm",      "diameter_mm", "depth_mm", "through",   "faces",     "caution"})
        all.push_back({key, ""});
    return all;
}

/// The way in that it is worked by.
const AccessSide *way_in(const Operation &operation) {
    for (const AccessSide &access : operation.access)
        if (access.side == operation.from) return &access;
    return nullptr;
}

using Row = std::vector<Entry>;

void add_tool(Row &row, const Operation &operation) {
    const AccessSide *way = way_in(operation);
    row.push_back(way ? mm_up(way->reach) : Entry());
    row.push_back(way ? number(way->tilt, 2) : Entry());
    row.push_back(operation.inside_radius ? mm(*operation.inside_radius) : Entry());
    row.push_back(mm(operation.tolerance));
}

void add_place(Row &row, const Operation &operation, const Voice &voice) {
    const Box3 &box = operation.box;
    for (const double value : {box.low.x, box.high.x, box.low.y, box.high.y, box.low.z, box.high.z})
        row.push_back(mm(value));
    const auto &bore = operation.bore;
    row.push_back(bore ? mm(bore->diameter) : operation.round ? mm(2 * operation.round->radius) : Entry());
    row.push_back(bore ? mm(bore->depth) : Entry());
    row.push_back(bore && bore->through ? voice.say("yes") : std::string());
}

std::string joined(const std::vector<std::string> &names) {
    std::string text;
    for (const std::string &name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

Row row_of(const OperationList &list, std::size_t at, const Voice &voice) {
    const Operation &operation = list.operations[at];
    const bool laid = operation.setup > 0;
    Row row{list.tag, number(static_cast<double>(list.pieces.size()), 0)};
    row.push_back(laid ? number(operation.setup, 0) : Entry());
    row.push_back(laid ? words_of(list.setups.at(static_cast<std::size_t>(operation.setup) - 1).down, voice)
                       : std::string());
    row.push_back(number(static_cast<double>(at) + 1, 0));
    row.push_back(operation.mark);
    row.push_back(words_of(operation.kind, voice));
    row.push_back(operation.made_for.empty() ? std::string() : voice.name(operation.made_for));
    row.push_back(operation.from ? words_of(*operation.from, voice)
                                 : voice.say("no straight tool reaches it"));
    add_tool(row, operation);
    add_place(row, operation, voice);
    row.push_back(joined(operation.makes));
    row.push_back(caution(voice));
    return row;
}

} // namespace

Table operation_table(std::span<const OperationList> lists, const Voice &voice) {
    Table table{columns(), {}};
    for (const OperationList &list : lists)
        for (std::size_t i = 0; i < list.operations.size(); ++i)
            table.rows.push_back(row_of(list, i, voice));
    return table;
}

} // namespace roundlay::machining
