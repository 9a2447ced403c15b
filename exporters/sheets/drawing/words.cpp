#include "exporters/sheets/drawing/words.h"

#include "exporters/sheets/drawing/number.h"
#include "exporters/words/decimal_mark.h"
#include "kernel/measure/weights.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double mm3_per_m3 = 1e9;
constexpr double mm3_per_ft3 = mm_per_foot * mm_per_foot * mm_per_foot;

} // namespace

std::string Words::volume(double mm3) const {
    const std::string figures = three_figures(mm3 / (metric() ? mm3_per_m3 : mm3_per_ft3));
    return metric() ? say("%1 m³", with_decimal_mark(figures, language()))
                    : say("%1 ft³", with_decimal_mark(figures, language()));
}

std::string Words::low_weight(double kilograms) const {
    return metric() ? number_text(shown_low_weight(kilograms), 0) + " kg"
                    : number_text(shown_low_weight(kilograms / kg_per_pound), 0) + " lb";
}

std::string Words::high_weight(double kilograms) const {
    return metric() ? number_text(shown_high_weight(kilograms), 0) + " kg"
                    : number_text(shown_high_weight(kilograms / kg_per_pound), 0) + " lb";
}

std::string Words::weights(double low_kg, double high_kg) const {
    return say("%1 to %2", low_weight(low_kg), high_weight(high_kg));
}

std::string Words::level(double mm) const {
    const std::string size = length(std::abs(mm));
    return size == length(0) ? size : (mm < 0 ? "-" : "+") + size;
}

std::string Words::unit_note() const {
    return metric() ? say("Dimensions in millimetres.")
                    : say("Dimensions in feet, inches and %1ths.", denominator_);
}

std::string Words::slope(double rise_per_run) const {
    const std::string ratio = print_slope(Slope::rise_per_run(std::abs(rise_per_run)));
    if (ratio == "level") return say("level");
    return rise_per_run > 0 ? say("up %1", ratio) : say("down %1", ratio);
}

std::string three_figures(double value) {
    if (value == 0) return "0";
    const int before = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    return number_text(value, std::clamp(3 - before, 0, 9));
}

} // namespace roundlay::sheets
