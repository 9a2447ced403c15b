#include "exporters/sheets/plan/foundation_tables.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/plan/laid_out.h"
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

/// Doors that stand on the foundation: no sill log runs through there.
Table door_table(const Shell &shell, const Layout &layout, const Words &words) {
    Table table = table_called(words, words.say("Door gaps in the sill logs"));
    table.columns = {flush_left(words.say("Door"), 40), flush_left(words.say("Wall"), 14),
                     flush_right(words.say("From left corner"), 26), flush_right(words.say("To"), 26),
                     flush_right(words.say("Gap"), 22)};
    for (const DoorGap &gap : door_gaps(shell, layout))
        table.rows.push_back({words.name(gap.name), layout.walls.at(gap.wall).name, words.length(gap.from),
                              words.length(gap.to), words.length(gap.to - gap.from)});
    return table;
}

/// Of corners that are not square, between the two walls, inside.
Table angle_table(const Layout &layout, const Words &words) {
    Table table = table_called(words, words.say("Corners that are not square, measured inside"));
    table.columns = {flush_left(words.say("Corner"), 20), flush_right(words.say("Angle"), 26)};
    for (const CornerAngle &corner : odd_angles(layout))
        table.rows.push_back({corner.name, said_angle(corner.degrees, words)});
    return table;
}

/// Over the outside faces, by which the plan is laid out and checked.
Table diagonal_table(const Layout &layout, const Words &words) {
    Table table = table_called(words, words.say("Diagonals over outside corners, to check the plan"));
    table.columns = {flush_left(words.say("From"), 20), flush_left(words.say("To"), 20),
                     flush_right(words.say("Diagonal"), 26)};
    for (const Diagonal &each : diagonals(layout))
        table.rows.push_back({each.from, each.to, words.length(each.length)});
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
    for (Table &table : std::vector{door_table(shell, layout, words), angle_table(layout, words),
                                    diagonal_table(layout, words)})
        if (!table.rows.empty()) tables.push_back(std::move(table));
    if (Table bores = bore_table(shell, layout, words, std::nullopt); !bores.rows.empty())
        tables.push_back(std::move(bores));
    return tables;
}

} // namespace roundlay::sheets
