#include "modeler/window/desk/words.h"

#include "kernel/layout/courses/standing.h"
#include "kernel/measure/weights.h"

#include <QCoreApplication>
#include <cmath>

namespace roundlay::window {

QString length_text(double mm, UnitSystem units) {
    LengthStyle style;
    style.system = units;
    return text(print_length(Length::mm(mm), style));
}

QString bare_number_words(UnitSystem units) {
    return units == UnitSystem::metric
               ? QCoreApplication::translate("Words", "A bare number is in millimetres: 8500 or 8.5 m.")
               : QCoreApplication::translate("Words", "A bare number is in inches: 28' for 28 feet.");
}

QString standing_text(const Layout &layout, UnitSystem units) {
    const WallStanding stands = standing_in_all(layout);
    const QString nominal = length_text(layout.height, units);
    if (stands.logs == 0) return nominal;
    const QString low = length_text(stands.lowest, units), high = length_text(stands.highest, units);
    const QString all = low == high ? high : QCoreApplication::translate("Words", "%1 to %2").arg(low, high);
    return all == nominal ? all
                          : QCoreApplication::translate("Words", "%1 (%2 by its rounds)").arg(all, nominal);
}

QString volume_text(double mm3, UnitSystem units) {
    constexpr double mm3_per_m3 = 1e9, mm3_per_ft3 = mm_per_foot * mm_per_foot * mm_per_foot;
    if (units == UnitSystem::metric) return QStringLiteral("%1 m³").arg(mm3 / mm3_per_m3, 0, 'f', 3);
    return QCoreApplication::translate("Words", "%1 ft³").arg(mm3 / mm3_per_ft3, 0, 'f', 2);
}

QString weight_text(double low_kg, double high_kg, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    const double unit = metric ? 1 : kg_per_pound;
    return QCoreApplication::translate("Words", "%1 to %2 %3")
        .arg(shown_low_weight(low_kg / unit), 0, 'f', 0)
        .arg(shown_high_weight(high_kg / unit), 0, 'f', 0)
        .arg(metric ? QStringLiteral("kg") : QStringLiteral("lb"));
}

double to_shown(double mm, UnitSystem units) {
    const double step = units == UnitSystem::metric ? 1 : mm_per_inch / LengthStyle().denominator;
    return std::round(mm / step) * step;
}

} // namespace roundlay::window
