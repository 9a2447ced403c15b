#include "exporters/mesh/palette.h"

#include <array>
#include <cmath>

namespace roundlay {

Colour wall_colour(int wall) {
    // Light and dark, yellow and red by turns, so that the two walls of a corner never look alike.
    static constexpr std::array<Colour, 8> tints{{
        {0xdc, 0xb4, 0x7e}, // honey
        {0xb0, 0x7e, 0x55}, // chestnut
        {0xe2, 0xcb, 0xa4}, // ash
        {0xa4, 0x8a, 0x63}, // walnut sapwood
        {0xc9, 0x93, 0x68}, // larch
        {0xcd, 0xb9, 0x96}, // weathered
        {0x94, 0x6c, 0x4c}, // smoked oak
        {0xc4, 0x9a, 0x8e}, // steamed pear
    }};
    const int count = static_cast<int>(tints.size());
    return tints[static_cast<std::size_t>(((wall % count) + count) % count)];
}

double linear(std::uint8_t channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

} // namespace roundlay
