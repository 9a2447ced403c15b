#include "tests/step/hand_made_shell.h"

#include "tests/solid/hand_made.h"

namespace roundlay::hand_made {

namespace {

constexpr double side = 5000, width = 200, height = 220;

Frame wall_frame(int wall) {
    switch (wall) {
    case 0:
        return {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    case 1:
        return {{side, 0, 0}, {0, 1, 0}, {-1, 0, 0}, {0, 0, 1}};
    case 2:
        return {{side, side, 0}, {-1, 0, 0}, {0, -1, 0}, {0, 0, 1}};
    default:
        return {{0, side, 0}, {0, -1, 0}, {1, 0, 0}, {0, 0, 1}};
    }
}

Piece piece_of(int wall, int round) {
    Piece piece;
    piece.tag = std::string(1, static_cast<char>('A' + wall)) + "-" + (round < 10 ? "0" : "") +
                std::to_string(round) + "-1";
    piece.wall = Index<WallPlace>(wall);
    piece.round = round;
    piece.frame = wall_frame(wall);
    piece.frame.origin.z = (round - 1) * height + (wall % 2) * height / 2;
    piece.blank = {side, width, height};
    return piece;
}

} // namespace

HandMadeShell four_walls(int rounds, bool alike) {
    HandMadeShell made;
    made.shell.name = made.layout.name = "Birch Hollow";
    made.layout.rounds = rounds;
    for (int wall = 0; wall < 4; ++wall) {
        WallPlace place;
        place.name = std::string(1, static_cast<char>('A' + wall));
        place.frame = wall_frame(wall);
        place.length = side;
        place.thickness = width;
        made.shell.walls.push_back({place.name, 90.0 * wall, Length::mm(side), {}, {}, {}});
        made.layout.walls.push_back(place);
    }
    for (int wall = 0; wall < 4; ++wall)
        for (int round = 1; round <= rounds; ++round) {
            Piece piece = piece_of(wall, round);
            const int number = count_of(made.layout.pieces);
            const Index<Model> model(alike ? wall % 2 : number);
            if (!made.layout.models.holds(model)) {
                made.layout.models.push_back({});
                made.bodies.push_back(usual_log(side - (alike ? wall % 2 : number) * 1.7));
            }
            piece.model = model;
            made.layout.models[model].pieces.push_back(made.layout.pieces.push_back(std::move(piece)));
        }
    return made;
}

} // namespace roundlay::hand_made
