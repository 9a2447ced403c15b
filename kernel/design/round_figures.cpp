#include "kernel/design/round_figures.h"

namespace roundlay {

Length round_figure(UnitSystem units, double mm, double inches) {
    return units == UnitSystem::metric ? Length::mm(mm) : Length::inches(inches);
}

double grid_step(UnitSystem units) {
    return round_figure(units, 10, 0.5).mm();
}

double wide_step(UnitSystem units) {
    return round_figure(units, 100, 4).mm();
}

double fine_step(UnitSystem units) {
    return round_figure(units, 5, 0.25).mm();
}

} // namespace roundlay
