// What a tool takes, tried out place by place on a coarse grid. Asks nothing of what is tested: it knows the
// stock, what is to be taken, and the tool.
#pragma once

#include "exporters/machines/machine.h"
#include "exporters/machining/operation.h"

namespace access_sim {

struct Left {
    double cell = 0;       ///< mm of the grid
    std::size_t deep = 0;  ///< cells to be taken that lie well within
    std::size_t stays = 0; ///< of these, those that no place of the tool takes
    double volume = 0;     ///< mm3 of all cells to be taken that stay, those at the faces too
    double whole = 0;      ///< mm3 of all cells to be taken
};

/// The tool comes in from that side, tilted by no more than that (degrees). `spared`: how many cells deep it
/// may go into wood that stays, for its places are those of the grid.
Left left_by(const roundlay::machining::Operation &operation, const roundlay::Stock &stock,
             roundlay::LogFace from, const roundlay::machines::Tool &tool, double most_tilt,
             double least_cell, double spared = 0.9);

/// The same of a tool that lies in the cut from side to side: its end is always beyond the stock.
Left left_by_flank(const roundlay::machining::Operation &operation, const roundlay::Stock &stock,
                   roundlay::LogFace from, const roundlay::machines::Tool &tool, double most_tilt,
                   double least_cell, double spared);

} // namespace access_sim
