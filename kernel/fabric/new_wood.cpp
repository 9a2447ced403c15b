#include "kernel/fabric/fabric.h"
#include "kernel/layout/piece_places.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>

namespace roundlay {

namespace {

struct Heights {
    double low = 0, high = 0;
};

/// Of its faces as hewn, in the world, where `along` lies on the wall.
Heights heights_at(const Layout &layout, const Piece &piece, double along) {
    const double x = along - along_wall(layout.walls, piece).from;
    const HewnFaces faces = hewn_faces(piece);
    const auto height = [&](double z) { return piece.frame.to_world({x, 0, z}).z; };
    return {height(faces.lowest(x)), height(faces.highest(x))};
}

/// The log with all new wood that comes into it.
AlongWall whole_log(const Layout &layout, Index<Piece> log, const std::vector<Index<Piece>> &comes) {
    AlongWall all = along_wall(layout.walls, layout.pieces[log]);
    for (const Index<Piece> piece : comes) {
        const AlongWall part = along_wall(layout.walls, layout.pieces[piece]);
        all = {std::min(all.from, part.from), std::max(all.to, part.to)};
    }
    return all;
}

NewWood wood_of(const Layout &layout, Index<Piece> log, Index<Piece> comes, const AlongWall &whole) {
    const Piece &piece = layout.pieces[comes];
    const AlongWall part = along_wall(layout.walls, piece);
    const double middle = (part.from + part.to) / 2;
    const Heights own = heights_at(layout, piece, middle),
                  of = heights_at(layout, layout.pieces[log], middle);
    const auto share = [&](double z) { return std::clamp((z - of.low) / (of.high - of.low), 0.0, 1.0); };
    NewWood wood;
    wood.tag = piece.tag;
    wood.from_left = part.from - whole.from, wood.to_left = part.to - whole.from;
    wood.from_right = whole.to - part.from, wood.to_right = whole.to - part.to;
    wood.low = share(own.low), wood.high = share(own.high);
    return wood;
}

} // namespace

std::vector<NewWood> new_wood(const Record &record, const Shell &shell, const Layout &now) {
    std::vector<NewWood> all;
    for (const DecidedLog &log : decided_logs(record, now))
        for (const Index<Piece> piece : log.found_as) {
            const auto comes = new_wood_in(now.pieces, piece);
            const AlongWall whole = whole_log(now, piece, comes);
            const std::size_t first = all.size();
            for (const Index<Piece> each : comes) {
                NewWood wood = wood_of(now, piece, each, whole);
                wood.log = log.log;
                wood.mend = shell.mends[now.pieces[each].mended.front()];
                all.push_back(std::move(wood));
            }
            std::ranges::stable_sort(all.begin() + static_cast<std::ptrdiff_t>(first), all.end(), {},
                                     &NewWood::from_left);
        }
    return all;
}

} // namespace roundlay
