// Layout: every piece of a shell as numbers, and what its parts are called. Worked out by lay_out.h.
#pragma once

#include "kernel/layout/foundation.h"
#include "kernel/layout/heights.h"
#include "kernel/layout/model.h"
#include "kernel/layout/peg.h"
#include "kernel/layout/piece.h"
#include "kernel/layout/timber.h"
#include "kernel/layout/walls.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay {

/// A whole shell: what its stages have worked out, one after the other.
struct Layout : Plan, Heights, Foundation {
    std::string name;
    Indexed<Piece> pieces; ///< by wall, round, number, new wood behind the log that it mends; then the
                           ///< timbers of floors
    Indexed<Peg> pegs;
    Indexed<Model> models;      ///< by their first piece
    Indexed<FloorPlace> floors; ///< in the order of Shell::floors
    Indexed<Timber> timbers;    ///< by floor: beams, joists from the left, trimmers
    Findings findings;          ///< where one is an error, pieces is empty
};

/// What pieces are grouped by: the walls, then the floors.
struct LayoutPart;
Indices<LayoutPart> parts_of(const Layout &layout);
Index<LayoutPart> part_of(const Layout &layout, const Piece &piece);
/// "wall A", "floor G".
std::string part_name(const Layout &layout, Index<LayoutPart> part);
/// "A", "G".
const std::string &part_letter(const Layout &layout, Index<LayoutPart> part);
const Frame &part_frame(const Layout &layout, Index<LayoutPart> part);

} // namespace roundlay
