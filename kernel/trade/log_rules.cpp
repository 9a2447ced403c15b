#include "kernel/trade/log_rules.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

double in_inches(Length l) {
    return l.inches();
}
double in_feet(Length l) {
    return l.inches() / 12;
}

/// One 4 ft section with its small-end diameter in inches.
double international_section(double d) {
    return std::max(0.0, 0.905 * (0.22 * d * d - 0.71 * d));
}

} // namespace

double board_feet(double volume_mm3) {
    constexpr double mm3_per_board_foot = 144 * mm_per_inch * mm_per_inch * mm_per_inch;
    return volume_mm3 / mm3_per_board_foot;
}

double doyle(Length diameter, Length length) {
    const double d = std::max(0.0, in_inches(diameter) - 4);
    return d * d * in_feet(length) / 16;
}

double scribner(Length diameter, Length length) {
    const double d = in_inches(diameter);
    return std::max(0.0, (0.79 * d * d - 2 * d - 4) * in_feet(length) / 16);
}

double international_quarter(Length diameter, Length length) {
    constexpr double section_feet = 4, taper = 0.5;
    constexpr double longest_feet = 1000; // far over any log: keeps the count of sections small
    double d = in_inches(diameter), sum = 0;
    double rest = std::clamp(in_feet(length), 0.0, longest_feet);
    for (; rest > 0; rest -= section_feet, d += taper)
        sum += international_section(d) * std::min(rest, section_feet) / section_feet;
    return 5 * std::round(sum / 5);
}

} // namespace roundlay
