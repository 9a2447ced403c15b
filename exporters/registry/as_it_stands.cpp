#include "exporters/registry/as_it_stands.h"

#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h" // bodies_of

namespace roundlay {

ExportJob as_it_stands(const ExportJob &job) {
    ExportJob standing = job;
    if (job.shell.pegs.bored != PegBoring::in_place || job.layout.pieces.empty()) return standing;
    standing.shell.pegs.bored = PegBoring::at_the_bench;
    standing.layout = lay_out(standing.shell);
    standing.bodies = bodies_of(standing.layout);
    standing.composed = no_sheets(), standing.pictures = no_pictures(), standing.order = no_order();
    return standing;
}

} // namespace roundlay
