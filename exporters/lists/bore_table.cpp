#include "exporters/lists/bore_table.h"

#include "kernel/layout/fastenings/bore_marks.h"

namespace roundlay {

namespace {

constexpr int mm_decimals = 3;

std::string said(const Shell &shell, double mm) {
    LengthStyle style;
    style.system = shell.units;
    return print_length(Length::mm(mm), style);
}

std::vector<Entry> row(const Shell &shell, const Layout &layout, const PlacedBore &bore,
                       const BoredLog &log) {
    const StatedBore &stated = shell.bores[static_cast<std::size_t>(bore.stated)];
    const Piece &piece = layout.pieces[static_cast<std::size_t>(log.piece)];
    const WallPlace &wall = layout.walls[static_cast<std::size_t>(bore.wall)];
    const Vec3 in_wall = wall.frame.to_local(log.foot), in_log = piece.frame.to_local(log.foot);
    return {bore.mark,
            std::string(name_of(std::optional(stated.use))),
            stated.name,
            wall.name,
            piece.tag,
            said(shell, in_wall.x),
            said(shell, in_log.x),
            said(shell, in_log.y),
            said(shell, stated.diameter.mm()),
            said(shell, log.length),
            std::string(log.bedded ? "yes" : ""),
            number(in_wall.x, mm_decimals),
            number(in_log.x, mm_decimals),
            number(in_log.y, mm_decimals),
            number(stated.diameter.mm(), mm_decimals),
            number(log.length, mm_decimals),
            number(log.foot.x, mm_decimals),
            number(log.foot.y, mm_decimals),
            number(log.foot.z, mm_decimals)};
}

} // namespace

Table bore_table(const Shell &shell, const Layout &layout) {
    Table table{{{"bore", "bore"},
                 {"for", "for"},
                 {"name", "name"},
                 {"wall", "wall"},
                 {"tag", "log"},
                 {"from_wall_left", "from wall's left"},
                 {"from_log_left_end", "from log's left end"},
                 {"from_outside", "from outside"},
                 {"diameter", "diameter"},
                 {"length", "length"},
                 {"on_foundation", "on foundation"},
                 {"from_wall_left_mm", ""},
                 {"from_log_left_end_mm", ""},
                 {"from_outside_mm", ""},
                 {"diameter_mm", ""},
                 {"length_mm", ""},
                 {"east_mm", ""},
                 {"north_mm", ""},
                 {"foot_mm", ""}},
                {}};
    for (const PlacedBore &bore : placed_bores(shell, layout))
        for (const BoredLog &log : bore.logs)
            table.rows.push_back(row(shell, layout, bore, log));
    return table;
}

} // namespace roundlay
