#include "exporters/registry/paper.h"

namespace roundlay {

std::optional<ExportFailure> export_sheets(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    std::vector<sheets::Sheet> pages = all_cut_sheets(job, progress);
    if (progress.cancelled()) return stopped();
    return add_pdf(job, folder, "cut-sheets.pdf", "one cut sheet for each distinct piece", std::move(pages));
}

} // namespace roundlay
