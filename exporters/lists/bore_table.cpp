#include "exporters/lists/bore_table.h"

#include "exporters/lists/list_cells.h"
#include "kernel/layout/fastenings/bore_marks.h"

namespace roundlay {

namespace {

using Row = std::vector<Entry>;

std::vector<Column> said_columns(const Voice &voice) {
    return {{"bore", voice.say("bore")},
            {"for", voice.say("for")},
            {"name", voice.say("name")},
            {"wall", voice.say("wall")},
            {"tag", voice.say("log")},
            {"from_wall_left", voice.say("from wall's left")},
            {"from_log_left_end", voice.say("from log's left end")},
            {"from_outside", voice.say("from outside")},
            {"diameter", voice.say("diameter")},
            {"length", voice.say("length")},
            {"on_foundation", voice.say("on foundation")}};
}

std::vector<Column> exact_columns() {
    return {{"from_wall_left_mm", ""}, {"from_log_left_end_mm", ""},
            {"from_outside_mm", ""},   {"diameter_mm", ""},
            {"length_mm", ""},         {"east_mm", ""},
            {"north_mm", ""},          {"foot_mm", ""}};
}

/// A stated bore in one log.
struct InLog {
    const StatedBore &stated;
    const WallPlace &wall;
    const Piece &piece;
    const BoredLog &log;
    Vec3 in_wall, in_log; ///< its foot
};

InLog in_log(const Shell &shell, const Layout &layout, const PlacedBore &bore, const BoredLog &log) {
    const Piece &piece = layout.pieces[log.piece];
    const WallPlace &wall = layout.walls[bore.wall];
    return {shell.bores[bore.stated],      wall, piece, log, wall.frame.to_local(log.foot),
            piece.frame.to_local(log.foot)};
}

Row said_cells(const Voice &voice, const std::string &mark, const InLog &b) {
    return {voice.name(mark),
            voice.word(name_of(std::optional(b.stated.use))),
            b.stated.name,
            b.wall.name,
            b.piece.tag,
            voice.length(b.in_wall.x),
            voice.length(b.in_log.x),
            voice.length(b.in_log.y),
            voice.length(b.stated.diameter.mm()),
            voice.length(b.log.length),
            b.log.bedded ? voice.say("yes") : std::string()};
}

Row exact_cells(const InLog &b) {
    Row row;
    for (const double mm : {b.in_wall.x, b.in_log.x, b.in_log.y, b.stated.diameter.mm(), b.log.length,
                            b.log.foot.x, b.log.foot.y, b.log.foot.z})
        row.emplace_back(number(mm, mm_decimals));
    return row;
}

} // namespace

Table bore_table(const Shell &shell, const Layout &layout, Language language) {
    const Voice voice = voice_of(shell, layout, language);
    Table table{said_columns(voice), {}};
    append(table.columns, exact_columns());
    for (const PlacedBore &bore : placed_bores(shell, layout))
        for (const BoredLog &log : bore.logs) {
            const InLog there = in_log(shell, layout, bore, log);
            Row row = said_cells(voice, bore.mark, there);
            append(row, exact_cells(there));
            table.rows.push_back(std::move(row));
        }
    return table;
}

} // namespace roundlay
