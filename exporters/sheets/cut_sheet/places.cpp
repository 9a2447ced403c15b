// The places and heights that a sheet must show.
#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

void add_station(std::vector<Station> &all, double x, bool from_top, const Blank &blank) {
    if (x < same_station || x > blank.length - same_station) return;
    for (Station &s : all)
        if (std::abs(s.x - x) < same_station) {
            s.from_top = s.from_top || from_top;
            return;
        }
    all.push_back({x, from_top});
}

void add_level(std::vector<Level> &all, const Features &features, Level level) {
    level.height = features.height(level.x, level.z);
    if (level.z < features.lowest(level.x) + same_level || level.z > features.highest(level.x) - same_level)
        return;
    for (const Level &known : all)
        if (known.on_outside == level.on_outside && known.side == level.side &&
            std::abs(known.x - level.x) < same_station && std::abs(known.z - level.z) < same_level)
            return;
    all.push_back(level);
}

} // namespace

std::vector<Station> stations_of(const Features &features) {
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = features.parts();
    static_cast<void>(pegs), static_cast<void>(pockets); // marked by their middles
    std::vector<Station> all;
    const Blank &blank = features.piece->blank;
    for (const Notch &n : notches)
        for (const double x : {n.from.outside, n.to.outside})
            add_station(all, x, n.cut->side == Side::top, blank);
    for (const BoxPart &b : boxes)
        for (const double x : {b.x_from, b.x_to})
            add_station(all, x, b.opens_top || !b.opens_under, blank);
    for (const Scope &s : scopes)
        for (const double x : {s.x_from, s.x_to})
            add_station(all, x, false, blank);
    for (const MendPart &m : mends)
        for (const double x : {m.x_from, m.x_to})
            add_station(all, x, m.opens_top, blank);
    for (const SawLine &end : {features.datum_end, features.far_end})
        add_station(all, end.outside, true, blank);
    for (const TailedEnd &t : tails)
        add_station(all, t.end == End::datum ? t.length : blank.length - t.length, true, blank);
    std::sort(all.begin(), all.end(), [](Station a, Station b) { return a.x < b.x; });
    return all;
}

std::vector<SawLine> slanting_places(const Features &features) {
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = features.parts();
    static_cast<void>(boxes), static_cast<void>(tails), static_cast<void>(pockets); // square across
    static_cast<void>(mends);
    static_cast<void>(pegs); // upright
    std::vector<SawLine> all;
    const auto add = [&](const SawLine &line) {
        const auto same = [&](const SawLine &o) {
            return std::abs(o.outside - line.outside) < same_station &&
                   std::abs(o.inside - line.inside) < same_station;
        };
        if (std::abs(line.outside - line.inside) > same_station && std::none_of(all.begin(), all.end(), same))
            all.push_back(line);
    };
    add(features.datum_end);
    add(features.far_end);
    for (const Notch &n : notches) {
        add(n.from);
        add(n.to);
    }
    for (const Scope &s : scopes)
        add(s.middle);
    std::sort(all.begin(), all.end(),
              [](const SawLine &a, const SawLine &b) { return a.outside < b.outside; });
    return all;
}

std::vector<WorkedPlace> places_of(const Features &features) {
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = features.parts();
    static_cast<void>(notches), static_cast<void>(boxes), static_cast<void>(scopes); // by their ends
    static_cast<void>(tails), static_cast<void>(mends);
    std::vector<WorkedPlace> all;
    for (const Station &s : stations_of(features))
        all.push_back({s.x});
    for (const SawLine &line : slanting_places(features))
        all.push_back({(line.outside + line.inside) / 2, true, std::abs(line.outside - line.inside) / 2});
    for (const PegHole &peg : pegs)
        all.push_back({peg.bore->x, false});
    for (const Pocket &pocket : pockets)
        for (const double side : {-1.0, 1.0})
            all.push_back({pocket.cut->x + side * pocket.cut->half_at_back, false});
    if (features.end_line) all.push_back({*features.end_line, false});
    return all;
}

namespace {

void add_notch_levels(std::vector<Level> &all, const Features &features) {
    for (const Notch &n : features.notches) {
        add_level(all, features, {true, n.from.outside, n.outside_from, -1});
        add_level(all, features, {true, n.to.outside, n.outside_to, 1});
        add_level(all, features, {false, n.from.inside, n.inside_from, -1});
        add_level(all, features, {false, n.to.inside, n.inside_to, 1});
    }
}

void add_box_levels(std::vector<Level> &all, const Features &features, const BoxPart &b) {
    const bool from = b.x_from > same_station; // else there is no wood on that side
    // level through a log whose under face is not, or falling through one that narrows: then its height is
    // another at its other end
    const bool differs = features.under.tapers() || features.level.slopes() ||
                         std::abs(b.floor_from.outside - b.floor_to.outside) > same_level ||
                         std::abs(b.floor_from.inside - b.floor_to.inside) > same_level;
    const bool both = from && b.x_to < features.piece->blank.length - same_station && differs;
    for (const int side : {-1, 1}) {
        if (!both && side != (from ? -1 : 1)) continue;
        const double x = side < 0 ? b.x_from : b.x_to;
        const FloorLevel &floor = side < 0 ? b.floor_from : b.floor_to;
        add_level(all, features, {true, x, floor.outside, side});
        add_level(all, features, {true, x, b.z_to, side});
        if (floor.falls()) add_level(all, features, {false, x, floor.inside, side});
    }
}

} // namespace

std::vector<Level> levels_beside_joints(const Features &features) {
    std::vector<Level> all;
    for (const BoxPart &b : features.boxes)
        add_box_levels(all, features, b);
    return all;
}

std::vector<Level> levels_of(const Features &features) {
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = features.parts();
    static_cast<void>(notches);
    static_cast<void>(scopes), static_cast<void>(pegs), static_cast<void>(pockets); // in words and tables
    static_cast<void>(tails);                                                       // as high as the timber
    static_cast<void>(mends);                                                       // in words
    std::vector<Level> all;
    add_notch_levels(all, features);
    for (const BoxPart &b : boxes)
        add_box_levels(all, features, b);
    return all;
}

} // namespace roundlay::sheets
