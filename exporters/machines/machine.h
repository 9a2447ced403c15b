// A machine as whoever owns it describes it, in a small TOML file.
//
// Lengths are millimetres, angles degrees, weights kilograms.
#pragma once

#include "exporters/machining/operation.h"
#include "kernel/document/problem.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay::machines {

/// Of the log as it lies in the machine: above is up, front and back are its two other long sides.
enum class Way { above, below, front, back, ends };

enum class ToolShape {
    flat,  ///< a straight cutter with a flat end
    ball,  ///< the same with a round end
    drill, ///< bores of its own diameter
    chain  ///< a chain mortiser: a bar with a round nose
};

struct Tool {
    std::string name;
    ToolShape shape = ToolShape::flat;
    double diameter = 0;  ///< of a chain: how wide its bar is, from edge to edge with the chain
    double thickness = 0; ///< of a chain alone
    double length = 0;    ///< of its cutting edges, at most its reach
    double reach = 0;     ///< from its holder to its end: so deep it goes into wood
    int line = 0;         ///< of the file
};

struct Saw {
    double depth = 0; ///< the most that its blade cuts deep
    double tilt = 0;  ///< of its blade, 0 to 60
};

struct Machine {
    std::string name;
    double length = 0, width = 0, height = 0; ///< of the log that it takes
    double weight = 0;                        ///< the most that it bears
    std::set<Way> works_from;
    double tilt = 0; ///< of its tools, off the way that they come from, 0 to 60
    std::optional<Saw> saw;
    std::vector<Tool> tools;
    std::set<machining::OperationKind> may_not;
    int length_line = 0; ///< of the file, where the bed's length stands
};

struct ReadMachine {
    std::optional<Machine> machine; ///< none where there are errors
    Problems problems;              ///< each with file, line and column
};

/// `file`: as it is named to people.
ReadMachine read_machine(std::string_view text, const std::string &file);

} // namespace roundlay::machines
