#include "exporters/registry/paper.h"
#include "exporters/registry/record_tables.h"
#include "exporters/report/report.h"
#include "kernel/survey/survey_sheet.h"

namespace roundlay {

namespace {

/// Columns of a list as those of a sheet: numbers where all that stands in them are numbers.
SheetTable sheet_of(const Table &list, const std::string &name) {
    SheetTable sheet;
    sheet.name = name;
    sheet.stays = 1;
    for (const auto &row : list.rows) {
        sheet.rows.emplace_back();
        for (const Entry &entry : row)
            sheet.rows.back().push_back(cell_text(entry));
    }
    for (std::size_t c = 0; c < list.columns.size(); ++c) {
        bool numbers = false;
        for (const auto &row : list.rows)
            numbers = numbers || std::holds_alternative<Number>(row[c]);
        sheet.columns.push_back(
            {list.columns[c].key, sheet_width(list.columns[c].key, sheet.rows, c), numbers});
    }
    return sheet;
}

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

} // namespace

std::optional<ExportFailure> export_report(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const sheets::ReportSource source{job.record, job.folder};
    const PaperFile file{"report.pdf", said("report on the house as it was found"), "report",
                         sheets::report_set(job.layout, source)};
    if (auto failure = add_pdf(job, folder, file, progress)) return failure;
    return add_tables(job, folder);
}

} // namespace roundlay
