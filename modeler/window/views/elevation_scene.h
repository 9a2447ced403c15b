// One wall seen from outside, as flat shapes: what the elevation paints and what a pointer can take hold of.
#pragma once

#include "exporters/sheets/drawing/rect.h"
#include "modeler/window/desk/state.h"

#include <string>
#include <vector>

namespace roundlay::window {

/// Millimetres; x to the right from the wall's left outside corner, y up from the foundation.
struct ElevationScene {
    struct Shape {
        Index<Piece> piece;
        bool own = true; ///< a log of this wall; else the end of a crossing one
        bool side =
            false; ///< the side of a crossing one that runs through the wall at a slant, behind its logs
        bool island = false;
        std::vector<std::vector<Vec2>> rings;
    };
    struct Hole {
        int opening = 0; ///< index into Shell::openings
        bool door = false;
        std::string name;
        sheets::Rect box;
        std::optional<Index<Piece>> header; ///< the log over it
        double settle = 0;                  ///< space over its frame
    };
    struct TimberEnd {
        Index<Piece> piece;
        sheets::Rect box;
    };
    struct PegLine {
        Vec2 top, foot;
        double diameter = 0;
    };
    struct BoreLine {
        std::string mark;         ///< "rod 1", as on paper
        std::vector<Vec2> points; ///< from its foot up
    };
    struct StatedStep {
        int step = 0; ///< index into Shell::steps
        sheets::Rect box;
    };
    struct StatedFloor {
        int floor = 0; ///< index into Shell::floors
        std::string name;
        double level = 0; ///< tops of the joists
    };
    std::optional<Index<WallPlace>> wall;
    double length = 0, height = 0;
    std::vector<Shape> shapes; ///< sides of crossing logs, its own logs, then the ends that stand before them
    std::vector<Hole> holes;
    std::vector<PegLine> pegs;
    std::vector<BoreLine> bores;     ///< that a person placed
    std::vector<TimberEnd> timbers;  ///< ends of joists and beams that lie in the wall, behind its face
    std::vector<StatedStep> steps;   ///< of the foundation, while no logs can be cut for the wall
    std::vector<StatedFloor> floors; ///< that lie in the wall, while no logs can be cut for it
    std::vector<double> round_lines; ///< heights
    std::vector<double> faces;       ///< heights of log faces of this wall
};

/// Empty, without a wall, where there is no such wall.
ElevationScene elevation_of(const State &state, const std::string &wall);

} // namespace roundlay::window
