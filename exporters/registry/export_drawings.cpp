#include "exporters/registry/paper.h"
#include "exporters/sheets/pole/story_pole.h"

namespace roundlay {

std::optional<ExportFailure> export_drawings(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const sheets::SheetOptions options = sheet_options(job);
    progress.at("drawings", 0, 2);
    auto failure = add_pdf(job, folder, "drawings.pdf", "foundation, walls, sections, rounds and story poles",
                           sheets::shell_drawings(job.shell, job.layout, job.bodies, options));
    if (failure) return failure;
    if (progress.cancelled()) return stopped();
    progress.at("drawings", 1, 2);
    return add_pdf(job, folder, "story-poles.pdf", "story poles at full size",
                   sheets::full_size_poles(job.shell, job.layout, options));
}

} // namespace roundlay
