#include "exporters/registry/paper.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"

namespace roundlay {

std::optional<ExportFailure> export_sheets(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    sheets::SheetSet set{sheets::common_notes_subject()};
    for (sheets::Subject &subject : sheets::cut_sheet_set(job.layout, chosen_of(job).models))
        set.push_back(std::move(subject));
    return add_pdf(
        job, folder,
        {"cut-sheets.pdf", said("one cut sheet for each distinct piece"), "cut sheets", std::move(set)},
        progress);
}

} // namespace roundlay
