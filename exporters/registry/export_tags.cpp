#include "exporters/registry/paper.h"
#include "exporters/sheets/tag/tags.h"

namespace roundlay {

std::optional<ExportFailure> export_tags(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const sheets::SheetOptions options = sheet_options(job);
    progress.at("tags", 0, 2);
    if (auto failure = add_pdf(job, folder, "tags.pdf", "a tag with a QR code for every log",
                               sheets::tag_sheets(job.shell, job.layout, options)))
        return failure;
    progress.at("tags", 1, 2);
    return add_pdf(job, folder, "packing-list.pdf", "logs in the reverse order of the raise, with weights",
                   sheets::packing_list(job.shell, job.layout, job.bodies, options));
}

} // namespace roundlay
