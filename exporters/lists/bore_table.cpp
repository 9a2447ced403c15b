#include "exporters/lists/bore_table.h"

#include "exporters/lists/list_cells.h"
#include "kernel/layout/fastenings/bore_marks.h"

namespace roundlay {

namespace {

std::vector<Entry> row(const Shell &shell, const Layout &layout, const Voice &voice, const PlacedBore &bore,
                       const BoredLog &log) {
    const StatedBore &stated = shell.bores[bore.stated];
    const Piece &piece = layout.pieces[log.piece];
    const WallPlace &wall = layout.walls[bore.wall];
    const Vec3 in_wall = wall.frame.to_local(log.foot), in_log = piece.frame.to_local(log.foot);
    return {voice.name(bore.mark),
            voice.word(name_of(std::optional(stated.use))),
            stated.name,
            wall.name,
            piece.tag,
            voice.length(in_wall.x),
            voice.length(in_log.x),
            voice.length(in_log.y),
            voice.length(stated.diameter.mm()),
            voice.length(log.length),
            log.bedded ? voice.say("yes") : std::string(),
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

Table bore_table(const Shell &shell, const Layout &layout, Language language) {
    const Voice voice = voice_of(shell, layout, language);
    Table table{{{"bore", voice.say("bore")},
                 {"for", voice.say("for")},
                 {"name", voice.say("name")},
                 {"wall", voice.say("wall")},
                 {"tag", voice.say("log")},
                 {"from_wall_left", voice.say("from wall's left")},
                 {"from_log_left_end", voice.say("from log's left end")},
                 {"from_outside", voice.say("from outside")},
                 {"diameter", voice.say("diameter")},
                 {"length", voice.say("length")},
                 {"on_foundation", voice.say("on foundation")},
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
            table.rows.push_back(row(shell, layout, voice, bore, log));
    return table;
}

} // namespace roundlay
