#include "kernel/measure/load.h"

#include "kernel/measure/spelling.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace roundlay {

namespace {

constexpr std::string_view blanks = " \t";

struct LoadUnit {
    std::string_view name;
    double kpa;
};
constexpr LoadUnit units[] = {{"psf", kpa_per_psf},
                              {"lb/ft2", kpa_per_psf},
                              {"lb/ft\u00B2", kpa_per_psf},
                              {"lbf/ft2", kpa_per_psf},
                              {"kpa", 1},
                              {"kn/m2", 1},
                              {"kn/m\u00B2", 1}};

std::string digits_of(double value, int figures) {
    char digits[64];
    const auto end =
        std::to_chars(digits, digits + sizeof digits, value, std::chars_format::general, figures);
    return {digits, end.ptr};
}

/// The shortest decimal of pounds on a square foot that is exactly this load; empty: there is none.
std::string exact_psf(double kpa) {
    constexpr int most_figures = 17;
    for (int figures = 1; figures <= most_figures; ++figures) {
        const std::string digits = digits_of(kpa / kpa_per_psf, figures);
        double read = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), read);
        if (read * kpa_per_psf == kpa) return spell_number(read);
    }
    return {};
}

} // namespace

std::optional<double> parse_load(std::string_view text, std::optional<UnitSystem> bare) {
    text.remove_prefix(std::min(text.find_first_not_of(blanks), text.size()));
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc() || !std::isfinite(value)) return {};
    text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()));
    text.remove_prefix(std::min(text.find_first_not_of(blanks), text.size()));
    text = text.substr(0, text.find_last_not_of(blanks) + 1);
    if (text.empty() && bare) return *bare == UnitSystem::metric ? value : value * kpa_per_psf;
    std::string unit(text);
    for (char &c : unit)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    for (const LoadUnit &known : units)
        if (unit == known.name) return value * known.kpa;
    return {};
}

std::string with_unit_stated(double number) {
    std::string text;
    for (const LoadUnit &unit : {LoadUnit{" psf", kpa_per_psf}, LoadUnit{" kPa", 1}})
        if (number * unit.kpa <= most_load)
            text += (text.empty() ? "\"" : " or \"") + spell_number(number) + std::string(unit.name) + "\"";
    return text;
}

std::string print_load(double kpa, UnitSystem system) {
    constexpr int figures = 4;
    return system == UnitSystem::metric ? digits_of(kpa, figures) + " kPa"
                                        : digits_of(kpa / kpa_per_psf, figures) + " psf";
}

std::string spell_load(double kpa, UnitSystem system) {
    constexpr std::size_t much_shorter = 3;
    const std::string metric = spell_number(kpa), imperial = exact_psf(kpa);
    const std::size_t favour = system == UnitSystem::metric ? 0 : 2 * much_shorter;
    const bool in_psf = !imperial.empty() && imperial.size() + much_shorter < metric.size() + favour;
    return in_psf ? imperial + " psf" : metric + " kPa";
}

} // namespace roundlay
