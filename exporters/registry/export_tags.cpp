#include "exporters/registry/export_option.h"
#include "exporters/registry/paper.h"
#include "exporters/sheets/raising/raising.h"
#include "exporters/sheets/tag/tags.h"

namespace roundlay {

std::optional<ExportFailure> export_tags(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const auto problems = option_problems("tags", job.options);
    if (!problems.empty()) return ExportFailure{Trouble::refused, voice_of(job).words(problems.front().what)};
    const sheets::SheetOptions options = sheet_options(job);
    if (const auto fault = sheets::tag_fault({job.shell, job.layout, job.bodies, options}, only_pieces(job)))
        return ExportFailure{Trouble::refused, voice_of(job).words(*fault)};
    if (!job.options.pieces.is_all()) // lists of loading and raising are of the whole shell
        return add_pdf(job, folder,
                       {"tags.pdf",
                        said("a tag with a QR code for every log that was chosen"),
                        "tags",
                        {sheets::tag_subject(only_pieces(job))}},
                       progress);
    sheets::SheetSet orders{sheets::raising_subject()};
    if (may_come_down(job)) orders.push_back(sheets::taking_down_subject());
    const PaperFile files[] = {
        {"tags.pdf", said("a tag with a QR code for every log"), "tags", {sheets::tag_subject()}},
        {"packing-list.pdf",
         said("logs in the reverse order of the raise, with weights"),
         "tags",
         {sheets::packing_subject()}},
        {"raising.pdf",
         may_come_down(job) ? said("raising and taking down, piece by piece, to be ticked off")
                            : said("raising, piece by piece, to be ticked off"),
         "tags", orders}};
    for (const PaperFile &file : files)
        if (auto failure = add_pdf(job, folder, file, progress)) return failure;
    return {};
}

} // namespace roundlay
