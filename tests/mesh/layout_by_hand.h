// A small shell written down by hand: two walls, two kinds of log, so that these tests need no layout.
#pragma once

#include "tests/mesh/hewn_by_hand.h"

#include <string>

namespace roundlay::by_hand {

struct SmallShell {
    Layout layout;
    Bodies bodies; ///< by model
};

inline void add_piece(SmallShell &shell, Index<WallPlace> wall, int round, Index<Model> model, Frame frame) {
    Piece piece;
    piece.wall = wall;
    piece.round = round;
    piece.model = model;
    piece.tag = shell.layout.walls[wall].name + "-0" + std::to_string(round) + "-1";
    piece.frame = frame;
    piece.raise = count_of(shell.layout.pieces) + 1;
    shell.layout.models[model].pieces.push_back(shell.layout.pieces.push_back(piece));
}

/// Walls A (along x) and B (along y), three rounds each, a gap of 20 mm between logs. Odd rounds are logs
/// with tails, even ones plain; wall B uses both, so that each model stands in two walls.
inline SmallShell small_shell() {
    SmallShell shell;
    shell.layout.name = "Small shell";
    shell.layout.walls.resize(2);
    shell.layout.walls.front().name = "A";
    shell.layout.walls[Index<WallPlace>(1)].name = "B";
    shell.layout.models.resize(2);
    shell.bodies = {log_with_two_tails(), body({rectangle(0, 0, 4000, 220)}, 200)};
    const Frame along_x{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    const Frame along_y{{4400, 0, 0}, {0, 1, 0}, {-1, 0, 0}, {0, 0, 1}};
    for (int wall = 0; wall < 2; ++wall) {
        for (int round = 1; round <= 3; ++round) {
            Frame frame = wall == 0 ? along_x : along_y;
            frame.origin.z = 240.0 * (round - 1) + 120.0 * wall;
            add_piece(shell, Index<WallPlace>(wall), round, Index<Model>(round % 2 == 1 ? 0 : 1), frame);
        }
    }
    return shell;
}

} // namespace roundlay::by_hand
