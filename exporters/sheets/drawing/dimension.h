// Running dimensions (ISO 129-1, from memory): all from one origin, each with its own number.
#pragma once

#include "exporters/sheets/drawing/board.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// One place that is dimensioned.
struct Mark {
    double at = 0; ///< on paper, along the dimension line
    std::string number;
    bool origin = false; ///< where the measure starts: a circle instead of an arrow
};

enum class Toward { up, down, left, right };

/// Where a row of running dimensions stands and to which side its numbers are.
struct RunningLine {
    Toward side = Toward::up;
    double edge = 0;     ///< where the drawn thing ends: extension lines start a little beyond
    double distance = 6; ///< from the edge to the dimension line
    double lettering = 2.5;
    std::optional<double> start; ///< the dimension line comes from here where its origin is on another sheet
    bool backward = false;       ///< the measure runs against the axis: the origin is the last mark
};

/// Marks ascending. Numbers stand at the ends of their extension lines, spread where they would touch.
void add_running_dimensions(Board &board, const std::vector<Mark> &marks, const RunningLine &line);

/// From the edge to the far end of the longest number.
double depth_of(const std::vector<std::string> &numbers, const RunningLine &line);

/// Filled, its tip at `tip`, pointing along `direction` (unit).
Fill arrowhead(Vec2 tip, Vec2 direction);

/// A small filled disc, as eight corners.
Fill dot(Vec2 at, double radius);

/// Room that one number takes along the dimension line.
double pitch_of(double lettering);

} // namespace roundlay::sheets
