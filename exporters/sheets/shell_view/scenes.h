// Whole walls and rounds as they are seen, from the bodies of their pieces.
#pragma once

#include "exporters/sheets/cut_sheet/hidden_lines.h"
#include "kernel/layout/wood/body.h"

#include <vector>

namespace roundlay::sheets {

/// How one frame lies within another.
Frame within(const Frame &inner, const Frame &outer);

Polyhedron moved(const Polyhedron &solid, const Frame &frame);

enum class WallSide { outside, inside };

/// In a wall's own frame: seen against y from outside, along y from inside.
Projection projection_of(WallSide side);

/// A flat area turned straight to the viewer that is worth a grey: end grain, or where a log is cut through.
struct GreyFace {
    std::vector<std::vector<Vec2>> rings;
    bool sawn_through = false; ///< the log goes on toward the viewer and is cut there
};

/// What is seen, millimetres of wood on the projection plane.
struct SeenShell {
    std::vector<Stretch> edges; ///< visible ones only
    std::vector<GreyFace> greys;
};

/// One wall with the ends of the walls that cross it. Crossing logs are cut a little off the wall's faces.
/// `bodies` are those of Layout::models.
SeenShell seen_wall(const Layout &layout, const Bodies &bodies, Index<WallPlace> wall, WallSide side);

/// Two crossing strokes from corner to corner: the mark of wood that is cut through, so that it is told by
/// more than its grey.
std::vector<Stretch> cut_through_mark(const GreyFace &face);

/// In a wall's own frame, cut across: the outside face to the left, seen toward the wall's left end.
Projection section_projection();

/// The faces of the solid that lie in the cutting plane at that depth toward the viewer.
void add_greys_at(std::vector<GreyFace> &greys, const Polyhedron &solid, const Projection &projection,
                  double depth);

/// What is seen of these solids alone.
std::vector<Stretch> visible_edges_of(std::vector<Polyhedron> solids, const Projection &projection);

/// The logs of one round from above, in world coordinates.
SeenShell seen_round(const Layout &layout, const Bodies &bodies, int round);

} // namespace roundlay::sheets
