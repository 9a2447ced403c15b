#include "exporters/sheets/elevation/section.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double clear_of_peg = 20; ///< mm beyond the peg's radius
constexpr double step = 5;          ///< mm: how finely a place clear of pegs is looked for

struct Stretch {
    double from = 0, to = 0;
};

std::vector<std::size_t> openings_of(const Shell &shell, const std::string &wall) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        if (shell.openings[i].wall == wall) all.push_back(i);
    std::sort(all.begin(), all.end(), [&](std::size_t a, std::size_t b) {
        return shell.openings[a].from_left < shell.openings[b].from_left;
    });
    return all;
}

bool alike(const Opening &a, const Opening &b) {
    return a.sill == b.sill && a.height == b.height && a.kind == b.kind;
}

/// The longest stretch of wall between its corners beside all openings.
Stretch solid_stretch(const Shell &shell, const WallPlace &wall) {
    double from = wall.thickness;
    Stretch best{wall.length / 2, wall.length / 2};
    const auto take = [&](double to) {
        if (to - from > best.to - best.from) best = {from, to};
    };
    for (const std::size_t i : openings_of(shell, wall.name)) {
        const Opening &o = shell.openings[i];
        take(o.from_left.mm());
        from = std::max(from, (o.from_left + o.width).mm());
    }
    take(wall.length - wall.thickness);
    return best;
}

/// As near to the middle as can be, clear of all bores of the wall; the middle where nothing is clear.
double clear_place(const Shell &shell, const Layout &layout, Index<WallPlace> wall, const Stretch &within) {
    std::vector<std::pair<double, double>> pegs; // place, radius
    for (const Peg &peg : layout.pegs)
        if (layout.pieces.at(peg.upper).wall == wall)
            pegs.emplace_back(layout.walls[wall].frame.to_local(peg.top).x, peg.diameter / 2);
    for (const StatedBore &bore : shell.bores)
        if (bore.wall == layout.walls[wall].name)
            pegs.emplace_back(bore.from_left.mm(), bore.diameter.mm() / 2);
    const auto clear = [&](double x) {
        return std::none_of(pegs.begin(), pegs.end(),
                            [&](auto p) { return std::abs(p.first - x) < p.second + clear_of_peg; });
    };
    const double middle = (within.from + within.to) / 2;
    for (double away = 0; away < (within.to - within.from) / 2; away += step)
        for (const double x : {middle - away, middle + away})
            if (clear(x)) return x;
    return middle;
}

} // namespace

std::vector<SectionPlace> section_places(const Shell &shell, const Layout &layout, Index<WallPlace> wall) {
    const WallPlace &place = layout.walls.at(wall);
    std::vector<SectionPlace> all;
    const auto add = [&](const Stretch &within, std::optional<std::size_t> opening) {
        all.push_back(
            {place.name + std::to_string(all.size() + 1), clear_place(shell, layout, wall, within), opening});
    };
    add(solid_stretch(shell, place), std::nullopt);
    for (const std::size_t i : openings_of(shell, place.name)) {
        const Opening &o = shell.openings[i];
        const bool known = std::any_of(all.begin(), all.end(), [&](const SectionPlace &s) {
            return s.opening && alike(shell.openings[*s.opening], o);
        });
        if (!known) add({o.from_left.mm(), (o.from_left + o.width).mm()}, i);
    }
    return all;
}

} // namespace roundlay::sheets
