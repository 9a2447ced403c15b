#include "kernel/survey/survey.h"

#include <algorithm>
#include <tuple>

namespace roundlay {

namespace {

FoundLog log_to_measure(const Record &record, const Layout &layout, const Piece &piece, bool parted) {
    FoundLog log;
    log.tag = piece.tag;
    log.place = {layout.walls[piece.wall].name, piece.round, {}};
    if (piece.timber) log.place = {{}, {}, {}, piece.tag};
    if (parted) log.place.piece = piece.number;
    log.ends.resize(2);
    std::tie(log.ends[0].corner, log.ends[1].corner) = end_names(record, layout, piece);
    return log;
}

} // namespace

std::string corner_name(const Record &record, const Layout &layout, const std::string &at) {
    for (const CornerPlace &corner : layout.corners) {
        if (corner.name != at) continue;
        const std::string &a = layout.walls[corner.ends].name, &b = layout.walls[corner.starts].name;
        for (const RecordedCorner &recorded : record.corners)
            if (recorded.walls.size() == 2 && std::ranges::count(recorded.walls, a) == 1 &&
                std::ranges::count(recorded.walls, b) == 1)
                return recorded.name;
    }
    return at;
}

namespace {

/// What a timber's end lies in: a log by the tag that it was found under, a beam or joist by its own.
std::string carrier_name(const Record &record, const Layout &layout, const std::string &at) {
    const auto piece = std::ranges::find(layout.pieces, at, &Piece::tag);
    if (piece == layout.pieces.end()) return at;
    const auto found = std::ranges::find_if(record.logs, [&](const FoundLog &log) {
        if (piece->timber) return log.place.timber == piece->tag;
        return log.place.wall == layout.walls[piece->wall].name && log.place.round == piece->round &&
               (!log.place.piece || log.place.piece == piece->number);
    });
    return found == record.logs.end() ? at : found->tag;
}

} // namespace

std::pair<std::string, std::string> end_names(const Record &record, const Layout &layout,
                                              const Piece &piece) {
    if (piece.timber)
        return {carrier_name(record, layout, piece.datum.at), carrier_name(record, layout, piece.far.at)};
    const std::string datum = corner_name(record, layout, piece.datum.at),
                      far = corner_name(record, layout, piece.far.at);
    if (datum != far) return {datum, far};
    const WallPlace &wall = layout.walls[piece.wall];
    const auto towards = [&](Index<CornerPlace> corner) {
        return datum + " (" + corner_name(record, layout, layout.corners[corner].name) + ")";
    };
    return {towards(wall.start_corner), towards(wall.end_corner)};
}

Record with_logs_to_measure(const Record &record, const Layout &layout) {
    Record all = record;
    const auto is_found = [&](const FoundLog &log) {
        return std::ranges::any_of(record.logs, [&](const FoundLog &found) {
            if (!log.place.timber.empty())
                return found.place.timber == log.place.timber || found.tag == log.tag;
            const bool there = found.place.wall == log.place.wall && found.place.round == log.place.round &&
                               (!found.place.piece || found.place.piece == log.place.piece);
            return there || found.tag == log.tag;
        });
    };
    for (const Piece &piece : layout.pieces) {
        if (piece.mends) continue;
        const bool parted = !piece.timber && std::ranges::count_if(layout.pieces, [&](const Piece &other) {
                                                 return is_log(other) && other.wall == piece.wall &&
                                                        other.round == piece.round;
                                             }) > 1;
        const FoundLog log = log_to_measure(record, layout, piece, parted);
        if (!is_found(log)) all.logs.push_back(log);
    }
    return all;
}

} // namespace roundlay
