// Heights and widths of the log before it is notched.
#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>

namespace roundlay::sheets {
std::vector<Level> log_heights(const Features &features) {
    std::vector<Level> all;
    const auto add = [&](double x, int side) {
        for (const double z : {features.highest(x), features.lowest(x)})
            all.push_back({true, x, z, side, features.height(x, z)});
    };
    add(features.datum_end.outside, -1);
    if (features.top.tapers() || features.under.tapers() || features.level.slopes())
        add(features.far_end.outside, 1);
    return all;
}

std::optional<double> log_width(const Features &features, End end) {
    const bool datum = end == End::datum;
    if (!datum && !features.outside.tapers() && !features.inside.tapers()) return {};
    const SawLine &at = datum ? features.datum_end : features.far_end;
    const double x = datum ? std::max(at.outside, at.inside) : std::min(at.outside, at.inside);
    return features.innermost(x) - features.outermost(x);
}

} // namespace roundlay::sheets
