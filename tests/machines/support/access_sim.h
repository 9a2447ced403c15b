// What a tool takes, tried out place by place on a coarse grid. Asks nothing of what is tested: it knows the
// stock, what is to be taken, and the tool.
//
// Seen along the tool, the wood that stays is a landscape: its height over each place of a grid. So low the
// tool can stand that no part of it is under that landscape, and what it takes of it everywhere is what it
// has been over.
#pragma once

#include "exporters/machines/machine.h"
#include "exporters/machining/operation.h"

namespace access_sim {

struct Left {
    double cell = 0;       ///< mm of the coarsest grid: nothing finer is to be believed
    std::size_t cells = 0; ///< to be taken
    std::size_t deep = 0;  ///< cells to be taken that lie well within
    std::size_t stays = 0; ///< of these, those that no place of the tool takes
    double volume = 0;     ///< mm3 of all cells to be taken that stay, those at the faces too
    double whole = 0;      ///< mm3 of all cells to be taken
};

struct Trial {
    roundlay::LogFace from = roundlay::LogFace::top; ///< the tool comes in from that side
    double most_tilt = 0;                            ///< and is tilted by no more than that (degrees)
    double least_cell = 3;                           ///< mm
    double spared =
        0.9; ///< of a cell: so much thinner it is against wood that stays, for its places are those of a grid
    bool right_through = false; ///< it lies in the cut from side to side: its end is always beyond the wood
};

Left left_by(const roundlay::machining::Operation &operation, const roundlay::Stock &stock,
             const roundlay::machines::Tool &tool, const Trial &trial);

/// A blade in the plane that the operation cuts by, from that side and no deeper: how many places of that
/// plane in the stock it does not reach, of how many.
struct Sawn {
    std::size_t places = 0, missed = 0;
};
Sawn sawn(const roundlay::machining::Operation &operation, const roundlay::Stock &stock,
          const roundlay::machines::Saw &saw, roundlay::LogFace from);

} // namespace access_sim
