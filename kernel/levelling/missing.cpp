#include "kernel/levelling/levelling.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace roundlay {

namespace {

/// Lengths are asked for in steps that can be measured in a yard, never less than is needed.
double asked_for(double mm, UnitSystem units) {
    constexpr double noise = 1e-6;
    const double step = units == UnitSystem::metric ? 10 : mm_per_inch;
    return std::ceil(mm / step - noise) * step;
}

} // namespace

std::string missing_logs(std::vector<double> need, std::vector<double> have, UnitSystem units) {
    std::ranges::sort(need, std::greater());
    std::ranges::sort(have, std::greater());
    std::map<double, int, std::greater<>> missing;
    auto longest = have.begin();
    for (const double length : need)
        if (longest != have.end() && *longest >= length)
            ++longest;
        else
            ++missing[asked_for(length, units)];
    LengthStyle style;
    style.system = units;
    std::string text;
    for (const auto &[length, count] : missing)
        text += (text.empty() ? "" : ", ") + std::to_string(count) + " of " +
                print_length(Length::mm(length), style) + " or longer";
    return text;
}

} // namespace roundlay
