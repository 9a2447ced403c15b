#include "exporters/lists/table.h"

#include <charconv>
#include <cmath>

namespace roundlay {

Number number(double value, int decimals) {
    char digits[400]; // the longest plain decimal of a double has 309 digits before the point
    const auto end = std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed, decimals);
    std::string text(digits, end.ptr);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return {text == "-0" ? "0" : text};
}

Number number(double value, int decimals, int shown_decimals) {
    return {number(value, decimals).digits, number(value, shown_decimals).digits};
}

} // namespace roundlay
