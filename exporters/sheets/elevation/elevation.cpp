#include "exporters/sheets/elevation/elevation.h"

#include "exporters/sheets/elevation/wall_block.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

/// The largest scale at which the elevation fits the paper and every tag finds room; else the one with the
/// fewest tags left over.
std::optional<WallBlock> best_block(WallWanted wanted, const Rect &area, double highest) {
    std::optional<WallBlock> best;
    for (const Scale &scale : shell_scales(wanted.words->system()))
        for (const double lettering : {3.5, 2.5}) {
            wanted.scale = &scale;
            wanted.lettering = lettering;
            WallBlock made = wall_block(wanted);
            if (made.block.room.width() > area.width() || made.block.room.height() > highest) continue;
            if (!best || made.without_tag.size() < best->without_tag.size()) best = std::move(made);
            if (best->without_tag.empty()) return best;
        }
    return best;
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
    std::string note =
        words.unit_note() + " Left: tops of the logs; right: openings; all over the foundation.";
    if (shell.rounds.gap.mm() > 0)
        note += " Gap between logs " + words.length(wall.pitch - wall.log_height) + ".";
    return note;
}

} // namespace

std::vector<Sheet> wall_elevations(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                                   const SheetOptions &options) {
    std::vector<Sheet> sheets;
    const PaperSize size = paper_for(shell, options);
    const Words words(shell.units, options.denominator);
    const Rect area = inner_area(size);
    const double over_block = area.height() - title_block_area(size).height();
    for (int w = 0; w < static_cast<int>(layout.walls.size()); ++w) {
        const WallPlace &wall = layout.walls[static_cast<std::size_t>(w)];
        std::vector<Page> pages{empty_page(size)};
        std::vector<std::string> without;
        for (const WallSide side : {WallSide::outside, WallSide::inside}) {
            const SeenShell seen = seen_wall(layout, bodies, w, side);
            const auto made =
                best_block({&shell, &layout, &seen, &words, w, side, nullptr, 0}, area, over_block);
            if (!made) continue;
            put_on(pages, size, made->block);
            for (const std::string &tag : made->without_tag)
                if (std::find(without.begin(), without.end(), tag) == without.end()) without.push_back(tag);
        }
        if (!without.empty()) put_on(pages, size, left_over_block(without));
        put_on(pages, size, note_block(heights_note(shell, wall, words), 90));
        TitleFields fields = options.fields;
        fields.title = "Wall " + wall.name;
        fields.supplement = "elevations from outside and inside";
        fields.document_type = "Wall elevation";
        fields.number = "W-" + wall.name;
        fields.scale = "as shown";
        fields.angle = options.angle;
        fields.symbol = false;
        fields.note = words.unit_note();
        fields.shell = layout.name;
        for (Sheet &sheet : framed(pages, size, fields, {"Wall " + wall.name, "wall:" + wall.name, "Walls"}))
            sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
