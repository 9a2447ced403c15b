#include "exporters/sheets/drawing/number.h"

#include <array>
#include <charconv>
#include <cmath>
#include <stdexcept>

namespace roundlay::sheets {

std::string number_text(double value, int decimals) {
    if (!std::isfinite(value)) throw std::invalid_argument("a drawing holds a number that is not finite");
    std::array<char, 400> room{}; // the largest double has 309 digits before its point
    const auto [end, error] =
        std::to_chars(room.data(), room.data() + room.size(), value, std::chars_format::fixed, decimals);
    if (error != std::errc()) throw std::invalid_argument("a number in a drawing is too long to be written");
    std::string text(room.data(), end);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

} // namespace roundlay::sheets
