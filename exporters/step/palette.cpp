#include "exporters/step/palette.h"

#include <array>

namespace roundlay::step {

Colour colour_of_wall(int wall) {
    struct Bytes {
        int red, green, blue;
    };
    static constexpr std::array<Bytes, 8> tints{{{216, 184, 120}, // straw
                                                 {169, 104, 60},  // russet
                                                 {184, 174, 156}, // weathered
                                                 {122, 86, 56},   // walnut
                                                 {201, 143, 63},  // honey
                                                 {142, 139, 106}, // lichen
                                                 {197, 154, 132}, // alder
                                                 {107, 95, 88}}}; // bog oak
    const Bytes &tint = tints[static_cast<std::size_t>(wall) % tints.size()];
    return {tint.red / 255.0, tint.green / 255.0, tint.blue / 255.0};
}

} // namespace roundlay::step
