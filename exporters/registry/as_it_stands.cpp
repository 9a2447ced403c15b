#include "exporters/registry/as_it_stands.h"

#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h" // bodies_of

namespace roundlay {

void start_anew(ExportJob &job) {
    job.composed = no_sheets(), job.pictures = no_pictures(), job.order = no_order();
}

ExportJob as_it_stands(const ExportJob &job) {
    ExportJob standing = job;
    if (job.shell.pegs.bored != PegBoring::in_place || job.layout.pieces.empty()) return standing;
    standing.shell.pegs.bored = PegBoring::at_the_bench;
    standing.layout = lay_out(standing.shell);
    standing.bodies = bodies_of(standing.layout);
    start_anew(standing);
    return standing;
}

} // namespace roundlay
