#include "exporters/report/fitted_wall.h"

#include "exporters/sheets/elevation/sides.h"
#include "exporters/sheets/frame/tables.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {

namespace {

constexpr double beside = 3;        ///< mm of paper that words and edges reach past the wood
constexpr double least_pitch = 3.7; ///< of logs on paper, so that their tags have room

struct Fit {
    const Scale *scale = nullptr;
    int stretches = 1;
};

/// The largest scale at which the wall is one drawing and tags have room; else in as few stretches as give
/// them room.
Fit fit_of(const MarkedWall &wall, double width, double tallest, double largest) {
    const Along all = seen_along(wall);
    const double top = top_of(wall.seen), log = wall.layout.heights[wall.wall].pitch;
    Fit fit;
    for (const Scale &scale : shell_scales(wall.words.system())) {
        if (top * scale.ratio > tallest || scale.ratio > largest) continue;
        const int parts =
            std::max(1, static_cast<int>(std::ceil((all.to - all.from) * scale.ratio / width - 1e-9)));
        if (fit.scale && log * scale.ratio < least_pitch) break;
        fit = {&scale, parts};
        if (parts == 1) break;
    }
    return fit;
}

std::string caption_of(const MarkedWall &wall, const Scale &scale, const std::string &what) {
    return wall.words.say("%1: %2",
                          wall_seen(wall.layout, wall.wall, wall.side == WallSide::outside,
                                    said_scale(&scale, wall.words), wall.words),
                          what);
}

} // namespace

double top_of(const SeenShell &seen) {
    double top = 0;
    for (const Stretch &s : seen.edges)
        top = std::max({top, s.from.y, s.to.y});
    return top;
}

double ratio_of(const ReportPages &pages, const MarkedWall &wall, double tallest) {
    constexpr double any = std::numeric_limits<double>::infinity();
    const Fit fit = fit_of(wall, pages.room().width() - beside, tallest, any);
    return fit.scale ? fit.scale->ratio : 0;
}

void add_wall(ReportPages &pages, MarkedWall wall, double tallest, double largest) {
    const std::string what = wall.caption;
    const Fit fit = fit_of(wall, pages.room().width() - beside, tallest, largest);
    if (!fit.scale) return pages.add(not_drawn(wall.words, what));
    const Along all = seen_along(wall);
    const double each = (all.to - all.from) / fit.stretches;
    std::vector<std::string> without;
    wall.caption = caption_of(wall, *fit.scale, what);
    for (int i = 0; i < fit.stretches; ++i) {
        // seen from inside the first stretch is the last one along the wall
        const int k = wall.side == WallSide::inside ? fit.stretches - 1 - i : i;
        MarkedBlock made = drawn(wall, {all.from + k * each, all.from + (k + 1) * each}, fit.scale->ratio);
        without.insert(without.end(), made.without_room.begin(), made.without_room.end());
        pages.add(std::move(made.block));
    }
    std::ranges::sort(without);
    const auto same = std::unique(without.begin(), without.end());
    without.erase(same, without.end());
    if (!without.empty())
        pages.add(left_over_table(wall.words, wall.words.say("Logs too small here for their tags"), without));
}

} // namespace roundlay::sheets
