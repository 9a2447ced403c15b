#include "exporters/mesh/palette.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay {

namespace {

constexpr int most_rounds = 5; ///< of the tints; further ones are told apart by nobody

/// A third of the way.
std::uint8_t nearer(std::uint8_t from, std::uint8_t to) {
    return static_cast<std::uint8_t>((2 * from + to) / 3);
}

} // namespace

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
    Colour tint = tints[static_cast<std::size_t>(((wall % count) + count) % count)];
    constexpr Colour grey{0x70, 0x90, 0xa8}; // lichen
    for (int round = std::min(wall / count, most_rounds); round > 0; --round)
        tint = {nearer(tint.r, grey.r), nearer(tint.g, grey.g), nearer(tint.b, grey.b)};
    return tint;
}

double linear(std::uint8_t channel) {
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

} // namespace roundlay
