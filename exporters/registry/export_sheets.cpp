#include "exporters/registry/paper.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"

namespace roundlay {

std::optional<ExportFailure> export_sheets(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    return add_pdf(job, folder,
                   {"cut-sheets.pdf", said("one cut sheet for each distinct piece"), "cut sheets",
                    sheets::cut_sheets_with_notes(job.layout)},
                   progress);
}

} // namespace roundlay
