// A number with decimals in a sentence: languages write the mark before them in their own way.
#pragma once

#include "kernel/measure/said.h"

#include <charconv>
#include <string>

namespace roundlay {

/// To so many figures, without an exponent: `in_figures(0.38, 3)` is "0.38", or "0,38" in French.
inline Said in_figures(double value, int figures) {
    char digits[400]; // the largest double has 309 before its point
    const auto fixed = [&](int places) {
        const auto end =
            std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed, places);
        return std::string(digits, end.ptr);
    };
    const std::string whole = fixed(0);
    std::size_t first = whole.find_first_of("123456789");
    int places = figures - static_cast<int>(first == std::string::npos ? 0 : whole.size() - first);
    std::string text = fixed(places > 0 ? places : 0);
    if (text.find('.') == std::string::npos) return said("%1", text);
    while (text.back() == '0')
        text.pop_back();
    const std::size_t mark = text.find('.');
    if (mark + 1 == text.size()) return said("%1", text.substr(0, mark));
    return said("%1.%2", text.substr(0, mark), text.substr(mark + 1));
}

} // namespace roundlay
