#include "kernel/fabric/fabric.h"
#include "kernel/fabric/standing.h"
#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/piece_places.h"
#include "kernel/measured/found_piece.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Where old wood and new lie on one another in a log, in the world.
std::vector<Plane> beds_in(const Layout &layout, Index<Piece> log) {
    std::vector<Plane> beds;
    const Piece &piece = layout.pieces[log];
    for (const Cut &cut : piece.cuts)
        match(
            cut, [&](const MendCut &mend) { beds.push_back(to_world(mend.bed, piece.frame)); },
            passing<FaceCut, RoundCut, SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, Bore>);
    return beds;
}

bool is_same(const Plane &a, const Plane &b) {
    constexpr double parallel = 1e-9;
    const double along = dot(a.normal, b.normal);
    return std::abs(std::abs(along) - 1) < parallel &&
           std::abs(a.offset - (along > 0 ? b.offset : -b.offset)) < tolerance::thinnest;
}

/// `seen` says which of its faces count.
template <typename Seen> double outside_face_where(const Body &body, Seen seen) {
    double sum = 0;
    for (const Face &face : body.hewn.faces) {
        const Vec3 &n = face.plane.normal;
        const double outward = -n.y;
        const bool round = face.plane.round > 0;
        if (round ? body.rounds[static_cast<std::size_t>(face.plane.round) - 1].hollow || outward <= 0
                  : outward <= std::abs(n.x) || outward <= std::abs(n.z))
            continue;
        if (seen(face.plane)) sum += area(body.hewn, face) * outward;
    }
    return sum;
}

FabricSum sum_of(const Layout &layout, const Bodies &bodies, Index<Piece> piece) {
    const Piece &p = layout.pieces[piece];
    const double outside =
        p.timber ? 0 : outside_face(layout, bodies, piece); // a floor's timber lies indoors
    return {0, bodies[p.model].volume, outside};
}

/// It goes to a place that `now` does not have, or where it has new wood.
bool has_nowhere_to_go(const FoundPlace &to, const Layout &now) {
    if (to.wall.empty() || !to.round) return false;
    return std::ranges::all_of(pieces_at(now, to), [&](const Index<Piece> piece) {
        return now.pieces[piece].fabric == Fabric::replacement;
    });
}

/// What of a log that is to stay does not, as pieces of the house as it was found.
std::vector<Index<Piece>> not_standing(const FoundLog &log, const DecidedLog &decided, const Layout &found,
                                       const Layout &now) {
    const FoundDecision &last = log.decisions.back();
    if (last.what == Decision::use_elsewhere)
        return has_nowhere_to_go(last.to, now) ? decided.found_as : std::vector<Index<Piece>>();
    std::vector<Index<Piece>> gone;
    for (const Index<Piece> piece : decided.found_as)
        if (standing_as(found, piece, now).empty()) gone.push_back(piece);
    return gone;
}

void take_off(FabricSum &sum, const FabricSum &part) {
    sum.logs -= part.logs, sum.volume -= part.volume, sum.outside -= part.outside;
}

} // namespace

std::vector<DecidedLog> decided_logs(const Record &record, const Layout &layout,
                                     std::optional<std::size_t> decisions) {
    std::vector<DecidedLog> all;
    for (std::size_t i = 0; i < record.logs.size(); ++i) {
        const FoundLog &log = record.logs[i];
        DecidedLog decided{i, {}, pieces_at(layout, log.place)};
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
    return outside_face_where(body, [](const Plane &) { return true; });
}

double outside_face(const Layout &layout, const Bodies &bodies, Index<Piece> piece) {
    const Piece &p = layout.pieces[piece];
    const std::vector<Plane> beds = beds_in(layout, log_with(layout.pieces, piece));
    return outside_face_where(bodies[p.model], [&](const Plane &plane) {
        return std::ranges::none_of(beds,
                                    [&](const Plane &bed) { return is_same(bed, to_world(plane, p.frame)); });
    });
}

FabricFigures fabric_figures(const Record &record, const Layout &layout, const Bodies &bodies,
                             std::optional<std::size_t> decisions) {
    FabricFigures figures;
    for (const DecidedLog &log : decided_logs(record, layout, decisions)) {
        figures.most = std::max(figures.most, record.logs[log.log].decisions.size());
        if (is_gone(record.logs[log.log])) {
            ++figures.gone;
            continue;
        }
        FabricSum sum{1, 0, 0};
        for (const Index<Piece> piece : log.found_as) {
            sum.add(sum_of(layout, bodies, piece));
            for (const Index<Piece> comes : new_wood_in(layout.pieces, piece)) {
                const FabricSum gone = sum_of(layout, bodies, comes);
                figures.cut_out.add(gone), figures.found.add(gone);
            }
        }
        figures.found.add(sum);
        (log.what ? figures.of[static_cast<std::size_t>(*log.what)] : figures.undecided).add(sum);
        if (log.found_as.empty()) ++figures.without_place;
    }
    return figures;
}

void take_out_what_is_gone(FabricFigures &figures, const Record &record, const Layout &found,
                           const Bodies &found_bodies, const Layout &now,
                           std::optional<std::size_t> decisions) {
    for (const DecidedLog &decided : decided_logs(record, found, decisions)) {
        const FoundLog &log = record.logs[decided.log];
        // one that stayed by an earlier decision, and goes by the last, was changed by that, not by the state
        if (!decided.what || !stays(*decided.what) || !stays(log.decisions.back().what) || is_gone(log))
            continue;
        const auto gone = not_standing(log, decided, found, now);
        if (gone.empty()) continue;
        FabricSum sum{gone.size() == decided.found_as.size() ? 1 : 0, 0, 0};
        for (const Index<Piece> piece : gone)
            sum.add(sum_of(found, found_bodies, piece));
        take_off(figures.of[static_cast<std::size_t>(*decided.what)], sum);
        figures.not_standing.add(sum);
    }
}

void take_out_mends(FabricFigures &figures, const Record &record, const Layout &now, const Bodies &bodies,
                    std::optional<std::size_t> decisions) {
    for (const DecidedLog &log : decided_logs(record, now, decisions)) {
        if (decisions && log.what != Decision::mend) continue;
        FabricSum &of = log.what ? figures.of[static_cast<std::size_t>(*log.what)] : figures.undecided;
        for (const Index<Piece> piece : log.found_as)
            for (const Index<Piece> comes : new_wood_in(now.pieces, piece)) {
                const FabricSum gone = sum_of(now, bodies, comes);
                of.volume -= gone.volume, of.outside -= gone.outside;
                figures.cut_out.add(gone);
            }
    }
}

} // namespace roundlay
