#include "exporters/registry/paper.h"
#include "exporters/sheets/form/form.h"

namespace roundlay {

std::optional<ExportFailure> export_forms(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    const PaperFile file{"forms.pdf",
                         said("field forms of every wall, corner and floor, to be filled in by hand"),
                         "field forms", sheets::form_set(job.layout, job.record)};
    return add_pdf(job, folder, file, progress);
}

} // namespace roundlay
