#include "kernel/design/step_edits.h"

#include "kernel/design/round_figures.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/measure/tidied.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

Length size(const Shell &shell, double mm, double inches) {
    return round_figure(shell.units, mm, inches);
}

/// A round, else half of one: half the walls begin with half a log.
std::vector<Length> rises(const Shell &shell, double pitch) {
    const double step = fine_step(shell.units);
    std::vector<Length> all;
    for (const double share : {1.0, 0.5})
        all.push_back(tidied(Length::mm(std::round(share * pitch / step) * step)));
    return all;
}

/// Left ends, the nearest first; far away not every one is worth trying.
std::vector<Length> places(const Shell &shell, const WallPlace &wall, Length width, double along) {
    constexpr std::size_t near = 16, coarse = 4;
    const double step = wide_step(shell.units), wanted = along - width.mm() / 2;
    std::vector<Length> all;
    for (double x = step; x + width.mm() < wall.length; x += step)
        all.push_back(tidied(Length::mm(x)));
    std::ranges::stable_sort(all, {}, [wanted](Length x) { return std::abs(x.mm() - wanted); });
    std::vector<Length> worth;
    for (std::size_t i = 0; i < all.size(); i += i < near ? 1 : coarse)
        worth.push_back(all[i]);
    return worth;
}

} // namespace

std::vector<std::size_t> steps_under(const Shell &shell, const std::string &wall) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < shell.steps.size(); ++i)
        if (shell.steps[i].wall == wall) all.push_back(i);
    std::ranges::stable_sort(all, {}, [&](std::size_t i) { return shell.steps[i].from_left; });
    return all;
}

Fitted with_new_step(const Shell &shell, const std::string &wall, double along) {
    const Layout layout = lay_out_to_try(shell);
    const auto place = std::ranges::find(layout.walls, wall, &WallPlace::name);
    if (place == layout.walls.end() || layout.heights.empty()) return {};
    const double pitch = layout.heights[layout.walls.index_of(place)].pitch;
    FittingTrial trial(shell);
    const std::string subject = "step[" + std::to_string(shell.steps.size()) + "]";
    Shell next = shell;
    next.steps.push_back({wall, {}, {}, {}});
    FoundationStep &step = next.steps.back();
    std::optional<Shell> with_warnings;
    for (const Length width : {size(shell, 1500, 60), size(shell, 900, 36), size(shell, 600, 24)})
        for (const Length rise : rises(shell, pitch))
            for (const Length from_left : places(shell, *place, width, along)) {
                step = {wall, from_left, width, rise};
                if (!trial.holds(next, subject)) continue;
                if (trial.is_clean()) return next;
                if (!with_warnings) with_warnings = next;
            }
    if (with_warnings) return with_warnings;
    return trial.why();
}

std::optional<Shell> with_step(const Shell &shell, std::size_t at, const FoundationStep &step) {
    if (at >= shell.steps.size()) return {};
    Shell next = shell;
    next.steps[at] = step;
    return next;
}

std::optional<Shell> without_step(const Shell &shell, std::size_t at) {
    if (at >= shell.steps.size()) return {};
    Shell next = shell;
    next.steps.erase(next.steps.begin() + static_cast<std::ptrdiff_t>(at));
    return next;
}

} // namespace roundlay
