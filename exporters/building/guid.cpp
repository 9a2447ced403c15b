#include "exporters/building/guid.h"

#include <nettle/sha1.h>

#include <array>
#include <cstdint>

namespace roundlay::building {

namespace {

using Uuid = std::array<std::uint8_t, 16>;

/// Our own name space: a UUID that was drawn once.
constexpr Uuid name_space{0x5d, 0x0e, 0x3b, 0x61, 0x8c, 0x27, 0x4f, 0x94,
                          0xa1, 0x7d, 0x2e, 0x66, 0x90, 0xc4, 0x13, 0xf8};

Uuid named(const Uuid &within, std::string_view name) {
    sha1_ctx context;
    sha1_init(&context);
    sha1_update(&context, within.size(), within.data());
    sha1_update(&context, name.size(), reinterpret_cast<const std::uint8_t *>(name.data()));
    Uuid made;
    sha1_digest(&context, made.size(), made.data());
    constexpr int version_at = 6, variant_at = 8;
    made[version_at] = static_cast<std::uint8_t>((made[version_at] & 0x0f) | 0x50); // version 5
    made[variant_at] = static_cast<std::uint8_t>((made[variant_at] & 0x3f) | 0x80);
    return made;
}

/// 128 bits, the first two of them alone, then six to a character.
std::string compressed(const Uuid &uuid) {
    constexpr std::string_view signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";
    constexpr int bits = 128, each = 6, over = 4; // 132 bits: four of nothing before them
    std::string text;
    for (int from = -over; from < bits; from += each) {
        unsigned value = 0;
        for (int bit = from; bit < from + each; ++bit) {
            const bool set = bit >= 0 && (uuid[static_cast<std::size_t>(bit / 8)] >> (7 - bit % 8) & 1) != 0;
            value = value << 1 | (set ? 1 : 0);
        }
        text += signs[value];
    }
    return text;
}

} // namespace

std::string guid_of(std::string_view house, std::string_view what) {
    return compressed(named(named(name_space, house), what));
}

} // namespace roundlay::building
