// Lets a program run on a board and looks at what is left. Shares nothing with what wrote it.
#pragma once

#include "tests/router/support/program_reader.h"

#include <string>
#include <utility>
#include <vector>

namespace router_test {

struct KnownCorner {
    Point at;
    double left = 0;
};

/// What is to be left of the board: millimetres, counter-clockwise.
struct Wanted {
    std::string name;
    std::vector<Point> outline;
    std::vector<std::pair<Point, Point>> marks = {};  ///< grooves on it, by their middle
    std::vector<std::pair<Point, double>> holes = {}; ///< through it: middle and diameter
};

struct Setting {
    double length = 0, width = 0, thickness = 0; ///< of the board
    double tool = 0, through = 0, safe_height = 0;
    double tab_width = 0, tab_height = 0;
    int tabs = 0; ///< of each template at most; 2 at least
    double feed = 0, plunge = 0, depth_step = 0;
    double scribe = 0; ///< how deep marks are; 0: there are none
};

/// Every fault of the program; empty where it leaves exactly what is wanted, within 0.05 mm.
std::vector<std::string> faults_of(const std::string &program, const Setting &setting,
                                   const std::vector<Wanted> &wanted,
                                   const std::vector<KnownCorner> &corners);

} // namespace router_test
