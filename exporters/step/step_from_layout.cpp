#include "exporters/step/step.h"
#include "kernel/layout/wood/interference.h"

namespace roundlay {

std::string write_shell_step(const Shell &shell, const Layout &layout, const StepOptions &options) {
    return write_shell_step(shell, layout, bodies_of(layout), options);
}

std::vector<PieceStep> write_piece_steps(const Shell &shell, const Layout &layout,
                                         const StepOptions &options) {
    return write_piece_steps(shell, layout, bodies_of(layout), options);
}

} // namespace roundlay
