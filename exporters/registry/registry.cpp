#include "exporters/registry/registry.h"

#include "exporters/registry/exporters.h"

#include <array>

namespace roundlay {

namespace {

/// Who builds a new house measures none: forms would be forty sheets of empty boxes beside the drawings, and
/// a report has nothing to tell.
bool has_record(const ExportJob &job) {
    return *job.record != Record{};
}

constexpr std::array<Exporter, 11> table = {{
    {"picture", "picture.png, the shell as it will stand", export_picture},
    {"list", "cut list, list by tag, pegs, lengths to order and totals as CSV", export_list},
    {"sheets", "cut-sheets.pdf, one cut sheet for each distinct piece", export_sheets},
    {"drawings", "drawings.pdf, foundation, walls, sections and rounds, and story-poles.pdf at full size",
     export_drawings},
    {"templates", "templates.pdf, every tail and notch at full size, and the same as DXF for a machine",
     export_templates},
    {"tags",
     "tags.pdf, a tag with a QR code for every log, packing-list.pdf, and raising.pdf to be ticked off",
     export_tags},
    {"forms", "forms.pdf, to be filled in at a house that stands: every wall and corner, log by log",
     export_forms, has_record},
    {"report",
     "report.pdf on the house as it was found, for its owner and whoever looks after its heritage, with its "
     "tables as CSV and report.xlsx",
     export_report, has_record},
    {"book", "book.pdf, cover, index, legend and all sheets in one", export_book},
    {"step", "shell.step, the whole shell as solids, and pieces/TAG.step for each distinct piece",
     export_step},
    {"mesh", "shell.glb, the shell for phones, browsers and slides", export_mesh},
}};

} // namespace

std::span<const Exporter> all_exporters() {
    return table;
}

const Exporter *exporter_named(std::string_view name) {
    for (const Exporter &exporter : table)
        if (exporter.name == name) return &exporter;
    return nullptr;
}

ExportFailure stopped() {
    return {Trouble::cancelled, "stopped; nothing was written"};
}

std::optional<ExportFailure> add_file(OutputFolder &folder, std::string_view name, std::string_view bytes,
                                      std::string_view what) {
    if (auto error = folder.add(name, bytes, what)) return ExportFailure{Trouble::file, error->message};
    return {};
}

} // namespace roundlay
