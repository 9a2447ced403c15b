#include "modeler/command_line/samples.h"

#include "exporters/registry/job.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/measure/load.h"
#include "kernel/measure/tidied.h"
#include "kernel/review/water.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <sstream>

namespace roundlay {

namespace {

bool has_only_notes(const Findings &findings) {
    return std::all_of(findings.begin(), findings.end(),
                       [](const Finding &f) { return f.weight == Weight::note; });
}

/// The layout is quick and refuses most of what does not fit; the review looks at the wood.
bool is_clean(const Shell &shell) {
    return has_only_notes(lay_out(shell).findings) && has_only_notes(make_job(shell).findings);
}

/// The samples so far: the shell as it is written, and with all of them.
struct Samples {
    const Shell &plain;
    Shell all;
    std::string text;
    int tries = 0; ///< left for the sample at hand: each is a shell laid out
};

constexpr int most_tries = 100;

/// What stands between empty lines.
std::vector<std::string> blocks_of(const std::string &document) {
    std::vector<std::string> blocks(1);
    std::istringstream lines(document);
    for (std::string line; std::getline(lines, line);) {
        if (line.empty())
            blocks.emplace_back();
        else if (!line.starts_with("#"))
            blocks.back() += "#" + line + "\n";
    }
    return blocks;
}

/// What the document of `with` has and that of `plain` has not, each line behind a #.
std::string added_text(const Shell &plain, const Shell &with) {
    const std::vector<std::string> before = blocks_of(write_document(plain));
    std::string text;
    for (const std::string &block : blocks_of(write_document(with)))
        if (std::find(before.begin(), before.end(), block) == before.end()) text += block;
    return text;
}

using Add = std::function<void(Shell &)>;

/// Takes the sample where it fits alone and beside those before it.
bool take(Samples &samples, const Add &add, const std::string &words) {
    if (samples.tries-- <= 0) return false;
    Shell alone = samples.plain, all = samples.all;
    add(alone);
    if (!is_clean(alone)) return false;
    add(all);
    if (all != alone && !is_clean(all)) return false;
    samples.text += "\n" + words + added_text(samples.plain, alone);
    samples.all = std::move(all);
    return true;
}

/// Down to a length that a person would type.
Length in_round_figures(const Shell &shell, Length length) {
    const Length step = shell.units == UnitSystem::imperial ? Length::inches(6) : Length::mm(100);
    return tidied(step * std::floor(length.mm() / step.mm()));
}

constexpr double places[] = {1.0 / 2, 1.0 / 3, 2.0 / 3, 1.0 / 4, 3.0 / 4, 1.0 / 6, 5.0 / 6};

/// Tops of rounds of full logs, and of half ones, under what a person walks through upright; the highest
/// first.
std::vector<Length> seam_heights(const Shell &shell, Length most) {
    const Layout layout = lay_out(shell);
    std::vector<Length> heights;
    const Length half = Length::mm(layout.height / layout.rounds / 2);
    for (int i = 1; i <= 2 * layout.rounds; ++i)
        for (const Length height : {half * i, half * i - shell.rounds.gap})
            if (height > Length() && height <= most) heights.push_back(tidied(height));
    std::sort(heights.begin(), heights.end(), std::greater<>());
    return heights;
}

void door(Samples &samples) {
    samples.tries = most_tries;
    const bool feet = samples.plain.units == UnitSystem::imperial;
    Opening o;
    o.name = "door";
    o.kind = OpeningKind::door;
    o.width = feet ? Length::feet(3) : Length::mm(900);
    const auto heights = seam_heights(samples.plain, feet ? Length::inches(84) : Length::mm(2150));
    for (const Wall &wall : samples.plain.walls)
        for (const Length height : heights) {
            o.wall = wall.name;
            o.height = height;
            o.from_left = in_round_figures(samples.plain, (wall.length - o.width) / 2);
            if (take(
                    samples, [&](Shell &s) { s.openings.push_back(o); },
                    "# An opening: a door. from_left is seen from outside. A window has kind = \"window\" "
                    "and a sill over 0.\n"))
                return;
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

void partition(Samples &samples) {
    samples.tries = most_tries;
    Partition p;
    p.name = next_letter(samples.plain);
    for (const Wall &from : samples.plain.walls)
        for (const Wall &to : samples.plain.walls)
            for (const double place : places) {
                if (!across(from, to)) continue;
                p.from = from.name;
                p.to = to.name;
                p.from_left = in_round_figures(samples.plain, from.length * place);
                if (take(
                        samples, [&](Shell &s) { add_partition(s, p); },
                        "# A partition: a log wall indoors, from one wall to another; its middle lies "
                        "from_left along the first.\n"))
                    return;
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
    f.spacing = feet ? Length::feet(2) : Length::mm(600);
    f.bearing = feet ? Length::inches(3) : Length::mm(75);
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
bool floor_from(Samples &samples, std::optional<Length> first) {
    samples.tries = most_tries;
    const Shell &shell = samples.plain;
    Floor f = floor_of(shell);
    f.first = first;
    const bool feet = shell.units == UnitSystem::imperial;
    std::vector<Length> levels = seam_heights(shell, feet ? Length::inches(100) : Length::mm(2500));
    levels.resize(std::min<std::size_t>(levels.size(), 3));
    for (const auto &[from, to] : pairs_across(shell))
        for (const Length level : levels)
            for (const TimberSize &size : joist_sizes(shell)) {
                f.from = from->name;
                f.to = to->name;
                f.level = level;
                f.joist = size;
                if (take(
                        samples, [&](Shell &s) { s.floors.push_back(f); },
                        "# A floor: joists from one wall to the one across the room. The loads are for a "
                        "screen of spans only;\n"
                        "# local code and a licensed professional decide.\n"))
                    return true;
            }
    return false;
}

void floor(Samples &samples) {
    const Length spacing = floor_of(samples.plain).spacing;
    for (const std::optional<Length> first :
         {std::optional<Length>(), std::optional(spacing * 0.5), std::optional(spacing * 0.75),
          std::optional(spacing * 0.25), std::optional(spacing * 0.375)})
        if (floor_from(samples, first)) return;
}

} // namespace

std::string sample_comments(const Shell &shell) {
    Samples samples{shell, shell, {}};
    door(samples);
    partition(samples);
    floor(samples);
    if (samples.text.empty()) return {};
    return "\n# Samples that fit this shell. To have one, take the # away in front of each of its lines.\n" +
           samples.text;
}

} // namespace roundlay
