// Reads a router's program as a control does, from its text alone. Shares nothing with what wrote it.
#pragma once

#include <string>
#include <vector>

namespace router_test {

struct Point {
    double x = 0, y = 0;
};

/// A straight bit of what the middle of the tool's end does; arcs are many of them.
struct Bit {
    Point a, b;
    double za = 0, zb = 0;
    bool rapid = false, turning = false; ///< turning: the spindle runs
    double feed = 0;                     ///< 0: none was said
    int line = 0;                        ///< of the text, from 1
};

struct Program {
    std::vector<Bit> bits;
    std::vector<std::string> faults; ///< what a control would stop at
};

Program read_program(const std::string &text);

} // namespace router_test
