// The table of exporters, and each of them, which is in a file of its own.
#pragma once

#include "exporters/registry/registry.h"

#include <vector>

namespace roundlay {

std::optional<ExportFailure> export_picture(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_list(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_sheets(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_bench(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_drawings(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_schedules(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_templates(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_tags(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_forms(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_report(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_book(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_step(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_operations(const ExportJob &job, OutputFolder &folder,
                                               Progress &progress);
std::optional<ExportFailure> export_operation_sheets(const ExportJob &job, OutputFolder &folder,
                                                     Progress &progress);
std::optional<ExportFailure> export_mesh(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_print(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_router(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_stl(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_ifc(const ExportJob &job, OutputFolder &folder, Progress &progress);
std::optional<ExportFailure> export_page(const ExportJob &job, OutputFolder &folder, Progress &progress);

/// Who builds a new house measures none: forms would be forty sheets of empty boxes beside the drawings, and
/// a report has nothing to tell.
inline bool has_record(const ExportJob &job) {
    Record found = *job.record;
    found.done.clear(); // what is ticked off is no record of a house that was found
    return found != Record{};
}

/// What takes a printer, a router, an architect or a program of triangles is made where somebody asks for it.
inline bool only_by_name(const ExportJob &) {
    return false;
}

inline bool always(const ExportJob &) {
    return true;
}

inline constexpr bool of_pieces = true;

/// Lists, paper and pictures.
inline std::vector<Exporter> exporters_for_people() {
    return {
        Exporter{"picture", said("picture"), said("picture.png, the shell as it will stand"), export_picture},
        Exporter{"list", said("list"),
                 said("cut list, list by tag, pegs, lengths to order and totals as CSV, and all of them as "
                      "lists.xlsx"),
                 export_list, always, of_pieces},
        Exporter{"sheets", said("sheets"), said("cut-sheets.pdf, one cut sheet for each distinct piece"),
                 export_sheets, always, of_pieces},
        Exporter{"bench", said("bench"),
                 said("bench-set.pdf, the same in few sheets: each tail once, large, and pieces that differ "
                      "only in "
                      "numbers as rows of one drawing"),
                 export_bench, always, of_pieces},
        Exporter{
            "drawings", said("drawings"),
            said("drawings.pdf, foundation, walls, sections and rounds, and story-poles.pdf at full size"),
            export_drawings},
        Exporter{
            "schedules", said("schedules"),
            said("schedules.pdf, openings, pegs and rods, sticks to order, floors with their screen, and "
                 "the raise to be ticked off"),
            export_schedules},
        Exporter{"templates", said("templates"),
                 said("templates.pdf, every tail and notch at full size, and the same as DXF for a machine"),
                 export_templates, always, of_pieces},
        Exporter{"tags", said("tags"),
                 said("tags.pdf, a tag with a QR code for every log, packing-list.pdf, and raising.pdf to be "
                      "ticked off"),
                 export_tags, always, of_pieces},
        Exporter{"forms", said("forms"),
                 said("forms.pdf, to be filled in at a house that stands: every wall and corner, log by log"),
                 export_forms, has_record},
        Exporter{"report", said("report"),
                 said("report.pdf on the house as it was found, for its owner and whoever looks after its "
                      "heritage, with its tables as CSV and report.xlsx"),
                 export_report, has_record},
        Exporter{"book", said("book"), said("book.pdf, cover, index, legend and all sheets in one"),
                 export_book},
    };
}

/// Files for other programs and for machines.
inline std::vector<Exporter> exporters_for_programs() {
    return {
        Exporter{"step", said("STEP"),
                 said("shell.step, the whole shell as solids, and pieces/TAG.step for each distinct piece"),
                 export_step, always, of_pieces},
        Exporter{"operations", said("operations"),
                 said("operations.csv and operations/TAG.json for each distinct piece: what is cut, from "
                      "which side, with "
                      "which reach, for no machine in particular"),
                 export_operations, always, of_pieces},
        Exporter{"operation-sheets", said("sheets of operations"),
                 said("operation-sheets.pdf, for each distinct piece its stock, set-ups and operations as "
                      "tables on "
                      "paper"),
                 export_operation_sheets},
        Exporter{"mesh", said("mesh"), said("shell.glb, the shell for phones, browsers and slides"),
                 export_mesh},
        Exporter{
            "page", said("page"),
            said("yard.html, the shell for a phone in the yard: turn it, find a log, its sheet, step through "
                 "the raise; needs no network"),
            export_page},
        Exporter{"print", said("print"),
                 said("print/plate-1.stl and .3mf, a model of the shell for a printer: every piece on a "
                      "plate, at the "
                      "scale that is stated; only where it is asked for"),
                 export_print, only_by_name},
        Exporter{
            "stl", said("STL"),
            said("stl/TAG.stl, each distinct piece at full size as triangles; only where it is asked for"),
            export_stl, only_by_name, of_pieces},
        Exporter{"router", said("router"),
                 said("router/board-1.nc, programs that cut the templates out of boards, by what is stated "
                      "of board, tool and speeds; only where it is asked for"),
                 export_router, only_by_name, of_pieces},
        Exporter{"ifc", said("IFC"),
                 said("shell.ifc, the shell for an architect's program: storeys, walls, every piece with its "
                      "body, openings, pegs and quantities; only where it is asked for"),
                 export_ifc, only_by_name},
    };
}

/// In the order in which they run: quick and often looked at first.
inline std::span<const Exporter> exporters_in_order() {
    static const std::vector<Exporter> table = [] {
        std::vector<Exporter> all = exporters_for_people();
        for (const Exporter &exporter : exporters_for_programs())
            all.push_back(exporter);
        return all;
    }();
    return table;
}

/// What is said when a person stops an export.
ExportFailure stopped();

/// Adds one file; a failure to write is one of kind `file`.
std::optional<ExportFailure> add_file(OutputFolder &folder, std::string_view name, std::string_view bytes,
                                      std::string_view what);

} // namespace roundlay
