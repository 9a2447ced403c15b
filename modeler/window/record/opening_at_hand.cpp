#include "modeler/window/record/opening_at_hand.h"

#include "exporters/lists/list_cells.h"
#include "kernel/layout/openings/openings.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"

namespace roundlay::window {

std::optional<OpeningAtHand> opening_at_hand(const State &state, int opening) {
    const Shell &shell = state.job.shell;
    if (opening < 0 || opening >= static_cast<int>(shell.openings.size())) return {};
    const auto at = static_cast<std::size_t>(opening);
    const std::string name = name_of(shell, at), &wall = shell.openings[at].wall;
    int of_that_name = 0;
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        of_that_name += name_of(shell, i) == name ? 1 : 0;
    const Layout &layout = state.drawn();
    OpeningAtHand now{name, text(voice_of(shell, layout, language()).name(name)), {}, {}};
    if (of_that_name > 1) now.wall = wall;
    for (const CornerPlace &corner : layout.corners)
        if (layout.walls[corner.ends].name == wall || layout.walls[corner.starts].name == wall)
            now.corners << text(corner.name);
    return now;
}

} // namespace roundlay::window
