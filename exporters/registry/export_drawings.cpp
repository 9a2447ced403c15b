#include "exporters/registry/paper.h"

namespace roundlay {

std::optional<ExportFailure> export_drawings(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const PaperFile files[] = {{"drawings.pdf", said("foundation, walls, sections, rounds and story poles"),
                                "drawings", sheets::drawing_set(job.layout)},
                               {"story-poles.pdf",
                                said("story poles at full size"),
                                "drawings",
                                {sheets::full_size_pole_subject()}}};
    for (const PaperFile &file : files)
        if (auto failure = add_pdf(job, folder, file, progress)) return failure;
    return {};
}

} // namespace roundlay
