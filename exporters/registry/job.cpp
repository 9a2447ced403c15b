#include "exporters/registry/job.h"

#include "kernel/layout/interference.h"

namespace roundlay {

ExportJob make_job(Shell shell) {
    ExportJob job;
    job.shell = std::move(shell);
    job.layout = lay_out(job.shell);
    if (!has_errors(job.layout.findings)) job.bodies = bodies_of(job.layout);
    return job;
}

} // namespace roundlay
