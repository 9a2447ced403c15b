#include "kernel/fabric/fabric.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

std::vector<Index<Piece>> pieces_at(const FoundPlace &place, const Layout &layout) {
    std::vector<Index<Piece>> found;
    for (const Index<Piece> i : layout.pieces.indices()) {
        const Piece &piece = layout.pieces[i];
        if (!piece.timber && layout.walls[piece.wall].name == place.wall && piece.round == place.round &&
            (!place.piece || piece.number == *place.piece))
            found.push_back(i);
    }
    return found;
}

} // namespace

std::vector<DecidedLog> decided_logs(const Record &record, const Layout &layout,
                                     std::optional<std::size_t> decisions) {
    std::vector<DecidedLog> all;
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const FoundLog &log = record.logs[i];
        DecidedLog decided{i, {}, pieces_at(log.place, layout)};
        const std::size_t count = std::min(decisions.value_or(log.decisions.size()), log.decisions.size());
        if (count > 0) decided.what = log.decisions[count - 1].what;
        all.push_back(std::move(decided));
    }
    return all;
}

void FabricSum::add(const FabricSum &other) {
    logs += other.logs, volume += other.volume, outside += other.outside;
}

FabricSum FabricFigures::stays() const {
    FabricSum all;
    for (const Decision what : {Decision::keep, Decision::mend, Decision::turn, Decision::use_elsewhere})
        all.add(of_decision(what));
    return all;
}

double outside_face(const Body &body) {
    double sum = 0;
    for (const Face &face : body.hewn.faces) {
        const Vec3 &n = face.plane.normal;
        const double outward = -n.y;
        const bool round = face.plane.round > 0;
        if (round ? body.rounds[static_cast<std::size_t>(face.plane.round) - 1].hollow || outward <= 0
                  : outward <= std::abs(n.x) || outward <= std::abs(n.z))
            continue;
        sum += area(body.hewn, face) * outward;
    }
    return sum;
}

FabricFigures fabric_figures(const Record &record, const Layout &layout, const Bodies &bodies,
                             std::optional<std::size_t> decisions) {
    FabricFigures figures;
    for (const DecidedLog &log : decided_logs(record, layout, decisions)) {
        FabricSum sum{1, 0, 0};
        for (const Index<Piece> piece : log.found_as) {
            const Body &body = bodies[layout.pieces[piece].model];
            sum.volume += body.volume, sum.outside += outside_face(body);
        }
        figures.found.add(sum);
        (log.what ? figures.of[static_cast<std::size_t>(*log.what)] : figures.undecided).add(sum);
        if (log.found_as.empty()) ++figures.without_place;
        figures.most = std::max(figures.most, record.logs[log.log].decisions.size());
    }
    return figures;
}

} // namespace roundlay
