#include "exporters/sheets/elevation/house_section.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/elevation/cut_through.h"
#include "exporters/sheets/elevation/section.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"
#include "kernel/layout/plan/wall_side.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5;
constexpr double least_scale = 1.0 / 50; ///< no smaller than needed to fit
constexpr double same_place = 0.5;       ///< mm of wood: what lies nearer is one mark

/// How far what is cut of one wall reaches, or of one floor's timbers.
struct Reach {
    Rect area = Rect::nothing(); ///< x: inward from the wall's outside face, y: up
};

/// Millimetres of wood in the frame of the wall that is cut across.
struct SeenHouse {
    SectionPlace place;
    SeenShell seen;
    std::map<Index<WallPlace>, Reach> walls;
    std::map<Index<FloorPlace>, Reach> floors; ///< timbers, cut or seen behind
};

Rect reach_of(const std::vector<GreyFace> &greys, std::size_t from) {
    Rect area = Rect::nothing();
    for (std::size_t i = from; i < greys.size(); ++i)
        for (const Vec2 p : greys[i].rings.front())
            area = joined(area, p);
    return area;
}

/// Its lowest and highest timber there, whether cut or behind.
Rect reach_of(const Polyhedron &solid) {
    Rect area = Rect::nothing();
    for (const Vec3 p : solid.vertices)
        area = joined(area, Vec2{p.y, p.z});
    return area;
}

SeenHouse seen_house(const Draft &draft, Index<WallPlace> wall) {
    const Layout &layout = draft.layout;
    SeenHouse house{section_places(draft.shell, layout, wall).front(), {}, {}, {}};
    std::vector<Polyhedron> solids;
    for (const Piece &piece : layout.pieces) {
        std::optional<Polyhedron> solid = beyond(layout, draft.bodies, wall, piece, house.place.x);
        if (!solid) continue;
        const std::size_t known = house.seen.greys.size();
        add_greys_at(house.seen.greys, *solid, section_projection(), house.place.x);
        const Rect cut = reach_of(house.seen.greys, known);
        if (piece.timber) {
            Rect &area = house.floors[layout.timbers.at(*piece.timber).floor].area;
            area = joined(area, reach_of(*solid));
        } else if (!cut.empty()) {
            Rect &area = house.walls[piece.wall].area;
            area = joined(area, cut);
        }
        solids.push_back(std::move(*solid));
    }
    house.seen.edges = visible_edges_of(std::move(solids), section_projection());
    return house;
}

void add_mark(std::vector<Mark> &marks, double at, double scale, const std::string &number) {
    for (const Mark &known : marks)
        if (std::abs(known.at - at * scale) < same_place * scale) return;
    marks.push_back({at * scale, number, false});
}

std::vector<Mark> with_origin(std::vector<Mark> marks, double origin, double scale, const Words &words) {
    std::erase_if(marks, [&](const Mark &m) { return std::abs(m.at - origin * scale) < same_place * scale; });
    marks.push_back({origin * scale, words.length(0), true});
    std::ranges::sort(marks, {}, &Mark::at);
    return marks;
}

/// Left: floors, under and over their timbers. Right: tops of the walls that are cut.
void add_heights(Board &board, const Draft &draft, const SeenHouse &house, double scale, const Words &words) {
    const Rect drawn = bounds(board.items());
    std::vector<Mark> floors, tops;
    for (const auto &[floor, reach] : house.floors) {
        const FloorPlace &place = draft.layout.floors.at(floor);
        add_mark(floors, place.level, scale,
                 words.length(place.level) + "  " + words.say("floor %1", place.name));
        add_mark(floors, reach.area.y0, scale, words.length(reach.area.y0));
    }
    for (const auto &[wall, reach] : house.walls)
        add_mark(tops, reach.area.y1, scale,
                 words.length(reach.area.y1) + "  " + words.say("wall %1", draft.layout.walls.at(wall).name));
    RunningLine line;
    line.lettering = lettering;
    line.distance = 4;
    line.side = Toward::left;
    line.edge = drawn.x0;
    if (!floors.empty()) add_running_dimensions(board, with_origin(floors, 0, scale, words), line);
    line.side = Toward::right;
    line.edge = drawn.x1;
    add_running_dimensions(board, with_origin(tops, 0, scale, words), line);
}

/// From the outside face of the wall that the section looks along; faces of all walls that are cut.
void add_widths(Board &board, const SeenHouse &house, double scale, const Words &words) {
    std::vector<Mark> faces;
    double origin = 0;
    for (const auto &[wall, reach] : house.walls)
        origin = std::min(origin, reach.area.x0);
    for (const auto &[wall, reach] : house.walls)
        for (const double at : {reach.area.x0, reach.area.x1})
            add_mark(faces, at, scale, words.length(at - origin));
    RunningLine line;
    line.lettering = lettering;
    line.distance = 5;
    line.side = Toward::down;
    line.edge = bounds(board.items()).y0;
    add_running_dimensions(board, with_origin(faces, origin, scale, words), line);
}

Block house_block(const Draft &draft, const SeenHouse &house, Index<WallPlace> wall, double scale,
                  const Words &words) {
    Board board;
    add_wood(board, house.seen, scale);
    const Rect wood = bounds(board.items());
    board.add(Path{{{wood.x0 - 3, 0}, {wood.x1 + 3, 0}}, false, Line::strong, ""});
    add_heights(board, draft, house, scale, words);
    add_widths(board, house, scale, words);
    const Rect drawn = bounds(board.items());
    const std::string &name = draft.layout.walls.at(wall).name;
    board.add(lettered(
        words.say("%1 from the left of wall %2, seen toward its left end", in_mm(house.place.x), name),
        {drawn.x0, drawn.y1 + 3}, lettering, false, Role::caption));
    board.add(lettered(words.say("Section %1, through the whole house", house.place.name),
                       {drawn.x0, drawn.y1 + 7.5}, 3.5, true, Role::caption));
    return {bounds(board.items()).grown(2), std::move(board).finished()};
}

/// Across the first wall and the next.
std::vector<Index<WallPlace>> walls_cut(const Layout &layout) {
    std::vector<Index<WallPlace>> walls;
    for (const auto wall : Indices<WallPlace>(std::min<std::size_t>(2, outer_walls(layout))))
        walls.push_back(wall);
    return walls;
}

Titled house_sections(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const std::vector<Index<WallPlace>> walls = walls_cut(draft.layout);
    std::vector<SeenHouse> houses;
    for (const Index<WallPlace> wall : walls)
        houses.push_back(seen_house(draft, wall));
    Best<std::vector<Page>> best;
    const auto draw = [&](const Scale &scale) {
        std::vector<Page> pages{empty_page(size)};
        for (std::size_t i = 0; i < walls.size(); ++i)
            if (!put_on(pages, size,
                        std::make_shared<const Block>(
                            house_block(draft, houses[i], walls[i], scale.ratio, words))))
                return;
        best.offer_pages(std::move(pages), scale);
    };
    try_scales(shell_scales(words.system()), draw, [&](const Scale &scale) {
        return best.is_perfect() || (!best.is_empty() && scale.ratio < least_scale);
    });
    const std::string title = words.say("Sections through the whole house");
    return {best.is_empty() ? pages_not_drawn(size, words, words.say("A section")) : best.drawing(),
            {title, words.say("walls, floors and what is seen behind"), words.say("Section"), "S-2",
             said_scale(best.scale(), words), false,
             words.unit_note() + words.say(" Heights over the foundation.")},
            {title, "house-sections", ""}};
}

} // namespace

Subject house_section_subject() {
    return {"sections through the house",
            [](const Draft &draft) { return std::vector{house_sections(draft)}; }};
}

} // namespace roundlay::sheets
