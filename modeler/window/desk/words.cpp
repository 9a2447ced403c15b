#include "modeler/window/desk/words.h"

#include <cmath>

namespace roundlay::window {

QString length_text(double mm, UnitSystem units) {
    LengthStyle style;
    style.system = units;
    return text(print_length(Length::mm(mm), style));
}

double grid_step(UnitSystem units) {
    return units == UnitSystem::metric ? 10 : mm_per_inch / 2;
}

double to_shown(double mm, UnitSystem units) {
    const double step = units == UnitSystem::metric ? 1 : mm_per_inch / LengthStyle().denominator;
    return std::round(mm / step) * step;
}

QString volume_text(double mm3, UnitSystem units) {
    constexpr double mm_per_m = 1000, mm_per_foot = 12 * mm_per_inch;
    const bool metric = units == UnitSystem::metric;
    const double side = metric ? mm_per_m : mm_per_foot;
    return QStringLiteral("%1 %2").arg(mm3 / (side * side * side), 0, 'f', metric ? 3 : 2)
        .arg(metric ? QStringLiteral("m³") : QStringLiteral("ft³"));
}

MassTexts mass_texts(double low_kg, double high_kg, UnitSystem units) {
    constexpr double kg_per_lb = 0.45359237;
    const bool metric = units == UnitSystem::metric;
    const double unit = metric ? 1 : kg_per_lb;
    return {QString::number(std::floor(low_kg / unit), 'f', 0), QString::number(std::ceil(high_kg / unit), 'f', 0),
            metric ? QStringLiteral("kg") : QStringLiteral("lb")};
}

} // namespace roundlay::window
