#include "kernel/fabric/openings_changed.h"

#include "kernel/fabric/standing.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/piece_places.h"

#include <algorithm>
#include <set>

namespace roundlay {

namespace {

bool has_opening(const Shell &shell, const std::string &wall, const std::string &name) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        if (shell.openings[i].wall == wall && name_of(shell, i) == name) return true;
    return false;
}

bool ends_at(const Layout &layout, const Piece &piece, const std::string &wall, const std::string &opening) {
    const auto is_it = [&](const PieceEnd &end) { return end.kind == EndKind::jamb && end.at == opening; };
    return is_log(piece) && layout.walls[piece.wall].name == wall && (is_it(piece.datum) || is_it(piece.far));
}

/// Logs of `layout` in those rounds of the wall that lie over the place of the opening.
std::vector<std::string> logs_over(const Layout &layout, const Opening &opening,
                                   const std::set<int> &rounds) {
    std::vector<std::string> tags;
    const double from = opening.from_left.mm(), to = from + opening.width.mm();
    for (const Piece &piece : layout.pieces) {
        if (!is_log(piece) || is_old_wood(piece) || !rounds.contains(piece.round) ||
            layout.walls[piece.wall].name != opening.wall)
            continue;
        const AlongWall along = along_wall(layout.walls, piece);
        if (std::min(to, along.to) > std::max(from, along.from)) tags.push_back(piece.tag);
    }
    return tags;
}

OpeningChange closed(const Shell &found, std::size_t opening, const Layout &was, const Layout &is) {
    OpeningChange change{name_of(found, opening), found.openings[opening].wall, true, {}, {}};
    std::set<int> rounds;
    for (const Index<Piece> piece : was.pieces.indices()) {
        if (!ends_at(was, was.pieces[piece], change.wall, change.name)) continue;
        rounds.insert(was.pieces[piece].round);
        if (standing_as(was, piece, is).empty()) change.goes.push_back(was.pieces[piece].tag);
    }
    change.comes = logs_over(is, found.openings[opening], rounds);
    return change;
}

OpeningChange cut(const Shell &now, std::size_t opening, const Layout &is) {
    OpeningChange change{name_of(now, opening), now.openings[opening].wall, false, {}, {}};
    for (const Piece &piece : is.pieces)
        if (ends_at(is, piece, change.wall, change.name)) change.comes.push_back(piece.tag);
    return change;
}

} // namespace

std::vector<OpeningChange> openings_changed(const Shell &found, const Layout &found_layout, const Shell &now,
                                            const Layout &now_layout) {
    std::vector<OpeningChange> changes;
    for (std::size_t i = 0; i < found.openings.size(); ++i)
        if (!has_opening(now, found.openings[i].wall, name_of(found, i)))
            changes.push_back(closed(found, i, found_layout, now_layout));
    for (std::size_t i = 0; i < now.openings.size(); ++i)
        if (!has_opening(found, now.openings[i].wall, name_of(now, i)))
            changes.push_back(cut(now, i, now_layout));
    return changes;
}

} // namespace roundlay
