#include "exporters/sheets/svg/base64.h"

#include <cstdint>

namespace roundlay::sheets {

std::string base64(std::string_view bytes) {
    constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k)
            group = (group << 8U) | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k) {
            const bool padding = i + k > bytes.size(); // letter k holds bits of byte k - 1
            out += padding ? '=' : letters[(group >> (18 - 6 * k)) & 63U];
        }
    }
    return out;
}

} // namespace roundlay::sheets
