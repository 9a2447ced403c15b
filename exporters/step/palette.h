// The colours of walls: quiet tints of wood, told apart side by side.
#pragma once

namespace roundlay::step {

/// sRGB, 0 to 1.
struct Colour {
    double red = 0, green = 0, blue = 0;
    bool operator==(const Colour &) const = default;
};

/// The colour of the wall with this index; after the last one the palette starts again.
Colour colour_of_wall(int wall);

} // namespace roundlay::step
