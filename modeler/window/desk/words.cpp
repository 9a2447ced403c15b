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

} // namespace roundlay::window
