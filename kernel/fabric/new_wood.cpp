#include "kernel/fabric/fabric.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <algorithm>

namespace roundlay {

namespace {

struct Reach {
    double from = 0, to = 0;
};

/// Along its wall.
Reach along_wall(const Layout &layout, const Piece &piece) {
    const double from = layout.walls[piece.wall].frame.to_local(piece.frame.origin).x;
    return {from, from + piece.blank.length};
}

/// Of its faces as hewn, in the world, where `along` lies on the wall.
Reach height_at(const Layout &layout, const Piece &piece, double along) {
    const double x = along - along_wall(layout, piece).from;
    const HewnFaces faces = hewn_faces(piece);
    const auto height = [&](double z) { return piece.frame.to_world({x, 0, z}).z; };
    return {height(faces.lowest(x)), height(faces.highest(x))};
}

/// The log with all new wood that comes into it.
Reach whole_log(const Layout &layout, Index<Piece> log, const std::vector<Index<Piece>> &comes) {
    Reach all = along_wall(layout, layout.pieces[log]);
    for (const Index<Piece> piece : comes) {
        const Reach part = along_wall(layout, layout.pieces[piece]);
        all = {std::min(all.from, part.from), std::max(all.to, part.to)};
    }
    return all;
}

NewWood wood_of(const Layout &layout, Index<Piece> log, Index<Piece> comes, const Reach &whole) {
    const Piece &piece = layout.pieces[comes];
    const Reach part = along_wall(layout, piece);
    const double middle = (part.from + part.to) / 2;
    const Reach own = height_at(layout, piece, middle), of = height_at(layout, layout.pieces[log], middle);
    const auto share = [&](double z) { return std::clamp((z - of.from) / (of.to - of.from), 0.0, 1.0); };
    NewWood wood;
    wood.tag = piece.tag;
    wood.from_left = part.from - whole.from, wood.to_left = part.to - whole.from;
    wood.from_right = whole.to - part.from, wood.to_right = whole.to - part.to;
    wood.low = share(own.from), wood.high = share(own.to);
    return wood;
}

} // namespace

std::vector<Index<Piece>> new_wood_in(const Layout &layout, Index<Piece> log) {
    std::vector<Index<Piece>> all;
    for (const Index<Piece> i : layout.pieces.after(log)) {
        if (layout.pieces[i].mends != log) break;
        all.push_back(i);
    }
    return all;
}

std::vector<NewWood> new_wood(const Record &record, const Shell &shell, const Layout &now) {
    std::vector<NewWood> all;
    for (const DecidedLog &log : decided_logs(record, now))
        for (const Index<Piece> piece : log.found_as) {
            const auto comes = new_wood_in(now, piece);
            const Reach whole = whole_log(now, piece, comes);
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
