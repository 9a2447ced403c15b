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

/// What sums, differences and drags leave in the last digits; far under what any layout tells apart.
constexpr double hair = 1e-6;

bool nearly(const std::string &text, Length value) {
    const auto read = parse_length(text);
    return std::holds_alternative<Length>(read) && std::abs(std::get<Length>(read).mm() - value.mm()) <= hair;
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

using Fits = bool (*)(const std::string &text, Length value);

std::optional<std::string> spell_in_inches(Length value, Fits fits) {
    for (const int denominator : denominators) {
        const std::string text =
            in_words(print_length(value, {.system = UnitSystem::imperial, .denominator = denominator}));
        if (fits(text, value)) return text;
    }
    return std::nullopt;
}

/// Whole and tenths and so on of the unit, the fewest digits that fit.
std::optional<std::string> spell_in_decimals(double units, const char *unit, Length value, int most,
                                             Fits fits) {
    double scale = 1;
    for (int digits = 0; digits <= most; ++digits, scale *= 10) {
        const std::string text = spell_number(std::round(units * scale) / scale) + unit;
        if (fits(text, value)) return text;
    }
    return std::nullopt;
}

constexpr int typed_decimals = 3;          ///< of what is typed every day: thousandths of a millimetre
constexpr int most_typed = 6;              ///< of what is typed at all
constexpr std::size_t longest_metric = 12; ///< "12345.678 mm"; longer ones come from inches, or from sums
constexpr int most_decimals = 8, most_slope_decimals = 10, most_degree_decimals = 4;

/// Lengths that were worked out, as the nearest one that a person could have typed, in the file's own units.
std::optional<std::string> spell_nearly(Length value, UnitSystem system) {
    const bool metric = system == UnitSystem::metric;
    const double units = metric ? value.mm() : value.inches();
    const char *unit = metric ? " mm" : " in";
    if (auto typed = spell_in_decimals(units, unit, value, most_decimals, reads_back)) return typed;
    if (auto other = spell_in_decimals(value.mm(), " mm", value, most_typed, reads_back)) return other;
    if (!metric)
        if (auto inches = spell_in_inches(value, nearly)) return inches;
    if (auto short_mm = spell_in_decimals(value.mm(), " mm", value, typed_decimals, nearly)) return short_mm;
    if (auto inches = spell_in_inches(value, nearly)) return inches;
    // What is left of 31.333 ft has four decimals in millimetres, and would be written so once it was read.
    auto mm = spell_in_decimals(value.mm(), " mm", value, most_typed, nearly);
    if (mm && mm->size() <= longest_metric) return mm;
    return spell_in_decimals(units, unit, value, most_decimals, nearly);
}

} // namespace

std::string spell_number(double value) {
    char digits[400]; // the longest plain decimal of a double has 309 digits before the point
    const auto end = std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed);
    return end.ec == std::errc() ? std::string(digits, end.ptr) : "0";
}

std::string spell_length(Length value, UnitSystem system) {
    std::string metric = spell_number(value.mm() == 0 ? 0.0 : value.mm()) + " mm";
    const bool typed = metric.size() <= longest_metric;
    if (system == UnitSystem::metric && typed) return metric;
    if (const auto inches = spell_in_inches(value, reads_back)) return *inches;
    return typed ? metric : spell_nearly(value, system).value_or(metric);
}

namespace {

bool reads_back(const std::string &text, Slope value, double band) {
    const auto read = parse_slope(text);
    return std::holds_alternative<Slope>(read) &&
           std::abs(std::get<Slope>(read).ratio() - value.ratio()) <= band;
}

/// The fewest digits of a number that, with its unit, reads back.
std::optional<std::string> spell_number_of(double number, const char *unit, int most, Slope value,
                                           double band) {
    double scale = 1;
    for (int digits = 0; digits <= most; ++digits, scale *= 10)
        if (std::string text = spell_number(std::round(number * scale) / scale) + unit;
            reads_back(text, value, band))
            return text;
    return std::nullopt;
}

/// What was typed in degrees is no short number otherwise: 7 deg is 1:8.1443464280...
std::optional<std::string> spell_slope_within(Slope value, double band) {
    if (std::string printed = print_slope(value); reads_back(printed, value, band)) return printed;
    if (auto angle = spell_number_of(value.as_degrees(), " deg", most_degree_decimals, value, band))
        return angle;
    return spell_number_of(value.ratio(), "", most_slope_decimals, value, band);
}

} // namespace

std::string spell_slope(Slope value) {
    constexpr double hair_slope = 1e-10; // a hair in a kilometre
    if (value.ratio() == 0) return "level";
    if (const auto typed = spell_slope_within(value, 0)) return *typed;
    return spell_slope_within(value, hair_slope).value_or(spell_number(value.ratio()));
}

} // namespace roundlay
