#include "exporters/sheets/plan/foundation_tables.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

/// Where the foundation stands higher, measured along the walls.
Table step_table(const Layout &layout, const Words &words) {
    Table table;
    table.title = "Steps of the foundation";
    table.columns = {flush_left("Step", 20), flush_left("Wall", 14), flush_right("From left corner", 26),
                     flush_right("To", 26), flush_right("Rise", 22)};
    for (const StepPlace &step : layout.steps) {
        const WallPlace &wall = layout.walls.at(static_cast<std::size_t>(step.wall));
        table.rows.push_back({step.name, wall.name, words.length(std::max(step.from, 0.0)),
                              words.length(std::min(step.to, wall.length)), words.length(step.rise)});
    }
    return table;
}

/// The logs that lie on the foundation, and which way round.
Table sill_table(const Layout &layout, const Words &words) {
    Table table;
    table.title = "Sill logs, bedded on the foundation";
    table.columns = {flush_left("Tag", 34), flush_left("Log", 20)};
    add_sizes(table.columns);
    table.columns.push_back(flush_left("Butt, from outside", 20));
    table.columns.push_back(flush_right("From left corner", 26));
    for (const Piece &piece : layout.pieces) {
        if (!is_bedded(layout, piece)) continue;
        const Blank stock = stock_of(piece).size;
        const Vec3 origin =
            layout.walls.at(static_cast<std::size_t>(piece.wall)).frame.to_local(piece.frame.origin);
        table.rows.push_back(
            {piece.tag, piece.log == LogKind::full ? "full" : "half", words.length(stock.length),
             words.length(stock.width), words.length(stock.height), piece.butt_at_datum ? "left" : "right",
             origin.x < -0.5 ? words.length(-origin.x) + " before it" : words.length(origin.x)});
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
