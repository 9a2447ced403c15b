#include "kernel/design/samples.h"

#include "kernel/design/round_figures.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measure/load.h"
#include "kernel/measure/tidied.h"
#include "kernel/review/review.h"
#include "kernel/review/water.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace roundlay {

namespace {

bool has_only_notes(const Findings &findings) {
    return std::all_of(findings.begin(), findings.end(),
                       [](const Finding &f) { return f.weight == Weight::note; });
}

/// The layout is quick and refuses most of what does not fit; the review looks at the wood.
bool is_clean(const Shell &shell) {
    const Layout layout = lay_out(shell);
    return has_only_notes(layout.findings) && has_only_notes(review(shell, layout, bodies_of(layout)));
}

/// The samples so far, and the shell with all of them.
struct Trying {
    const Shell &plain;
    Shell all;
    std::vector<Sample> samples;
    int tries = 0; ///< left for the sample at hand: each is a shell laid out
};

constexpr int most_tries = 100;

using Add = std::function<void(Shell &)>;

/// Takes the sample where it fits alone and beside those before it.
bool take(Trying &trying, SampleKind kind, const Add &add) {
    if (trying.tries-- <= 0) return false;
    Shell alone = trying.plain, all = trying.all;
    add(alone);
    if (!is_clean(alone)) return false;
    add(all);
    if (all != alone && !is_clean(all)) return false;
    trying.samples.push_back({kind, std::move(alone)});
    trying.all = std::move(all);
    return true;
}

/// Down to a length that a person would type.
Length in_round_figures(const Shell &shell, Length length) {
    const Length step = round_figure(shell.units, 100, 6);
    return tidied(step * std::floor(length.mm() / step.mm()));
}

constexpr double places[] = {1.0 / 2, 1.0 / 3, 2.0 / 3, 1.0 / 4, 3.0 / 4, 1.0 / 6, 5.0 / 6};

/// In the seam that ends at that height: one that a person would state where there is one, else its edges.
std::vector<Length> heights_in_seam(const Shell &shell, Length end) {
    const double step = fine_step(shell.units);
    const Length rounded = Length::mm(std::floor(end.mm() / step + 1e-6) * step);
    if (rounded >= end - shell.rounds.gap) return {rounded};
    return {end, end - shell.rounds.gap};
}

/// Tops of rounds of full logs, and of half ones, under what a person walks through upright; the highest
/// first.
std::vector<Length> seam_heights(const Shell &shell, Length most) {
    const Layout layout = lay_out(shell);
    std::vector<Length> heights;
    const Length half = Length::mm(layout.height / layout.rounds / 2);
    for (int i = 1; i <= 2 * layout.rounds; ++i)
        for (const Length height : heights_in_seam(shell, half * i))
            if (height > Length() && height <= most) heights.push_back(tidied(height));
    std::sort(heights.begin(), heights.end(), std::greater<>());
    return heights;
}

void door(Trying &trying) {
    trying.tries = most_tries;
    const Shell &shell = trying.plain;
    Opening o;
    o.name = "door";
    o.kind = OpeningKind::door;
    o.width = round_figure(shell.units, 900, 36);
    const auto heights = seam_heights(shell, round_figure(shell.units, 2150, 84));
    for (const Wall &wall : shell.walls)
        for (const Length height : heights) {
            o.wall = wall.name;
            o.height = height;
            o.from_left = in_round_figures(shell, (wall.length - o.width) / 2);
            if (take(trying, SampleKind::door, [&](Shell &s) { s.openings.push_back(o); })) return;
        }
}

bool across(const Wall &a, const Wall &b) {
    return std::abs(std::abs(a.heading - b.heading) - 180) < 1e-9;
}

/// The letter after the last one.
std::string next_letter(const Shell &shell) {
    return std::string(
        1, static_cast<char>('A' + shell.walls.size() + shell.partitions.size() + shell.floors.size()));
}

/// Where its tails would lead water in by those of the wall that it passes through, they have a notch of
/// their own.
void add_partition(Shell &shell, const Partition &p) {
    shell.partitions.push_back(p);
    for (CornerNotch &own : dry_corners(shell, lay_out(shell)))
        shell.corners.push_back(std::move(own));
}

void partition(Trying &trying) {
    trying.tries = most_tries;
    const Shell &shell = trying.plain;
    Partition p;
    p.name = next_letter(shell);
    for (const Wall &from : shell.walls)
        for (const Wall &to : shell.walls)
            for (const double place : places) {
                if (!across(from, to)) continue;
                p.from = from.name;
                p.to = to.name;
                p.from_left = in_round_figures(shell, from.length * place);
                if (take(trying, SampleKind::partition, [&](Shell &s) { add_partition(s, p); })) return;
            }
}

std::vector<TimberSize> joist_sizes(const Shell &shell) {
    if (shell.units == UnitSystem::imperial)
        return {{Length::inches(4), Length::inches(8)},
                {Length::inches(6), Length::inches(8)},
                {Length::inches(6), Length::inches(10)},
                {Length::inches(8), Length::inches(12)}};
    return {{Length::mm(100), Length::mm(200)},
            {Length::mm(150), Length::mm(200)},
            {Length::mm(150), Length::mm(250)},
            {Length::mm(200), Length::mm(300)}};
}

Floor floor_of(const Shell &shell) {
    Floor f;
    f.name = std::string(1, static_cast<char>(next_letter(shell)[0] + 1));
    const bool feet = shell.units == UnitSystem::imperial;
    f.spacing = round_figure(shell.units, 600, 24);
    f.bearing = round_figure(shell.units, 75, 3);
    f.live_load = feet ? 40 * kpa_per_psf : 1.9;
    f.dead_load = feet ? 10 * kpa_per_psf : 0.5;
    return f;
}

/// Of the walls across from one another, those with the shortest joists first.
std::vector<std::pair<const Wall *, const Wall *>> pairs_across(const Shell &shell) {
    std::vector<std::pair<const Wall *, const Wall *>> pairs;
    for (const Wall &from : shell.walls)
        for (const Wall &to : shell.walls)
            if (&from < &to && across(from, to)) pairs.emplace_back(&from, &to);
    std::stable_sort(pairs.begin(), pairs.end(),
                     [](const auto &a, const auto &b) { return a.first->length > b.first->length; });
    return pairs;
}

/// Its joists start at their spacing, or so that none stands in a partition.
bool floor_from(Trying &trying, std::optional<Length> first) {
    trying.tries = most_tries;
    const Shell &shell = trying.plain;
    Floor f = floor_of(shell);
    f.first = first;
    std::vector<Length> levels = seam_heights(shell, round_figure(shell.units, 2500, 100));
    levels.resize(std::min<std::size_t>(levels.size(), 3));
    for (const auto &[from, to] : pairs_across(shell))
        for (const Length level : levels)
            for (const TimberSize &size : joist_sizes(shell)) {
                f.from = from->name;
                f.to = to->name;
                f.level = level;
                f.joist = size;
                if (take(trying, SampleKind::floor, [&](Shell &s) { s.floors.push_back(f); })) return true;
            }
    return false;
}

void floor(Trying &trying) {
    const Length spacing = floor_of(trying.plain).spacing;
    for (const std::optional<Length> first :
         {std::optional<Length>(), std::optional(spacing * 0.5), std::optional(spacing * 0.75),
          std::optional(spacing * 0.25), std::optional(spacing * 0.375)})
        if (floor_from(trying, first)) return;
}

} // namespace

std::vector<Sample> samples_for(const Shell &shell) {
    Trying trying{shell, shell, {}};
    door(trying);
    partition(trying);
    floor(trying);
    return std::move(trying.samples);
}

} // namespace roundlay
