#include "kernel/layout/openings/openings.h"
#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay {

namespace {

std::vector<const CornerPlace *> outside_corners(const Layout &layout) {
    std::vector<const CornerPlace *> corners;
    for (const CornerPlace &corner : layout.corners)
        if (corner.kind == CornerKind::corner) corners.push_back(&corner);
    return corners;
}

bool lies_within(const std::vector<const CornerPlace *> &outline, Vec2 p) {
    bool within = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i]->centre, b = outline[(i + 1) % outline.size()]->centre;
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
            within = !within;
    }
    return within;
}

/// A tape runs there without leaving the house.
bool runs_through(const std::vector<const CornerPlace *> &outline, std::size_t i, std::size_t j) {
    constexpr int parts = 16;
    if (j == i + 1 || (i == 0 && j + 1 == outline.size())) return false; // that is a wall
    for (int part = 1; part < parts; ++part)
        if (!lies_within(outline, outline[i]->centre +
                                      (1.0 * part / parts) * (outline[j]->centre - outline[i]->centre)))
            return false;
    return true;
}

bool has_diagonal(const Record &record, const std::string &from, const std::string &to) {
    return std::ranges::any_of(record.diagonals, [&](const Diagonal &d) {
        return (d.from == from && d.to == to) || (d.from == to && d.to == from);
    });
}

void add_diagonals(Record &record, const Layout &layout) {
    const auto outline = outside_corners(layout);
    for (std::size_t i = 0; i < outline.size(); ++i)
        for (std::size_t j = i + 2; j < outline.size(); ++j) {
            const std::string from = corner_name(record, layout, outline[i]->name),
                              to = corner_name(record, layout, outline[j]->name);
            if (!runs_through(outline, i, j) || has_diagonal(record, from, to)) continue;
            record.diagonals.push_back({from, to, ReadFrom::outside, {}, ""});
        }
}

void add_openings(Record &record, const Shell &shell, const Layout &layout) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const std::string name = name_of(shell, i);
        if (std::ranges::find(record.openings, name, &RecordedOpening::name) != record.openings.end())
            continue;
        const auto wall = wall_named(layout, shell.openings[i].wall);
        if (!wall) continue;
        RecordedOpening opening;
        opening.name = name;
        opening.wall = shell.openings[i].wall;
        opening.zero = corner_name(record, layout, layout.corners[layout.walls[*wall].start_corner].name);
        record.openings.push_back(opening);
    }
}

} // namespace

Record with_house_to_measure(const Record &record, const Shell &shell, const Layout &layout) {
    Record all = record;
    for (const WallPlace &wall : layout.walls)
        if (std::ranges::find(all.walls, wall.name, &RecordedWall::wall) == all.walls.end()) {
            all.walls.emplace_back();
            all.walls.back().wall = wall.name;
        }
    for (const CornerPlace &corner : layout.corners) {
        const std::string name = corner_name(record, layout, corner.name);
        if (std::ranges::find(all.corners, name, &RecordedCorner::name) != all.corners.end()) continue;
        all.corners.emplace_back();
        all.corners.back().name = name;
        all.corners.back().walls = {layout.walls[corner.ends].name, layout.walls[corner.starts].name};
    }
    add_diagonals(all, layout);
    add_openings(all, shell, layout);
    return all;
}

} // namespace roundlay
