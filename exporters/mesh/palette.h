// The colours of the walls, shared by every picture and model that leaves the program.
#pragma once

#include <cstdint>

namespace roundlay {

/// sRGB.
struct Colour {
    std::uint8_t r = 0, g = 0, b = 0;
    bool operator==(const Colour &) const = default;
};

/// Wood-like tints that keep apart from their neighbours in the walk round the shell. After eight
/// walls they come again a shade greyer, and so on: none comes twice in a house.
Colour wall_colour(int wall);

/// One channel as linear light, 0..1 (IEC 61966-2-1).
double linear(std::uint8_t channel);

} // namespace roundlay
