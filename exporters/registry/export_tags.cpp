#include "exporters/registry/paper.h"
#include "exporters/sheets/raising/raising.h"
#include "exporters/sheets/tag/tags.h"

namespace roundlay {

std::optional<ExportFailure> export_tags(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const PaperFile files[] = {
        {"tags.pdf", said("a tag with a QR code for every log"), "tags", {sheets::tag_subject()}},
        {"packing-list.pdf",
         said("logs in the reverse order of the raise, with weights"),
         "tags",
         {sheets::packing_subject()}},
        {"raising.pdf",
         said("taking down and raising, piece by piece, to be ticked off"),
         "tags",
         {sheets::taking_down_subject(), sheets::raising_subject()}}};
    for (const PaperFile &file : files)
        if (auto failure = add_pdf(job, folder, file, progress)) return failure;
    return {};
}

} // namespace roundlay
