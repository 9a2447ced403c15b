#include "kernel/measure/spelling.h"

#include <charconv>
#include <cmath>
#include <optional>

namespace roundlay {

namespace {

/// Halves down to 64ths, and the thirds, sixths and twelfths that come from dividing a height.
constexpr int denominators[] = {1, 2, 4, 8, 16, 32, 64, 3, 6, 12};

bool reads_back(const std::string &text, Length value) {
    const auto read = parse_length(text);
    return std::holds_alternative<Length>(read) && std::get<Length>(read) == value;
}

/// Marks of print_length as words: `10' 10 1/2"` becomes `10 ft 10 1/2 in`.
std::string in_words(const std::string &printed) {
    std::string text;
    for (const char c : printed)
        if (c == '\'')
            text += " ft";
        else if (c == '"')
            text += " in";
        else
            text += c;
    constexpr std::string_view no_inches = " ft 0 in";
    if (text.ends_with(no_inches)) text.erase(text.size() - std::string_view(" 0 in").size());
    return text;
}

std::optional<std::string> spell_in_inches(Length value) {
    for (const int denominator : denominators) {
        const std::string text =
            in_words(print_length(value, {.system = UnitSystem::imperial, .denominator = denominator}));
        if (reads_back(text, value)) return text;
    }
    return std::nullopt;
}

} // namespace

std::string spell_number(double value) {
    char digits[400]; // the longest plain decimal of a double has 309 digits before the point
    const auto end = std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed);
    return end.ec == std::errc() ? std::string(digits, end.ptr) : "0";
}

std::string spell_length(Length value, UnitSystem system) {
    std::string metric = spell_number(value.mm() == 0 ? 0.0 : value.mm()) + " mm";
    constexpr std::size_t longest_metric = 12; // "12345.678 mm"; longer ones come from inches
    if (system == UnitSystem::metric && metric.size() <= longest_metric) return metric;
    return spell_in_inches(value).value_or(metric);
}

std::string spell_slope(Slope value) {
    if (value.ratio() == 0) return "level";
    std::string printed = print_slope(value);
    const auto read = parse_slope(printed);
    if (std::holds_alternative<Slope>(read) && std::get<Slope>(read) == value) return printed;
    return spell_number(value.ratio());
}

} // namespace roundlay
