#include "exporters/sheets/plan/foundation_tables.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

/// Where the foundation stands higher, measured along the walls.
Table step_table(const Layout &layout, const Words &words) {
    Table table = table_called(words, words.say("Steps of the foundation"));
    table.columns = {flush_left(words.say("Step"), 20), flush_left(words.say("Wall"), 14),
                     flush_right(words.say("From left corner"), 26), flush_right(words.say("To"), 26),
                     flush_right(words.say("Rise"), 22)};
    for (const StepPlace &step : layout.steps) {
        const WallPlace &wall = layout.walls.at(step.wall);
        table.rows.push_back({words.name(step.name), wall.name, words.length(std::max(step.from, 0.0)),
                              words.length(std::min(step.to, wall.length)), words.length(step.rise)});
    }
    return table;
}

/// The logs that lie on the foundation, and which way round.
Table sill_table(const Layout &layout, const Words &words) {
    Table table = table_called(words, words.say("Sill logs, bedded on the foundation"));
    table.columns = {flush_left(words.say("Tag"), 34), flush_left(words.say("Log"), 20)};
    add_sizes(table.columns, words);
    table.columns.push_back(flush_left(words.say("Butt, from outside"), 20));
    table.columns.push_back(flush_right(words.say("From left corner"), 26));
    for (const Piece &piece : layout.pieces) {
        if (!is_bedded(layout, piece)) continue;
        const Blank stock = stock_of(piece).size;
        const Vec3 origin = layout.walls.at(piece.wall).frame.to_local(piece.frame.origin);
        table.rows.push_back(
            {piece.tag, piece.log == LogKind::full ? words.say("full") : words.say("half"),
             words.length(stock.length), words.length(stock.width), words.length(stock.height),
             piece.butt_at_datum ? words.say("left") : words.say("right"),
             origin.x < -0.5 ? words.say("%1 before it", in_mm(-origin.x)) : words.length(origin.x)});
    }
    return table;
}

} // namespace

std::vector<Table> foundation_tables(const Shell &shell, const Layout &layout, const Words &words) {
    std::vector<Table> tables{sill_table(layout, words)};
    if (!layout.steps.empty()) tables.push_back(step_table(layout, words));
    if (Table bores = bore_table(shell, layout, words, std::nullopt); !bores.rows.empty())
        tables.push_back(std::move(bores));
    return tables;
}

} // namespace roundlay::sheets
