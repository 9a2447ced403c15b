#include "kernel/review/floor_screen.h"

#include "kernel/trade/joist.h"
#include "kernel/trade/species.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double n_per_mm2 = 1e-3; ///< 1 kPa

/// Its least section: joists of tapered logs are thinner at the tip.
Blank least_section(const Piece &piece) {
    Blank least = piece.blank;
    for (const Cut &cut : piece.cuts) {
        const auto *face = std::get_if<FaceCut>(&cut);
        if (!face) continue;
        for (const double x : {0.0, piece.blank.length}) {
            const Plane &p = face->plane;
            if (face->face == LogFace::under)
                least.height = std::min(least.height, piece.blank.height - p.height_at(x, 0));
            if (face->face == LogFace::inside) // the two sides lie evenly about the middle
                least.width = std::min(
                    least.width, 2 * ((p.offset - p.normal.x * x) / p.normal.y - piece.blank.width / 2));
        }
    }
    return least;
}

bool carries_points(const Piece &piece, TimberUse use) {
    return use != TimberUse::trimmer && std::any_of(piece.cuts.begin(), piece.cuts.end(), [](const Cut &cut) {
               return std::holds_alternative<PocketCut>(cut);
           });
}

TimberScreen screen(const Floor &floor, const Timber &timber, const Piece &piece, double elasticity) {
    const Blank section = least_section(piece);
    TimberScreen s;
    s.width = section.width;
    s.height = section.height;
    const double bearing = std::min(timber.bearing_from, timber.bearing_to);
    s.span = *std::max_element(timber.spans.begin(), timber.spans.end()) + bearing;
    s.live = *floor.live_load * n_per_mm2 * timber.load_width;
    s.total = s.live + floor.dead_load.value_or(0) * n_per_mm2 * timber.load_width;
    s.elasticity = elasticity;
    const JoistSection wood = rectangular(s.width, s.height);
    s.deflection = deflection_by_bending({s.live, s.span}, wood, elasticity);
    s.bending = bending_stress({s.total, s.span}, wood);
    s.shear = shear_stress({s.total, s.span}, wood);
    s.bearing = bearing_stress({s.total, s.span}, s.width, bearing);
    return s;
}

std::string basis_of(const Species &species) {
    return "simple span from middle to middle of the bearings, even load, least section: deflection 5 w L^4 "
           "/ (384 E I) "
           "under the live load, stresses M / S, 3 V / 2 A and V / (b x bearing) under live and dead load "
           "(Wood Handbook "
           "chapter 9); E of green clear " +
           std::string(species.name) + " " + std::to_string(std::lround(species.bending.elasticity_green)) +
           " MPa, " + std::string(species.bending.origin.source) +
           ". Timbers that carry others at single points are not screened. " + std::string(joist_caution);
}

} // namespace

FloorScreen screen_floors(const Shell &shell, const Layout &layout) {
    FloorScreen result;
    const auto found = find_species(shell.wood.species);
    const auto *species = std::get_if<const Species *>(&found);
    if (species) result.basis = basis_of(**species);
    for (std::size_t i = 0; i < layout.timbers.size(); ++i) {
        const Timber &timber = layout.timbers[i];
        const Floor &floor = shell.floors[static_cast<std::size_t>(timber.floor)];
        const Piece &piece = layout.pieces[static_cast<std::size_t>(timber.piece)];
        if (!floor.live_load) continue;
        if (!species || carries_points(piece, timber.use)) {
            result.unscreened.push_back(static_cast<int>(i));
            continue;
        }
        result.timbers.push_back(screen(floor, timber, piece, (*species)->bending.elasticity_green));
        result.timbers.back().timber = static_cast<int>(i);
    }
    return result;
}

} // namespace roundlay
