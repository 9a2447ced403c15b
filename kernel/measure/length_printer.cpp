#include "kernel/measure/measure.h"
#include "kernel/measure/rounding.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numeric>

namespace roundlay {

namespace {

/// Beyond this no length is read, so none has to be printed finely; up to it every count below is exact.
constexpr double largest_mm = 1e9;
constexpr int most_decimals = 6; // a nanometre
constexpr int most_parts = 64;

std::string inches_text(std::uint64_t parts, std::uint64_t denominator) {
    const std::uint64_t whole = parts / denominator, over = parts % denominator;
    if (over == 0) return std::to_string(whole);
    const std::uint64_t common = std::gcd(over, denominator);
    const std::string fraction = std::to_string(over / common) + "/" + std::to_string(denominator / common);
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

std::string print_imperial(double size_mm, bool negative, const LengthStyle &style) {
    const int denominator = std::clamp(style.denominator, 1, most_parts);
    const auto per_inch = static_cast<std::uint64_t>(denominator);
    std::uint64_t parts = nearest_count(Length::mm(size_mm).inches() * denominator);
    const std::string sign = negative && parts != 0 ? "-" : "";
    const std::uint64_t feet = style.feet ? parts / (12 * per_inch) : 0;
    parts -= feet * 12 * per_inch;
    const std::string inches = inches_text(parts, per_inch) + "\"";
    if (feet == 0) return sign + inches;
    // 10' 0 3/16" and not 10' 3/16": a fraction alone is easily misread behind feet.
    const bool bare_fraction = parts != 0 && parts < per_inch;
    return sign + std::to_string(feet) + (bare_fraction ? "' 0 " : "' ") + inches;
}

std::string print_metric(double size_mm, bool negative, const LengthStyle &style) {
    const auto decimals = static_cast<std::size_t>(std::clamp(style.decimals, 0, most_decimals));
    std::uint64_t scale = 1;
    for (std::size_t i = 0; i < decimals; ++i)
        scale *= 10;
    const std::uint64_t parts = nearest_count(size_mm * static_cast<double>(scale));
    std::string text = negative && parts != 0 ? "-" : "";
    text += std::to_string(parts / scale);
    if (decimals > 0) text += "." + std::to_string(scale + parts % scale).substr(1);
    return text + (style.with_unit ? " mm" : "");
}

/// For what no one can have measured: still text, still the right order of size.
std::string print_out_of_range(double mm) {
    char digits[32];
    const auto end = std::to_chars(digits, digits + sizeof digits, mm, std::chars_format::general, 6);
    return std::string(digits, end.ptr) + " mm";
}

} // namespace

std::string print_length(Length value, const LengthStyle &style) {
    const double size = std::abs(value.mm());
    if (!(size <= largest_mm)) return print_out_of_range(value.mm());
    const bool negative = value.mm() < 0;
    return style.system == UnitSystem::imperial ? print_imperial(size, negative, style)
                                                : print_metric(size, negative, style);
}

std::string print_decimals(Length value, UnitSystem system, int places) {
    const bool metric = system == UnitSystem::metric;
    char digits[512]; // the largest double has 309 digits before its point
    const auto end =
        std::to_chars(digits, digits + sizeof digits, metric ? value.mm() : value.mm() / mm_per_inch,
                      std::chars_format::fixed, places);
    return std::string(digits, end.ptr) + (metric ? " mm" : " in");
}

} // namespace roundlay
