#include "exporters/building/building.h"
#include "exporters/lists/found_words.h"
#include "exporters/registry/as_it_stands.h"
#include "exporters/registry/exporters.h"

namespace roundlay {

std::optional<ExportFailure> export_ifc(const ExportJob &asked, OutputFolder &folder, Progress &progress) {
    const ExportJob job = as_it_stands(asked);
    progress.at("IFC", 0, 1);
    CutList list = collect_cut_list(job.shell, job.layout, volumes_of(job.bodies), job.options.language);
    tell_found(list, *job.record, job.layout);
    return add_file(folder, "shell.ifc", write_ifc({job.shell, job.layout, job.bodies, list, *job.record}),
                    voice_of(job).say("the shell as a building, IFC 4, millimetres"));
}

} // namespace roundlay
