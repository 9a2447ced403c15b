#include "kernel/measure/tidied.h"

#include <cmath>

namespace roundlay {

Length tidied(Length length) {
    constexpr double same = 1e-6, parts = 64, per_mm = 1000;
    for (const Length round : {Length::inches(std::round(length.inches() * parts) / parts),
                               Length::mm(std::round(length.mm() * per_mm) / per_mm)})
        if (std::abs(round.mm() - length.mm()) < same) return round;
    return length;
}

} // namespace roundlay
