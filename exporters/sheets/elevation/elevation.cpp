#include "exporters/sheets/elevation/elevation.h"

#include "exporters/sheets/elevation/peg_table.h"
#include "exporters/sheets/elevation/sides.h"
#include "exporters/sheets/elevation/wall_block.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/layout/plan/wall_side.h"

#include <algorithm>
#include <span>

namespace roundlay::sheets {
namespace {

void add_new(std::vector<std::string> &all, const std::vector<std::string> &tags) {
    for (const std::string &tag : tags)
        if (std::find(all.begin(), all.end(), tag) == all.end()) all.push_back(tag);
}

/// One side of a wall, or both beside or under one another.
struct Drawn {
    Page page;
    std::vector<std::string> without_tag, without_size;
};

struct SideBlock {
    SharedBlock block;
    std::vector<std::string> without_tag, without_size;
};

/// From the largest scale down, the first that fits one sheet and gives every tag and size room; else the one
/// with the fewest left over.
void offer(Best<Drawn> &best, std::span<const SideBlock> blocks, const Scale &scale, PaperSize size) {
    if (best.is_perfect()) return;
    Drawn made{empty_page(size), {}, {}};
    for (const SideBlock &side : blocks) {
        if (!made.page.put(side.block)) return;
        add_new(made.without_tag, side.without_tag);
        add_new(made.without_size, side.without_size);
    }
    const Cost cost{made.without_tag.size() + made.without_size.size(), 1};
    best.offer(std::move(made), &scale, cost);
}

/// The best drawing of each side by itself, and of both on one sheet.
struct Sides {
    Best<Drawn> apart[2], both;
    bool is_perfect() const { return both.is_perfect() && apart[0].is_perfect() && apart[1].is_perfect(); }
};

/// Both sides on one sheet where that costs little of the scale and no tag; else each on its own.
std::vector<Drawn> chosen(const Sides &sides) {
    constexpr double worth_it = 0.5; // of the scale that each would have alone
    std::vector<Drawn> apart;
    double scale = 0;
    std::size_t untagged = 0;
    for (const Best<Drawn> &side : sides.apart) {
        if (side.is_empty()) continue;
        scale = std::max(scale, side.scale()->ratio);
        untagged = std::max(untagged, side.cost().left_over);
        apart.push_back(side.drawing());
    }
    const Best<Drawn> &both = sides.both;
    const bool one_will_do =
        !both.is_empty() && both.scale()->ratio >= worth_it * scale && both.cost().left_over <= untagged;
    return one_will_do ? std::vector{both.drawing()} : apart;
}

std::vector<SideBlock> blocks_of(const WallWanted (&sides)[2], const Scale &scale, double lettering,
                                 bool bores_along) {
    std::vector<SideBlock> blocks;
    for (WallWanted side : sides) {
        side.scale = &scale;
        side.lettering = lettering;
        side.bores_along = bores_along;
        WallBlock made = wall_block(side);
        blocks.push_back({std::make_shared<const Block>(std::move(made.block)), std::move(made.without_tag),
                          std::move(made.without_size)});
    }
    return blocks;
}

std::vector<Drawn> sheets_of(const WallWanted (&sides)[2], PaperSize size, bool bores_along) {
    Sides best;
    const auto draw = [&](const Scale &scale) {
        for (const double lettering : {3.5, 2.5}) {
            if (best.is_perfect()) return;
            const std::vector<SideBlock> blocks = blocks_of(sides, scale, lettering, bores_along);
            const std::span<const SideBlock> all(blocks);
            offer(best.apart[0], all.first(1), scale, size);
            offer(best.apart[1], all.last(1), scale, size);
            offer(best.both, all, scale, size);
        }
    };
    try_scales(shell_scales(sides[0].words->system()), draw,
               [&](const Scale &) { return best.is_perfect(); });
    return chosen(best);
}

/// Where the wall ends, beside the rounds' height, which has a gap on top.
std::string standing_note(const Layout &layout, Index<WallPlace> wall, const Words &words) {
    for (const WallStanding &s : standing_of(layout))
        if (s.wall == wall)
            return words.say(
                " The wall has %1 logs, one on another, and stands %2 high; %3 rounds are %4.", s.logs,
                s.highest - s.lowest < 1 ? words.length(s.highest)
                                         : words.say("%1 to %2", in_mm(s.lowest), in_mm(s.highest)),
                layout.rounds, in_mm(layout.height));
    return "";
}

std::string heights_note(const Shell &shell, const WallHeights &wall, const Words &words) {
    std::string note = words.unit_note() +
                       words.say(" Left: tops of the logs at their left ends; right: openings and steps; all "
                                 "over the lowest foundation.");
    if (shell.rounds.gap.mm() > 0)
        note += words.say(" Gap between logs %1.", in_mm(wall.pitch - wall.log_height));
    return note;
}

/// Tables of what found no room on the drawings.
void put_left_over(std::vector<Page> &pages, PaperSize size, const Words &words,
                   const std::vector<std::string> &without, const std::vector<std::string> &without_size) {
    if (!without.empty())
        put_on(pages, size,
               left_over_table(words, words.say("Logs too small here for their tags, from left to right"),
                               without));
    if (!without_size.empty())
        put_on(pages, size,
               left_over_table(
                   words,
                   words.say("Openings too small here for their names and sizes, places from the left"),
                   without_size));
}

/// The drawings, with tables of what found no room on them.
std::vector<Page> drawn_pages(const WallWanted (&sides)[2], PaperSize size, const std::string &title) {
    std::vector<Page> pages;
    std::vector<std::string> without, without_size;
    std::vector<Drawn> all = sheets_of(sides, size, true);
    if (all.empty()) all = sheets_of(sides, size, false); // more measures than the paper is wide
    for (const Drawn &drawn : all) {
        pages.push_back(drawn.page);
        add_new(without, drawn.without_tag);
        add_new(without_size, drawn.without_size);
    }
    if (pages.empty()) pages = pages_not_drawn(size, *sides[0].words, title);
    put_left_over(pages, size, *sides[0].words, without, without_size);
    return pages;
}

/// What the record says of the wall's logs, from below up.
Table found_in_wall(const SheetOptions &options, const WallWanted &side) {
    std::vector<Index<Piece>> logs;
    for (const Index<Piece> piece : side.layout->pieces.indices())
        if (is_log_of(side.layout->pieces[piece], side.wall)) logs.push_back(piece);
    return found_table(options, *side.layout, logs, *side.words);
}

Titled elevations_of(const WallWanted (&sides)[2], PaperSize size, const SheetOptions &options) {
    const Layout &layout = *sides[0].layout;
    const Words &words = *sides[0].words;
    const WallPlace &wall = layout.walls[sides[0].wall];
    const std::string title = words.say("Wall %1", wall.name);
    std::vector<Page> pages = drawn_pages(sides, size, title);
    Table bores = bore_table(*sides[0].shell, layout, words, sides[0].wall);
    if (!bores.rows.empty()) put_on(pages, size, bores);
    const Table pegs = pegs_in_place(*sides[0].shell, layout, sides[0].wall, words);
    if (!pegs.rows.empty()) put_on(pages, size, pegs);
    const Table found = found_in_wall(options, sides[0]);
    if (!found.rows.empty()) put_on(pages, size, found);
    const std::string note = heights_note(*sides[0].shell, layout.heights[sides[0].wall], words) +
                             standing_note(layout, sides[0].wall, words);
    put_on(pages, size, note_table(words, note, 90));
    return {std::move(pages),
            {title, seen_from_both(layout, sides[0].wall, words), words.say("Wall elevation"),
             "W-" + wall.name, words.say("as shown"), false, words.unit_note()},
            {title, "wall:" + wall.name, words.say("Walls")}};
}

Titled elevations(const Draft &d, Index<WallPlace> wall) {
    const Words words = d.words();
    const SeenShell outside = seen_wall(d.layout, d.bodies, wall, WallSide::outside);
    const SeenShell inside = seen_wall(d.layout, d.bodies, wall, WallSide::inside);
    const WallWanted sides[2]{{&d.shell, &d.layout, &outside, &words, wall, WallSide::outside, nullptr, 0},
                              {&d.shell, &d.layout, &inside, &words, wall, WallSide::inside, nullptr, 0}};
    return elevations_of(sides, d.size(), d.options);
}

} // namespace

Subject wall_subject(const Layout &layout, Index<WallPlace> wall) {
    return {"wall " + std::to_string(wall.number() + 1) + ", " + layout.walls.at(wall).name,
            [wall](const Draft &draft) { return std::vector{elevations(draft, wall)}; }};
}

} // namespace roundlay::sheets
