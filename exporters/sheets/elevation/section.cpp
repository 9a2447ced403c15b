#include "exporters/sheets/elevation/section.h"

#include "exporters/sheets/drawing/board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/elevation/cut_through.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "kernel/layout/plan/wall_side.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5;
constexpr double least_section_scale = 1.0 / 20; ///< no smaller than needed to fit
constexpr double same_height = 0.5;              ///< mm of wood: heights nearer than this are one mark

/// A log where the section cuts it.
struct CutLog {
    std::string tag;
    double low = 0, high = 0;
};

struct SectionWanted {
    const Shell &shell;
    const Layout &layout;
    const Bodies &bodies;
    const Words &words;
    Index<WallPlace> wall;
};

/// What the section shows, millimetres of wood: across = from the outside face inward, up = height.
struct SeenSection {
    SeenShell seen;
    std::vector<CutLog> logs; ///< ascending
};

/// How low and how high the faces from there on reach.
CutLog log_cut(const std::string &tag, const std::vector<GreyFace> &greys, std::size_t from) {
    CutLog log{tag, 1e9, -1e9};
    for (std::size_t i = from; i < greys.size(); ++i)
        for (const Vec2 p : greys[i].rings.front()) {
            log.low = std::min(log.low, p.y);
            log.high = std::max(log.high, p.y);
        }
    return log;
}

SeenSection seen_section(const SectionWanted &w, double x) {
    SeenSection section;
    std::vector<Polyhedron> solids;
    for (const Piece &piece : w.layout.pieces) {
        if (!is_log_of(piece, w.wall)) continue;
        std::optional<Polyhedron> solid = beyond(w.layout, w.bodies, w.wall, piece, x);
        if (!solid) continue;
        solids.push_back(std::move(*solid));
        const auto greys = section.seen.greys.size();
        add_greys_at(section.seen.greys, solids.back(), section_projection(), x);
        const CutLog log = log_cut(piece.tag, section.seen.greys, greys);
        if (log.low < log.high) section.logs.push_back(log);
    }
    section.seen.edges = visible_edges_of(solids, section_projection());
    std::sort(section.logs.begin(), section.logs.end(),
              [](const CutLog &a, const CutLog &b) { return a.low < b.low; });
    return section;
}

std::string caption_words(const SectionWanted &w, const SectionPlace &place) {
    if (!place.opening) return w.words.say("through the wall");
    const Opening &opening = w.shell.openings.at(*place.opening);
    if (!opening.name.empty()) return w.words.say("through %1", opening.name);
    return opening.kind == OpeningKind::door ? w.words.say("through door") : w.words.say("through window");
}

void add_mark(std::vector<Mark> &marks, double z, double scale, const std::string &number) {
    for (const Mark &known : marks)
        if (std::abs(known.at - z * scale) < same_height * scale) return;
    marks.push_back({z * scale, number, z == 0});
}

/// Outside: tops of the logs with their tags. Inside: what is not log, gaps and the opening.
void add_heights(Board &board, const SectionWanted &w, const SeenSection &section, double scale) {
    const double thickness = w.layout.walls[w.wall].thickness;
    std::vector<Mark> tops, unders;
    add_mark(tops, 0, scale, w.words.length(0));
    add_mark(unders, 0, scale, w.words.length(0));
    for (const CutLog &log : section.logs) {
        add_mark(tops, log.high, scale, w.words.length(log.high) + "  " + log.tag);
        add_mark(unders, log.low, scale, w.words.length(log.low));
    }
    RunningLine line;
    line.lettering = lettering;
    line.distance = 4;
    line.side = Toward::left;
    add_running_dimensions(board, tops, line);
    line.side = Toward::right;
    line.edge = thickness * scale;
    add_running_dimensions(board, unders, line);
}

void add_thickness(Board &board, const SectionWanted &w, double scale) {
    const double thickness = w.layout.walls[w.wall].thickness;
    RunningLine line;
    line.lettering = lettering;
    line.side = Toward::down;
    line.distance = 5;
    add_running_dimensions(
        board, {{0, w.words.length(0), true}, {thickness * scale, w.words.length(thickness), false}}, line);
}

/// One place where a wall is cut, and what is seen there.
struct WallCut {
    SectionWanted wanted;
    SectionPlace place;
    SeenSection section;
};

/// Which side is which, and over the drawing what is cut where.
void add_captions(Board &board, const SectionWanted &w, const SectionPlace &place, double thickness) {
    const Rect drawn = bounds(board.items());
    Text outside = lettered(w.words.word(side_of_wall(w.layout, w.wall, true)), {-2.5, drawn.y0 + 1}, 2.5,
                            false, Role::caption);
    outside.across = Across::right;
    board.add(outside);
    board.add(lettered(w.words.word(side_of_wall(w.layout, w.wall, false)), {thickness + 2.5, drawn.y0 + 1},
                       2.5, false, Role::caption));
    const std::string where = w.words.say("%1 from the left", in_mm(place.x));
    board.add(lettered(where, {drawn.x0, drawn.y1 + 3}, 2.5, false, Role::caption));
    board.add(lettered(caption_words(w, place), {drawn.x0, drawn.y1 + 7.5}, 2.5, false, Role::caption));
    board.add(
        lettered(w.words.say("Section %1", place.name), {drawn.x0, drawn.y1 + 12}, 3.5, true, Role::caption));
}

Block section_block(const WallCut &cut, const Scale &scale) {
    const double k = scale.ratio;
    const auto &[w, place, section] = cut;
    const double thickness = w.layout.walls[w.wall].thickness;
    Board board;
    add_wood(board, section.seen, k);
    board.add(Path{{{-3, 0}, {thickness * k + 3, 0}}, false, Line::strong, ""});
    add_heights(board, w, section, k);
    add_thickness(board, w, k);
    add_captions(board, w, place, thickness * k);
    return {bounds(board.items()).grown(2), std::move(board).finished()};
}

std::vector<WallCut> cuts_of(const Draft &draft, const Words &words) {
    std::vector<WallCut> all;
    for (const auto wall : draft.layout.walls.indices())
        for (const SectionPlace &place : section_places(draft.shell, draft.layout, wall)) {
            const SectionWanted wanted{draft.shell, draft.layout, draft.bodies, words, wall};
            all.push_back({wanted, place, seen_section(wanted, place.x)});
        }
    return all;
}

/// All sections at one scale; nothing where one of them is too high for the sheet.
std::optional<std::vector<Page>> pages_at(const std::vector<WallCut> &cuts, const Scale &scale,
                                          PaperSize size) {
    std::vector<Page> pages{empty_page(size)};
    for (const WallCut &cut : cuts)
        if (!put_on(pages, size, std::make_shared<const Block>(section_block(cut, scale))))
            return std::nullopt;
    return pages;
}

Titled sections(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const std::vector<WallCut> cuts = cuts_of(draft, words);
    Best<std::vector<Page>> best;
    const auto draw = [&](const Scale &scale) {
        if (auto pages = pages_at(cuts, scale, size)) best.offer_pages(std::move(*pages), scale);
    };
    try_scales(shell_scales(words.system()), draw, [&](const Scale &scale) {
        return best.is_perfect() || (!best.is_empty() && scale.ratio < least_section_scale);
    });
    return {
        best.is_empty() ? pages_not_drawn(size, words, words.say("A section")) : best.drawing(),
        {words.say("Sections"), words.say("seen toward the wall's left end"), words.say("Section"), "S-1",
         said_scale(best.scale(), words), false,
         words.unit_note() + words.say(" Left: tops of the logs; right: undersides; over the foundation.")},
        {words.say("Sections"), "sections", ""}};
}

} // namespace

Subject section_subject() {
    return {"sections", [](const Draft &draft) { return std::vector{sections(draft)}; }};
}

} // namespace roundlay::sheets
