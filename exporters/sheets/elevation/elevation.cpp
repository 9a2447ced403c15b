#include "exporters/sheets/elevation/elevation.h"

#include "exporters/sheets/elevation/wall_block.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "kernel/layout/standing.h"
#include "kernel/layout/wall_side.h"

#include <algorithm>
#include <optional>
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
    double scale = 0;
    std::size_t left_over() const { return without_tag.size() + without_size.size(); }
};

/// Of what is offered, from the largest scale down: the first that fits one sheet and gives every tag and
/// size room; else the one with the fewest left over.
class Best {
  public:
    void offer(std::span<const WallBlock> blocks, double scale, PaperSize size) {
        if (has_all()) return;
        Drawn made{empty_page(size), {}, {}, scale};
        for (const WallBlock &block : blocks) {
            if (!made.page.put(block.block)) return;
            add_new(made.without_tag, block.without_tag);
            add_new(made.without_size, block.without_size);
        }
        if (!found_ || made.left_over() < found_->left_over()) found_ = std::move(made);
    }
    bool has_all() const { return found_ && found_->left_over() == 0; }
    const std::optional<Drawn> &found() const { return found_; }

  private:
    std::optional<Drawn> found_;
};

/// Both sides on one sheet where that costs little of the scale and no tag; else each on its own.
std::vector<Drawn> chosen(const Best (&sides)[2], const Best &both) {
    constexpr double worth_it = 0.5; // of the scale that each would have alone
    std::vector<Drawn> apart;
    double scale = 0;
    std::size_t untagged = 0;
    for (const Best &side : sides)
        if (const auto &drawn = side.found()) {
            scale = std::max(scale, drawn->scale);
            untagged = std::max(untagged, drawn->left_over());
            apart.push_back(*drawn);
        }
    const auto &one = both.found();
    if (one && one->scale >= worth_it * scale && one->left_over() <= untagged) return {*one};
    return apart;
}

std::vector<Drawn> sheets_of(const WallWanted (&sides)[2], PaperSize size, bool bores_along) {
    Best apart[2], both;
    for (const Scale &scale : shell_scales(sides[0].words->system()))
        for (const double lettering : {3.5, 2.5}) {
            if (both.has_all() && apart[0].has_all() && apart[1].has_all()) break;
            std::vector<WallBlock> blocks;
            for (WallWanted side : sides) {
                side.scale = &scale;
                side.lettering = lettering;
                side.bores_along = bores_along;
                blocks.push_back(wall_block(side));
            }
            const std::span<const WallBlock> all(blocks);
            apart[0].offer(all.first(1), scale.ratio, size);
            apart[1].offer(all.last(1), scale.ratio, size);
            both.offer(all, scale.ratio, size);
        }
    return chosen(apart, both);
}

/// Where the wall ends, beside the rounds' height, which has a gap on top.
std::string standing_note(const Layout &layout, int wall, const Words &words) {
    for (const WallStanding &s : standing_of(layout))
        if (s.wall == wall)
            return " The wall has " + std::to_string(s.logs) + " logs, one on another, and stands " +
                   (s.highest - s.lowest < 1 ? "" : words.length(s.lowest) + " to ") +
                   words.length(s.highest) + " high; " + std::to_string(layout.rounds) + " rounds are " +
                   words.length(layout.height) + ".";
    return "";
}

std::string heights_note(const Shell &shell, const WallPlace &wall, const Words &words) {
    std::string note = words.unit_note() + " Left: tops of the logs at their left ends; right: openings and "
                                           "steps; all over the lowest foundation.";
    if (shell.rounds.gap.mm() > 0)
        note += " Gap between logs " + words.length(wall.pitch - wall.log_height) + ".";
    return note;
}

std::vector<Sheet> elevations_of(const WallWanted (&sides)[2], PaperSize size, const SheetOptions &options) {
    const Layout &layout = *sides[0].layout;
    const WallPlace &wall = layout.walls[static_cast<std::size_t>(sides[0].wall)];
    std::vector<Page> pages;
    std::vector<std::string> without, without_size;
    std::vector<Drawn> all = sheets_of(sides, size, true);
    if (all.empty()) all = sheets_of(sides, size, false); // more measures than the paper is wide
    for (const Drawn &drawn : all) {
        pages.push_back(drawn.page);
        add_new(without, drawn.without_tag);
        add_new(without_size, drawn.without_size);
    }
    if (pages.empty()) {
        pages.push_back(empty_page(size));
        put_on(pages, size, not_drawn("Wall " + wall.name));
    }
    if (!without.empty())
        put_on(pages, size,
               left_over_table("Logs too small here for their tags, from left to right", without));
    if (!without_size.empty())
        put_on(pages, size,
               left_over_table("Openings too small here for their names and sizes, places from the left",
                               without_size));
    Table bores = bore_table(*sides[0].shell, layout, *sides[0].words, sides[0].wall);
    if (!bores.rows.empty()) put_on(pages, size, bores);
    put_on(pages, size,
           note_table(heights_note(*sides[0].shell, wall, *sides[0].words) +
                          standing_note(layout, sides[0].wall, *sides[0].words),
                      90));
    TitleFields fields = options.fields;
    fields.title = "Wall " + wall.name;
    const int w = sides[0].wall;
    const std::string the = is_partition(layout, w) ? "the " : "";
    fields.supplement = "elevations from " + the + side_of_wall(layout, w, true) + " and " + the +
                        side_of_wall(layout, w, false);
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
        const WallWanted sides[2]{{&shell, &layout, &outside, &words, w, WallSide::outside, nullptr, 0},
                                  {&shell, &layout, &inside, &words, w, WallSide::inside, nullptr, 0}};
        for (Sheet &sheet : elevations_of(sides, paper_for(shell, options), options))
            sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
