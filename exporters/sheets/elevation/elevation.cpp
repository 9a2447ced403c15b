#include "exporters/sheets/elevation/elevation.h"

#include "exporters/sheets/elevation/wall_block.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

/// One or both sides of a wall, outside first.
struct Drawn {
    std::vector<WallBlock> blocks;
    double scale = 0;
    std::vector<std::string> without_tag() const {
        std::vector<std::string> all;
        for (const WallBlock &block : blocks)
            for (const std::string &tag : block.without_tag)
                if (std::find(all.begin(), all.end(), tag) == all.end()) all.push_back(tag);
        return all;
    }
};

/// The elevations that one sheet has room for, beside or under one another.
std::vector<Page> pages_for(const Drawn &drawn, PaperSize size) {
    std::vector<Page> pages{empty_page(size)};
    for (const WallBlock &made : drawn.blocks)
        put_on(pages, size, made.block);
    return pages;
}

bool on_one_sheet(const Drawn &drawn, PaperSize size) {
    Page page = empty_page(size);
    return std::all_of(drawn.blocks.begin(), drawn.blocks.end(),
                       [&](const WallBlock &made) { return page.put(made.block); });
}

/// The largest scale at which these sides fit one sheet and every tag finds room; else the one with the
/// fewest tags left over.
std::optional<Drawn> best_drawn(const std::vector<WallWanted> &sides, PaperSize size) {
    std::optional<Drawn> best;
    for (const Scale &scale : shell_scales(sides[0].words->system()))
        for (const double lettering : {3.5, 2.5}) {
            Drawn made{{}, scale.ratio};
            for (WallWanted side : sides) {
                side.scale = &scale;
                side.lettering = lettering;
                made.blocks.push_back(wall_block(side));
            }
            if (!on_one_sheet(made, size)) continue;
            if (!best || made.without_tag().size() < best->without_tag().size()) best = std::move(made);
            if (best->without_tag().empty()) return best;
        }
    return best;
}

/// Both sides on one sheet where that costs little of the scale and no tag; else each on its own.
std::vector<Drawn> sheets_of(const std::vector<WallWanted> &sides, PaperSize size) {
    constexpr double worth_it = 0.5; // of the scale that each would have alone
    std::vector<Drawn> apart;
    double scale = 0;
    std::size_t untagged = 0;
    for (const WallWanted &side : sides)
        if (auto drawn = best_drawn({side}, size)) {
            scale = std::max(scale, drawn->scale);
            untagged = std::max(untagged, drawn->without_tag().size());
            apart.push_back(std::move(*drawn));
        }
    auto both = best_drawn(sides, size);
    if (both && both->scale >= worth_it * scale && both->without_tag().size() <= untagged)
        return {std::move(*both)};
    return apart;
}

Block left_over_block(const std::vector<std::string> &without_tag) {
    Table table;
    table.title = "Logs too small here for their tags, from left to right";
    table.columns = {{"", Across::left, 150}};
    std::string all;
    for (const std::string &tag : without_tag)
        all += (all.empty() ? "" : ", ") + tag;
    table.rows = {{all}};
    return LaidTable(table).drawn();
}

std::string heights_note(const Shell &shell, const WallPlace &wall, const Words &words) {
    std::string note = words.unit_note() + " Left: tops of the logs at their left ends; right: openings and "
                                           "steps; all over the lowest foundation.";
    if (shell.rounds.gap.mm() > 0)
        note += " Gap between logs " + words.length(wall.pitch - wall.log_height) + ".";
    return note;
}

std::vector<Sheet> elevations_of(const std::vector<WallWanted> &sides, PaperSize size,
                                 const SheetOptions &options) {
    const Layout &layout = *sides[0].layout;
    const WallPlace &wall = layout.walls[static_cast<std::size_t>(sides[0].wall)];
    std::vector<Page> pages;
    std::vector<std::string> without;
    for (const Drawn &drawn : sheets_of(sides, size)) {
        for (Page &page : pages_for(drawn, size))
            pages.push_back(std::move(page));
        for (const std::string &tag : drawn.without_tag())
            if (std::find(without.begin(), without.end(), tag) == without.end()) without.push_back(tag);
    }
    if (pages.empty()) return {};
    if (!without.empty()) put_on(pages, size, left_over_block(without));
    put_on(pages, size, note_block(heights_note(*sides[0].shell, wall, *sides[0].words), 90));
    TitleFields fields = options.fields;
    fields.title = "Wall " + wall.name;
    fields.supplement = "elevations from outside and inside";
    fields.document_type = "Wall elevation";
    fields.number = "W-" + wall.name;
    fields.scale = "as shown";
    fields.angle = options.angle;
    fields.symbol = false;
    fields.note = sides[0].words->unit_note();
    fields.shell = layout.name;
    return framed(pages, size, fields, {"Wall " + wall.name, "wall:" + wall.name, "Walls"});
}

} // namespace

std::vector<Sheet> wall_elevations(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                                   const SheetOptions &options) {
    std::vector<Sheet> sheets;
    const Words words(shell.units, options.denominator);
    for (int w = 0; w < static_cast<int>(layout.walls.size()); ++w) {
        const SeenShell outside = seen_wall(layout, bodies, w, WallSide::outside);
        const SeenShell inside = seen_wall(layout, bodies, w, WallSide::inside);
        const std::vector<WallWanted> sides{
            {&shell, &layout, &outside, &words, w, WallSide::outside, nullptr, 0},
            {&shell, &layout, &inside, &words, w, WallSide::inside, nullptr, 0}};
        for (Sheet &sheet : elevations_of(sides, paper_for(shell, options), options))
            sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
