#include "kernel/fabric/along_log.h"

#include "kernel/measured/found_piece.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/measured_shell.h"

#include <algorithm>

namespace roundlay {

namespace {

AlongWall span_of(const Layout &layout, const std::vector<Index<Piece>> &pieces) {
    AlongWall all = along_wall(layout.walls, layout.pieces[pieces.front()]);
    const auto add = [&](Index<Piece> piece) {
        const AlongWall one = along_wall(layout.walls, layout.pieces[piece]);
        all = {std::min(all.from, one.from), std::max(all.to, one.to)};
    };
    for (const Index<Piece> piece : pieces) {
        add(piece);
        std::ranges::for_each(new_wood_in(layout.pieces, piece), add); // as it lay without mends
    }
    return all;
}

bool is_jamb(const PieceEnd &end, const std::string &name) {
    return end.kind == EndKind::jamb && end.at == name;
}

/// In its own x, from its datum end: its ends are told in the order of the plan, by whatever they lie in.
std::optional<LogRun> run_of_timber(const FoundLog &log, const Piece &piece) {
    LogRun run{piece.wall, {0, piece.blank.length}};
    const bool at_datum = (!log.ends.empty() && log.ends.front().corner == log.zero) ||
                          (log.ends.empty() && log.zero == piece.datum.at);
    const bool at_far = (log.ends.size() > 1 && log.ends.back().corner == log.zero) ||
                        (log.ends.empty() && log.zero == piece.far.at);
    if (at_datum == at_far) return {};
    run.zero_at_left = at_datum;
    run.zero = at_datum ? 0 : piece.blank.length;
    return run;
}

} // namespace

std::optional<LogRun> run_of(const Record &record, const Layout &layout, const FoundLog &log) {
    const auto pieces = pieces_at(layout, log.place);
    if (pieces.empty() || log.zero.empty()) return {};
    if (layout.pieces[pieces.front()].timber) return run_of_timber(log, layout.pieces[pieces.front()]);
    const Piece &first = layout.pieces[pieces.front()], &last = layout.pieces[pieces.back()];
    LogRun run{first.wall, span_of(layout, pieces)};
    const bool left = is_jamb(first.datum, log.zero), right = is_jamb(last.far, log.zero);
    if (left != right) {
        run.zero = left ? run.log.from : run.log.to, run.zero_at_left = left;
        return run;
    }
    const auto end = end_at(record, layout, first.wall, log.zero);
    if (!end) return {};
    FoundPlace round = log.place;
    round.piece.reset();
    const AlongWall whole = span_of(layout, pieces_at(layout, round));
    run.zero_at_left = *end == LogEnd::left;
    run.zero = run.zero_at_left ? whole.from : whole.to;
    return run;
}

bool lies_past(const Record &record, const Layout &layout, const FoundLog &log, const NotedLength &place) {
    const auto is = taken(place);
    if (!is) return false;
    if (log.length.value) return *is > log.length.value->mm() + tape_tolerance;
    const auto run = run_of(record, layout, log);
    if (!run) return false;
    const double x = run->place(*is);
    return x < run->log.from - tape_tolerance || x > run->log.to + tape_tolerance;
}

std::optional<double> least(const FoundLog &log, NotedLength FoundEnd::*of_end,
                            NotedLength FoundStation::*of_station) {
    std::optional<double> least;
    const auto look = [&](const NotedLength &number) {
        if (number.value) least = std::min(least.value_or(number.value->mm()), number.value->mm());
    };
    for (const FoundEnd &end : log.ends)
        look(end.*of_end);
    for (const FoundStation &station : log.stations)
        look(station.*of_station);
    return least;
}

} // namespace roundlay
