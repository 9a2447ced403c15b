#include "exporters/mesh/glb.h"
#include "exporters/registry/exporters.h"

namespace roundlay {

std::optional<ExportFailure> export_mesh(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    progress.at("mesh", 0, 1);
    return add_file(folder, "shell.glb", write_glb(job.layout, job.bodies),
                    "the whole shell as binary glTF 2.0, metres");
}

} // namespace roundlay
