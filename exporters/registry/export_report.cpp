#include "exporters/registry/as_it_stands.h"
#include "exporters/registry/list_sheets.h"
#include "exporters/registry/paper.h"
#include "exporters/registry/record_tables.h"
#include "exporters/report/report.h"

namespace roundlay {

namespace {

std::optional<ExportFailure> add_tables(const ExportJob &job, OutputFolder &folder) {
    std::vector<SheetTable> sheets;
    for (const RecordTable &each : record_tables(job)) {
        if (auto failure = add_file(folder, std::string(each.name) + ".csv", to_csv(each.table),
                                    Voice().words(each.what)))
            return failure;
        sheets.push_back(sheet_of(each.table, each.name));
    }
    const std::string title = paper_title(job, said("report on the house as it was found"));
    return add_file(folder, "report.xlsx", xlsx_of(sheets, title, sheets::book_time()),
                    Voice().say("the tables of the report, a sheet each"));
}

/// Of the house as it was found, whichever of its states is exported.
ExportJob of_found_house(const ExportJob &job) {
    ExportJob found = job;
    if (!job.found || job.found->layout.pieces.empty()) return found;
    found.shell = job.found->shell, found.layout = job.found->layout, found.bodies = job.found->bodies;
    found.findings.clear(); // of the other state
    found.found = nullptr;
    start_anew(found);
    return found;
}

} // namespace

std::optional<ExportFailure> export_report(const ExportJob &shown, OutputFolder &folder, Progress &progress) {
    const ExportJob job = of_found_house(shown);
    sheets::ReportSource source{job.record, job.folder, fabric_of(shown),
                                new_wood(*job.record, shown.shell, shown.layout)};
    if (counts_by_state(shown)) {
        source.counted_in = shown.shell.state;
        source.openings = openings_changed(job.shell, job.layout, shown.shell, shown.layout);
    }
    const PaperFile file{"report.pdf", said("report on the house as it was found"), "report",
                         sheets::report_set(source)};
    if (auto failure = add_pdf(job, folder, file, progress)) return failure;
    return add_tables(shown, folder);
}

} // namespace roundlay
